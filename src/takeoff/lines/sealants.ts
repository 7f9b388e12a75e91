import type { Build, PlacedOpening } from "../../build/build.ts";
import { surfaceOf } from "../../build/build.ts";
import type { Part } from "../../build/part.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { SealantRow } from "../../catalogue/rows.ts";
import { edgesOf } from "../../geometry/polygon.ts";
import { rectHeight, rectWidth } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { source } from "../../working/source.ts";
import { bondArea, bondLength, netArea, netLength, packsByArea, packsByLength, perimeterLength, seamLength } from "../formulas.ts";
import type { TakeoffLine } from "../takeoff.ts";
import { areaOf, byKey, constant, practice, rowField } from "./partQuantities.ts";

/** Share of sealant, adhesive, tape and filler lost: common practice. */
const MORE = 0.1;

/** Sealants by joint, tape and compound by seam, adhesives and weld by bonded area, weld of frames by the skin's hole. */
export function sealantLines(build: Build, parts: readonly Part[]): readonly TakeoffLine[] {
  const lengths = new Map<string, Run<"m">[]>();
  const areas = new Map<string, Run<"m2">[]>();
  for (const { id, run } of [...jointRuns(build), ...seamRuns(parts)]) push(lengths, id, run);
  for (const bond of bondRuns(parts)) {
    if (bond.of === "m") push(lengths, bond.id, bond.run);
    else push(areas, bond.id, bond.run);
  }
  return [
    ...[...lengths].map(([id, runs]) => lengthLine(catalogue.sealants.get(id), runs)),
    ...[...areas].map(([id, runs]) => areaLine(catalogue.sealants.get(id), runs)),
  ];
}

interface Run<U extends string> {
  readonly amount: Quantity<U>;
  readonly parts: readonly string[];
}

/** Length round the hole that an opening takes out of the skin, `runs` times. */
export function holePerimeter({ opening, hole }: PlacedOpening, runs: number, symbol: string): Quantity<"m"> {
  const of = (field: string) => ({ kind: "part", id: `opening ${opening.id}`, field }) as const;
  const b_p = given(rectWidth(hole), "m", "b_p", `width of the hole for ${opening.id}`, of("hole width"));
  const h_p = given(rectHeight(hole), "m", "h_p", `height of the hole for ${opening.id}`, of("hole height"));
  const n_run = constant(runs, "1", "n_run", "runs round it", source("inside and outside, or once", "derived"));
  return apply(perimeterLength, { b_p, h_p, n_run }, { symbol, means: `length round the hole for ${opening.id}, ${runs} times` });
}

/** True for a hole through the box's own skin, doors or floor; partitions have none to seal against weather. */
export function isThroughSkin({ surface }: PlacedOpening): boolean {
  return surface.kind === "face";
}

function jointRuns(build: Build): readonly { readonly id: string; readonly run: Run<"m"> }[] {
  const partsOf = (id: string): readonly string[] => build.parts.filter(({ of }) => of === id).map((part) => part.id);
  const skin = build.openings.filter(isThroughSkin);
  const sealed = skin.map((placed) => ({
    id: "sealant-polyurethane",
    run: { amount: holePerimeter(placed, 2, "L_round"), parts: partsOf(placed.opening.id) },
  }));
  const framed = skin
    .filter(({ opening }) => opening.frame !== undefined)
    .map((placed) => ({ id: "weld-stitch", run: { amount: holePerimeter(placed, 1, "L_round"), parts: partsOf(placed.opening.id) } }));
  const rated = build.openings
    .filter(({ opening }) => opening.fireRating !== undefined && opening.fireRating > 0)
    .map((placed) => ({ id: "sealant-firestop", run: { amount: holePerimeter(placed, 1, "L_round"), parts: partsOf(placed.opening.id) } }));
  return [...sealed, ...framed, ...rated, { id: "sealant-polyurethane", run: floorRun(build) }];
}

function floorRun(build: Build): Run<"m"> {
  const { lined } = surfaceOf(build, "floor");
  const of = (field: string) => ({ kind: "part", id: "floor", field }) as const;
  const b_p = given(rectWidth(lined), "m", "b_p", "length of the finished floor", of("length"));
  const h_p = given(rectHeight(lined), "m", "h_p", "width of the finished floor", of("width"));
  const n_run = constant(1, "1", "n_run", "runs round it", source("once", "derived"));
  return { amount: apply(perimeterLength, { b_p, h_p, n_run }, { means: "length round the floor" }), parts: [] };
}

/** Seams of the outermost taped boards on each side of each surface; layers under them are not taped. */
function seamRuns(parts: readonly Part[]): readonly { readonly id: string; readonly run: Run<"m"> }[] {
  return tapedFaces(parts).flatMap((pieces) => {
    const run = { amount: seamOf(pieces), parts: pieces.map(({ id }) => id) };
    return [{ id: "tape-joint", run }, { id: "compound-joint", run }];
  });
}

