import { refusal } from './drawing/tellings.js';

/** Something that tells whether work is to stop: an `AbortSignal`, or a token of one's own that a worker reads. */
export interface StopSignal {
  readonly aborted: boolean;
}

/** Who watches long work: told how far it has come, and may stop it. */
export interface Watch<Stage extends string> {
  /** Told often: the stage, and how much of it is done, from 0 to 1. May throw to stop the work. */
  readonly onProgress?: (stage: Stage, share: number) => void;
  /** Looked at as often; once it is aborted the work stops. */
  readonly signal?: StopSignal;
}

/**
 * Tells a watch how far work has come.
 * @throws PatternError `work-stopped` where that was asked for
 */
export function tell<Stage extends string>(
  { onProgress, signal }: Watch<Stage>,
  stage: Stage,
  share: number,
): void {
  if (signal?.aborted) throw refusal('work-stopped', {});
  onProgress?.(stage, share);
}
