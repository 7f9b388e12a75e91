import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type NestedSheet, nestSheets, type PlacedPiece, SHEET_KERF, type SheetPiece } from "./nestSheets.ts";

const SEED = 4102;
const STOCK = [
  { width: 1.2, length: 2.4 },
  { width: 1.2, length: 3 },
];
const somePieces = fc
  .array(fc.record({ width: fc.integer({ min: 30, max: 1200 }), length: fc.integer({ min: 30, max: 3000 }) }), { minLength: 1, maxLength: 40 })
  .map((sizes) => sizes.map(({ width, length }, at): SheetPiece => ({ key: `p${at}`, width: width / 1000, length: length / 1000 })));

interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

describe("identity", () => {
  test("every piece is cut once, inside its sheet, a kerf away from the others", () => {
    fc.assert(
      fc.property(somePieces, (pieces) => {
        const sheets = nestSheets(pieces, STOCK);
        const keys = sheets.flatMap(({ placed }) => placed.map(({ piece }) => piece.key));
        expect(keys.sort()).toEqual(pieces.map(({ key }) => key).sort());
        for (const sheet of sheets) {
          const boxes = sheet.placed.map(boxOf);
          for (const { x0, x1, y0, y1 } of boxes) {
            expect(Math.min(x0, y0)).toBeGreaterThanOrEqual(0);
            expect(x1).toBeLessThanOrEqual(sheet.stock.width + 1e-5);
            expect(y1).toBeLessThanOrEqual(sheet.stock.length + 1e-5);
          }
          boxes.forEach((a, at) => boxes.slice(at + 1).forEach((b) => expect(apart(a, b)).toBeGreaterThanOrEqual(SHEET_KERF - 1e-5)));
        }
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  test("every sheet can be cut from edge to edge", () => {
    fc.assert(
      fc.property(somePieces, (pieces) => {
        for (const sheet of nestSheets(pieces, STOCK)) expect(canBeCut(sheet)).toBe(true);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  test("an offcut is used again", () => {
    const door = { width: 0.9, length: 2.4 };
    const strip = { width: 0.25, length: 1.1 };
    const pieces = [door, strip, strip].map((size, at) => ({ key: `p${at}`, ...size }));
    expect(nestSheets(pieces, [{ width: 1.2, length: 2.4 }])).toHaveLength(1);
  });

  test("a piece is turned where it fits only so", () => {
    const [sheet] = nestSheets([{ key: "p", width: 1.5, length: 1 }], [{ width: 1.2, length: 2.4 }]);
    expect(sheet?.placed[0]?.turned).toBe(true);
  });
});

describe("domain", () => {
  test("no pieces need no sheets; a piece that fits no sheet is made to size", () => {
    expect(nestSheets([], STOCK)).toEqual([]);
    expect(nestSheets([{ key: "p", width: 2, length: 4 }], STOCK)[0]?.stock).toEqual({ width: 2, length: 4 });
  });
});

function boxOf({ piece, across, along, turned }: PlacedPiece): Box {
  const [width, length] = turned ? [piece.length, piece.width] : [piece.width, piece.length];
  return { x0: across, x1: across + width, y0: along, y1: along + length };
}

/** Greater of the gaps across and along; below zero where two pieces overlap. */
function apart(a: Box, b: Box): number {
  return Math.max(a.x0 - b.x1, b.x0 - a.x1, a.y0 - b.y1, b.y0 - a.y1);
}

/** True where straight cuts through what is left can free every piece. */
function canBeCut({ placed }: NestedSheet): boolean {
  const free = (boxes: readonly Box[]): boolean => {
    if (boxes.length <= 1) return true;
    for (const [from, to] of [["x0", "x1"], ["y0", "y1"]] as const) {
      for (const cut of boxes.map((box) => box[to])) {
        const before = boxes.filter((box) => box[to] <= cut + 1e-9);
        const after = boxes.filter((box) => box[from] >= cut - 1e-9);
        if (after.length > 0 && before.length + after.length === boxes.length) return free(before) && free(after);
      }
    }
    return false;
  };
  return free(placed.map(boxOf));
}