/** The pieces whose joints are taped, by side of a surface: boards of a taped kind that no other layer covers. */
export function tapedFaces(parts: readonly Part[]): readonly (readonly Part[])[] {
  const boards = parts.filter(({ role }) => role === "board");
  const sides = byKey(boards, (part) => `${part.surface} ${part.depth.from < 0 ? "near" : "far"}`);
  return [...sides.values()].flatMap((side) => {
    const outermost = Math.max(...side.map(reach));
    const taped = side.filter((part) => isTaped(part) && reach(part) > outermost - SAME_LENGTH);
    return taped.length === 0 ? [] : [taped];
  });
}

function isTaped({ row }: Part): boolean {
  return row?.table === "boards" && catalogue.boards.get(row.id).taped;
}

/** Taped length of the pieces of one side, m. */
export function seamOf(pieces: readonly Part[]): Quantity<"m"> {
  const L = pieces.map((part) => {
    const outline = part.shape.kind === "panel" ? part.shape.outline : [];
    const edges = outline.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((ring) => edgesOf(ring)));
    const length = edges.reduce((sum, [a, b]) => sum + Math.hypot(b.x - a.x, b.y - a.y), 0);
    return given(length, "m", "L", `edges of ${part.what}`, { kind: "part", id: part.id, field: "edges" });
  });
  return apply(seamLength, { L }, { means: `taped joints on ${pieces[0]?.surface ?? "no surface"}` });
}

function reach(part: Part): number {
  return Math.max(Math.abs(part.depth.from), Math.abs(part.depth.to));
}

type Bond =
  | { readonly of: "m"; readonly id: string; readonly run: Run<"m"> }
  | { readonly of: "m2"; readonly id: string; readonly run: Run<"m2"> };

function bondRuns(parts: readonly Part[]): readonly Bond[] {
  const boards = byKey(parts, (part) => (part.shape.kind === "panel" && part.row?.table === "boards" ? part.row.id : undefined));
  return [...boards].flatMap(([id, group]): readonly Bond[] => {
    const row = catalogue.boards.get(id);
    if (row.bond === undefined) return [];
    const A = group.map(areaOf);
    const ids = group.map((part) => part.id);
    const { sealant, perArea } = row.bond;
    if (catalogue.sealants.get(sealant).perPiece.of === "m") {
      const k_bond = rowField("boards", row, "bond", perArea, { unit: "m/m2", symbol: "k_bond", means: "weld or bead for each square metre" });
      return [{ of: "m", id: sealant, run: { amount: apply(bondLength, { A, k_bond }, { means: `bond of ${row.what}` }), parts: ids } }];
    }
    const k_glue = rowField("boards", row, "bond", perArea, { unit: "1", symbol: "k_glue", means: "share of the area that is glued" });
    return [{ of: "m2", id: sealant, run: { amount: apply(bondArea, { A, k_glue }, { means: `bond of ${row.what}` }), parts: ids } }];
  });
}

function lengthLine(row: SealantRow, runs: readonly Run<"m">[]): TakeoffLine {
  const net = apply(netLength, { L: runs.map(({ amount }) => amount) }, { means: `length of ${row.what}` });
  const L_each = rowField("sealants", row, "one piece gives", row.perPiece.amount, { unit: "m", symbol: "L_each", means: "length that one piece gives" });
  const f_more = practice(MORE, "1", "f_more", "more for losses");
  return lineOf(row, net, apply(packsByLength, { L_net: net, f_more, L_each }), runs);
}

function areaLine(row: SealantRow, runs: readonly Run<"m2">[]): TakeoffLine {
  const net = apply(netArea, { A: runs.map(({ amount }) => amount) }, { means: `area of ${row.what}` });
  const A_each = rowField("sealants", row, "one piece gives", row.perPiece.amount, { unit: "m2", symbol: "A_each", means: "area that one piece covers" });
  const f_more = practice(MORE, "1", "f_more", "more for losses");
  return lineOf(row, net, apply(packsByArea, { A_net: net, f_more, A_each }), runs);
}

function lineOf(row: SealantRow, net: Quantity, count: Quantity<"1">, runs: readonly Run<string>[]): TakeoffLine {
  return {
    id: `sealants/${row.id}`,
    group: "sealants",
    what: row.what,
    row: { table: "sealants", id: row.id },
    net,
    also: [],
    buy: { count, unit: row.unit, each: `${row.perPiece.amount.toFixed(1)} ${row.perPiece.of}` },
    parts: [...new Set(runs.flatMap(({ parts }) => parts))],
  };
}

function push<T>(into: Map<string, T[]>, key: string, value: T): void {
  const list = into.get(key);
  if (list === undefined) into.set(key, [value]);
  else list.push(value);
}
