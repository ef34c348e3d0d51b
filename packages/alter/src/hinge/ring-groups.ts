/**
 * The items of a closed ring in groups of those that continue one another; a group that the list's ends divide is put
 * together at its beginning.
 */
export function ringGroups<T>(
  items: readonly T[],
  continues: (a: T, b: T) => boolean,
): readonly (readonly T[])[] {
  const groups: T[][] = [];
  for (const item of items) {
    const last = groups.at(-1);
    if (last && continues(last.at(-1)!, item)) last.push(item);
    else groups.push([item]);
  }
  if (groups.length > 1 && continues(groups.at(-1)!.at(-1)!, groups[0]![0]!)) {
    const tail = groups.pop()!;
    groups[0] = [...tail, ...groups[0]!];
  }
  return groups;
}
