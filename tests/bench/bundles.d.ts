/** A program bundled and minified: its size, and the modules that left something in it, as paths from `packages/`. */
export function bundle(
  contents: string,
): Promise<{ readonly bytes: number; readonly modules: readonly string[] }>;
