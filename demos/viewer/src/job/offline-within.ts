/** The one file needs nothing beside it, so there is nothing to keep. */
export const keepOffline = (): void => undefined;
