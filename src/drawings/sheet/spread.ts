/** A label on a line: where it wants to stand and how much of the line it takes. */
export interface Wish {
  readonly at: number;
  readonly width: number;
}

/**
 * Moves labels on a line apart until none overlap, in their order along the line, as near to their wishes as the sum of
 * squares allows (pooling of adjacent violators). Gives the places in the order of the wishes.
 */
export function spread(wishes: readonly Wish[], gap: number): readonly number[] {
  const order = wishes.map((_, index) => index).sort((a, b) => wishOf(wishes, a).at - wishOf(wishes, b).at);
  const offsets: number[] = [];
  let offset = 0;
  for (const [rank, index] of order.entries()) {
    const before = order[rank - 1];
    if (before !== undefined) offset += (wishOf(wishes, before).width + wishOf(wishes, index).width) / 2 + gap;
    offsets.push(offset);
  }
  const pools: { sum: number; count: number }[] = [];
  for (const [rank, index] of order.entries()) {
    let pool = { sum: wishOf(wishes, index).at - (offsets[rank] as number), count: 1 };
    for (let last = pools.at(-1); last !== undefined && last.sum / last.count > pool.sum / pool.count; last = pools.at(-1)) {
      pools.pop();
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
    }
    pools.push(pool);
  }
  const means = pools.flatMap((pool) => Array.from({ length: pool.count }, () => pool.sum / pool.count));
  const places = Array.from({ length: wishes.length }, () => Number.NaN);
  for (const [rank, index] of order.entries()) places[index] = (means[rank] as number) + (offsets[rank] as number);
  return places;
}

function wishOf(wishes: readonly Wish[], index: number): Wish {
  const wish = wishes[index];
  if (wish === undefined) throw new RangeError(`no label ${index}`);
  return wish;
}
