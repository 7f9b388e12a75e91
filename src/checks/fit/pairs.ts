/** Every two things of a list once, in the list's order. */
export function pairsOf<T>(things: readonly T[]): readonly (readonly [T, T])[] {
  return things.flatMap((one, index) => things.slice(index + 1).map((other) => [one, other] as const));
}
