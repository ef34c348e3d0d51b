/** Work that stops between its parts. */
export type InParts<Result> = Generator<void, Result>;

/** What comes of work that is done in one go. */
export function finished<Result>(work: InParts<Result>): Result {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}

/**
 * What comes of work that lets others have their turn between its parts; nothing where it is not wanted any more.
 * @param turn resolves once what was waiting has had its turn
 */
export async function inTurns<Result>(
  work: InParts<Result>,
  turn: () => Promise<void>,
  isWanted: () => boolean,
): Promise<Result | undefined> {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
    await turn();
    if (!isWanted()) return undefined;
  }
}
