/** What a command writes to; the process's own streams, or a test's. */
export interface Io {
  readonly stdout: (text: string) => void;
  readonly stderr: (text: string) => void;
  /** Whether a person watches stderr: then progress is shown there. */
  readonly watched: boolean;
  /** Where the machine says what language help is wanted in; absent = nowhere. */
  readonly environment?: Readonly<Record<string, string | undefined>>;
}
