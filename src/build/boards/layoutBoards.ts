import { cutRects, type Polygon } from "../../geometry/polygon.ts";
import type { Rect } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";

/** Least width of a board strip that a shop likes to fix. */
const LEAST_STRIP = 0.1;
/** Least distance between seams of neighbouring layers, and of neighbouring rows: more than half a usual bay. */
const STAGGER = 0.25;
/** Distance that a seam keeps from the side of an opening where it can. */
const CLEAR_OF_OPENING = 0.06;

/** What one layer of boards is laid out in. */
export interface BoardField {
  readonly rect: Rect;
  /** Lines in u that can carry a seam; `everywhere` on a solid floor. */
  readonly seamLines: readonly number[] | "everywhere";
  readonly from: "start" | "end";
  readonly holes: readonly Rect[];
  readonly stock: { readonly width: number; readonly length: number };
  readonly lay: "along studs" | "across studs";
  /** The layer beneath, whose seams this one keeps away from. */
  readonly beneath: BoardLayout | undefined;
}

export interface LaidBoard {
  /** The board before openings are cut, as it comes from the sheet. */
  readonly blank: Rect;
  readonly outline: Polygon;
}

export interface BoardLayout {
  readonly boards: readonly LaidBoard[];
  /** Seams in u, by row from the bottom. */
  readonly seams: readonly (readonly number[])[];
  /** Seams in v, which need backing between the studs. */
  readonly rowSeams: readonly number[];
  /** Seams that could not keep clear of the layer beneath. */
  readonly staggerLost: readonly number[];
  /** Board edges that found no line to fall on. */
  readonly unsupported: readonly number[];
}

/**
 * Lays one layer of boards: rows of one board's reach, each row from the stated end with the widest board whose far edge
 * falls on a seam line, clear of the seams beneath and of opening sides where the lines allow.
 */
export function layoutBoards(field: BoardField): BoardLayout {
  const { stock, lay, rect } = field;
  const reach = lay === "along studs" ? stock.width : stock.length;
  const rowHeight = lay === "along studs" ? stock.length : stock.width;
  const rowSeams = rowSeamsOf(rect, rowHeight, field.beneath?.rowSeams ?? []);
  const rows = [rect.v0, ...rowSeams, rect.v1];

  const seams: (readonly number[])[] = [];
  const staggerLost: number[] = [];
  const unsupported: number[] = [];
  const boards: LaidBoard[] = [];
  for (const [index, bottom] of rows.slice(0, -1).entries()) {
    const top = rows[index + 1] as number;
    const below = lay === "across studs" ? (seams[index - 1] ?? []) : [];
    const avoid = [...(field.beneath?.seams.flat() ?? []), ...below];
    const row = seamsOfRow(field, reach, avoid);
    seams.push(row.seams);
    staggerLost.push(...row.staggerLost);
    unsupported.push(...row.unsupported);
    const edges = [rect.u0, ...row.seams, rect.u1];
    for (const [column, left] of edges.slice(0, -1).entries()) {
      const blank = { u0: left, u1: edges[column + 1] as number, v0: bottom, v1: top };
      for (const outline of cutRects(blank, field.holes)) boards.push({ blank, outline });
    }
  }
  return { boards, seams, rowSeams, staggerLost, unsupported };
}

/** Seams in v: whole boards from the bottom, moved where they would lie over a seam beneath or leave a thin strip. */
function rowSeamsOf(rect: Rect, rowHeight: number, beneath: readonly number[]): readonly number[] {
  const seams: number[] = [];
  let from = rect.v0;
  while (rect.v1 - from > rowHeight + SAME_LENGTH) {
    const whole = Math.min(from + rowHeight, rect.v1 - LEAST_STRIP);
    const clash = beneath.some((seam) => Math.abs(seam - whole) < STAGGER);
    const seam = clash ? Math.max(whole - rowHeight / 2, from + LEAST_STRIP) : whole;
    seams.push(seam);
    from = seam;
  }
  return seams;
}

interface RowSeams {
  readonly seams: readonly number[];
  readonly staggerLost: readonly number[];
  readonly unsupported: readonly number[];
}

/** Works from u0 upward; a row laid from the other end is mirrored first and back after. */
function seamsOfRow(field: BoardField, reach: number, avoid: readonly number[]): RowSeams {
  const { rect } = field;
  const mirror = (u: number): number => (field.from === "start" ? u : rect.u0 + rect.u1 - u);
  const lines = field.seamLines === "everywhere" ? "everywhere" : field.seamLines.map(mirror).sort((a, b) => a - b);
  const shunned = avoid.map(mirror);
  const openingSides = field.holes.flatMap(({ u0, u1 }) => [mirror(u0), mirror(u1)]);

  const seams: number[] = [];
  const staggerLost: number[] = [];
  const unsupported: number[] = [];
  let from = rect.u0;
  while (rect.u1 - from > reach + SAME_LENGTH) {
    const latest = Math.min(from + reach, rect.u1 - LEAST_STRIP) + SAME_LENGTH;
    const possible = lines === "everywhere" ? freeLines(from, latest, shunned) : lines.filter((u) => u > from + LEAST_STRIP && u <= latest);
    const staggered = possible.filter((u) => shunned.every((seam) => Math.abs(seam - u) >= STAGGER));
    const best = widest(staggered, openingSides) ?? widest(possible, openingSides);
    const seam = best ?? latest - SAME_LENGTH;
    if (best === undefined) unsupported.push(mirror(seam));
    else if (staggered.length === 0) staggerLost.push(mirror(seam));
    seams.push(seam);
    from = seam;
  }
  return { seams: seams.map(mirror).sort((a, b) => a - b), staggerLost, unsupported };
}

/** The farthest line, of those clear of opening sides where there are any. */
function widest(lines: readonly number[], openingSides: readonly number[]): number | undefined {
  const clear = lines.filter((u) => openingSides.every((side) => Math.abs(side - u) >= CLEAR_OF_OPENING));
  return clear.at(-1) ?? lines.at(-1);
}

/** On a solid floor: the full reach, or half of it where the full one would lie over a seam beneath. */
function freeLines(from: number, latest: number, shunned: readonly number[]): readonly number[] {
  const full = latest - SAME_LENGTH;
  return shunned.some((seam) => Math.abs(seam - full) < STAGGER) ? [from + (full - from) / 2, full] : [full];
}
