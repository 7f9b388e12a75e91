import type { Part } from "../../build/part.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { BattRow } from "../../catalogue/rows.ts";
import { rectHeight, rectWidth } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { netArea, packsByPieces } from "../formulas.ts";
import { nestSheets, SHEET_KERF, type SheetPiece } from "../nestSheets.ts";
import type { TakeoffLine } from "../takeoff.ts";
import { areaOf, byKey, practice, rowField } from "./partQuantities.ts";

/** Share of batts torn, or cut short round wires and pipes: common practice. */
const BATTS_MORE = 0.05;

/** Batts by row: area in place, bays, whole batts as really cut, packs. They are cut where they go and stand in no cut list. */
export function battLines(parts: readonly Part[]): readonly TakeoffLine[] {
  const batts = byKey(parts, (part) => (part.row?.table === "batts" ? part.row.id : undefined));
  return [...batts].map(([id, bays]) => {
    const row = catalogue.batts.get(id);
    const needed = battsCut(row, bays);
    const f_more = practice(BATTS_MORE, "1", "f_more", "more batts for what is torn or cut short");
    const n_each = rowField("batts", row, "pack", row.pack, { unit: "1", symbol: "n_each", means: "batts in a pack" });
    const area = row.pack * row.width * row.length;
    return {
      id: `batts/${id}`,
      group: "batts",
      what: row.what,
      row: { table: "batts", id },
      net: apply(netArea, { A: bays.map(areaOf) }, { means: `area of ${row.what} in place` }),
      also: [needed],
      buy: {
        count: apply(packsByPieces, { n_net: needed, f_more, n_each }),
        unit: "pack",
        each: `${row.pack} of ${(row.width * 1000).toFixed(0)} x ${(row.length * 1000).toFixed(0)} mm`,
        holds: rowField("batts", row, "pack", area, { unit: "m2", symbol: "A_each", means: "area of one pack" }),
      },
      parts: bays.map((part) => part.id),
    };
  });
}

/** The residual is the share of batts above the least that area alone allows. */
function battsCut(row: BattRow, bays: readonly Part[]): Quantity<"1"> {
  const pieces = bays.flatMap((bay) => piecesOfBay(row, bay));
  const batts = nestSheets(pieces, [row]).length;
  const area = pieces.reduce((sum, piece) => sum + piece.width * piece.length, 0);
  const least = Math.ceil(area / (row.width * row.length) - 1e-9);
  return given(batts, "1", "n_net", `whole batts of ${row.what}`, {
    kind: "solver",
    method: `guillotine first fit decreasing with ${SHEET_KERF * 1000} mm kerf, residual as share of batts above the least by area`,
    size: `${pieces.length} pieces in ${bays.length} bays`,
    residual: (batts - least) / batts,
  });
}

/** Whole batts one above the other and a rest; side by side where a bay is wider than a batt. */
function piecesOfBay({ width, length }: BattRow, { id, rect }: Part): readonly SheetPiece[] {
  return cuts(rectWidth(rect), width).flatMap((across, column) =>
    cuts(rectHeight(rect), length).map((up, row) => ({ key: `${id}#${column + 1}.${row + 1}`, width: across, length: up })),
  );
}

/** A stretch in whole sizes and a rest. */
function cuts(stretch: number, size: number): readonly number[] {
  const whole = Math.floor((stretch - SAME_LENGTH) / size);
  return [...Array.from({ length: whole }, () => size), stretch - whole * size];
}
