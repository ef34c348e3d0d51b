import { commandRefusal } from '@paperhinge/sheet/words';
import type { Io } from './io.js';
import { photoFrameCommand } from './photo-frame-command.js';
import { printCommand } from './print-command.js';

type Options = Parameters<typeof printCommand>[1] &
  Parameters<typeof photoFrameCommand>[0] & { readonly photoFrame?: true };

/** A photo frame is of no pattern; everything else that is printed is. @returns the exit code */
export function printOrFrame(path: string | undefined, options: Options, io: Io): Promise<number> {
  if (options.photoFrame && path === undefined) return photoFrameCommand(options, io);
  if (path === undefined) throw commandRefusal('no-pattern-to-print', {});
  if (options.photoFrame || options.sheets !== undefined)
    throw commandRefusal('photo-frame-of-no-pattern', {});
  return printCommand(path, options, io);
}
