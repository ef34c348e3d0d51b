/**
 * Whether a name speaks of the centre of a garment, in the languages that names are read in. Reading and building guess
 * roles by the whole tables; this is for edges and lines that nobody has guessed yet, as an operation has just made
 * them, and spares a program that only swings a dart those tables. Held to them by a test.
 */
export const namesCentre = (name: string): boolean => centre.test(name);

const centre =
  /(^|[^\p{L}])(cent(re|er|ro)|c[fb](?!\p{L})|mi(ddle|lieu|dden)|me(dio|zzo|io)(?!\p{L}))|mitte(?!\p{L})/iu;
