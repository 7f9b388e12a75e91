/** The entry of a list at a place that it has. Throws Error where it has none, which is a mistake of the caller. */
export function nth<T>(list: readonly T[], place: number): T {
  const entry = list[place];
  if (entry === undefined) throw new Error(`a list of ${list.length} has no place ${place}`);
  return entry;
}
