import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BarPiece, nestBars, SAW_KERF, spliced } from "./nestBars.ts";

const SEED = 4101;
const piecesFrom = (lengths: readonly number[]): readonly BarPiece[] => lengths.map((length, at) => ({ key: `p${at}`, length }));
const lengthsUpTo = (most: number, count: number): fc.Arbitrary<number[]> =>
  fc.array(fc.integer({ min: 50, max: most * 1000 }).map((mm) => mm / 1000), { minLength: 1, maxLength: count });

describe("published", () => {
  /** G. Dósa, "The tight bound of first fit decreasing bin-packing algorithm is FFD(I) <= 11/9 OPT(I) + 6/9", 2007; from memory. */
  test("one stock length: never above 11/9 of the least possible and 6/9 more", () => {
    fc.assert(
      fc.property(lengthsUpTo(3, 8), (lengths) => {
        const bars = nestBars(piecesFrom(lengths), [3]).length;
        expect(bars).toBeLessThanOrEqual((11 / 9) * leastBars(lengths, 3) + 6 / 9 + 1e-9);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});

describe("identity", () => {
  test("every piece is cut once, and no bar holds more than its length with the kerfs between", () => {
    fc.assert(
      fc.property(lengthsUpTo(3.6, 60), (lengths) => {
        const bars = nestBars(piecesFrom(lengths), [2.4, 3, 3.6]);
        const cut = bars.flatMap(({ pieces }) => pieces);
        expect(cut.map(({ key }) => key).sort()).toEqual(lengths.map((_, at) => `p${at}`).sort());
        for (const { stock, pieces } of bars) {
          const used = pieces.reduce((sum, { length }) => sum + length, 0) + (pieces.length - 1) * SAW_KERF;
          expect(used).toBeLessThanOrEqual(stock + 1e-5);
        }
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test("the order of the pieces does not matter", () => {
    const pieces = piecesFrom([1.2, 0.4, 2.1, 2.1, 0.9, 1.7]);
    expect(nestBars([...pieces].reverse(), [3])).toEqual(nestBars(pieces, [3]));
  });

  test("a kerf that does not fit opens another bar", () => {
    expect(nestBars(piecesFrom([1.5, 1.5]), [3])).toHaveLength(2);
    expect(nestBars(piecesFrom([1.5, 1.5 - SAW_KERF]), [3])).toHaveLength(1);
  });

  test("of several stock lengths the least length is bought", () => {
    expect(nestBars(piecesFrom([2.4, 2.4]), [2.4, 3.6]).map(({ stock }) => stock)).toEqual([2.4, 2.4]);
    expect(nestBars(piecesFrom([1.7, 1.8]), [2.4, 3.6]).map(({ stock }) => stock)).toEqual([3.6]);
  });
});

describe("domain", () => {
  test("no pieces need no bars; a piece longer than every bar is refused", () => {
    expect(nestBars([], [3])).toEqual([]);
    expect(() => nestBars(piecesFrom([3.1]), [3])).toThrow(RangeError);
  });

  test("a long piece is spliced from whole bars and a rest", () => {
    expect(spliced({ key: "t", length: 7 }, [3]).map(({ length }) => Number(length.toFixed(9)))).toEqual([3, 3, 1]);
    expect(spliced({ key: "t", length: 6 }, [3]).map(({ length }) => length)).toEqual([3, 3]);
    expect(spliced({ key: "t", length: 3 }, [3])).toEqual([{ key: "t", length: 3 }]);
  });
});

/** Least number of bars, by trying every way to part the pieces. */
function leastBars(lengths: readonly number[], stock: number): number {
  let least = lengths.length;
  const place = (at: number, rooms: readonly number[]): void => {
    if (rooms.length >= least) return;
    const length = lengths[at];
    if (length === undefined) {
      least = rooms.length;
      return;
    }
    rooms.forEach((room, bar) => {
      if (length <= room + 1e-5) place(at + 1, rooms.with(bar, room - length - SAW_KERF));
    });
    place(at + 1, [...rooms, stock - length - SAW_KERF]);
  };
  place(0, []);
  return least;
}
