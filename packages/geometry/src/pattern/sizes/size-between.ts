/** What stands between the names of two sizes that a pattern lies between. A hyphen may be in the name of one size. */
const sign = '…';

/** What a pattern between two sizes is called, such as `12…14`. */
export const sizeBetween = (first: string, second: string): string => `${first}${sign}${second}`;

/** The two sizes that a pattern of this size lies between; undefined where it is one size. */
export function sizesBetween(size: string): readonly [string, string] | undefined {
  const [first, second, ...more] = size.split(sign);
  return first && second && more.length === 0 ? [first, second] : undefined;
}
