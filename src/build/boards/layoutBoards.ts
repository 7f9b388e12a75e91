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

/** A run of seams from some place to the far end, with what it costs. */
interface SeamRun {
  readonly seams: readonly Seam[];
  readonly cost: number;
}

interface Seam {
  readonly at: number;
  readonly supported: boolean;
  readonly staggered: boolean;
}

/** What a seam costs: each fault outweighs any number of the lesser ones that a wall can hold. */
const SEAM_COST = { unsupported: 1e6, staggerLost: 1e3, besideOpening: 1.5, seam: 1 };

/**
 * The cheapest run of seams over a row, found from the far end backward; of equal runs the one with the widest boards
 * first. Works from u0 upward; a row laid from the other end is mirrored first and back after.
 */
function seamsOfRow(field: BoardField, reach: number, avoid: readonly number[]): RowSeams {
  const { rect, seamLines } = field;
  const mirror = (u: number): number => (field.from === "start" ? u : rect.u0 + rect.u1 - u);
  const lines = seamLines === "everywhere" ? seamLines : seamLines.map(mirror).sort((a, b) => b - a);
  const shunned = avoid.map(mirror);
  const openingSides = field.holes.flatMap(({ u0, u1 }) => [mirror(u0), mirror(u1)]);

  const found = new Map<number, SeamRun>();
  const runFrom = (from: number): SeamRun => {
    if (rect.u1 - from <= reach + SAME_LENGTH) return { seams: [], cost: 0 };
    const known = found.get(from);
    if (known !== undefined) return known;
    let best: SeamRun | undefined;
    for (const { at, supported } of seamsWithin(lines, from, Math.min(from + reach, rect.u1 - LEAST_STRIP), shunned)) {
      const staggered = shunned.every((seam) => Math.abs(seam - at) >= STAGGER);
      const beside = openingSides.some((side) => Math.abs(side - at) < CLEAR_OF_OPENING);
      const rest = runFrom(at);
      const cost =
        rest.cost +
        SEAM_COST.seam +
        (supported ? 0 : SEAM_COST.unsupported) +
        (staggered ? 0 : SEAM_COST.staggerLost) +
        (beside ? SEAM_COST.besideOpening : 0);
      if (best === undefined || cost < best.cost) best = { seams: [{ at, supported, staggered }, ...rest.seams], cost };
    }
    if (best === undefined) throw new RangeError(`a board that reaches ${reach} m cannot cover a row`);
    found.set(from, best);
    return best;
  };

  const { seams } = runFrom(rect.u0);
  const places = (some: readonly Seam[]): readonly number[] => some.map(({ at }) => mirror(at)).sort((a, b) => a - b);
  return {
    seams: places(seams),
    staggerLost: places(seams.filter(({ supported, staggered }) => supported && !staggered)),
    unsupported: places(seams.filter(({ supported }) => !supported)),
  };
}

/** Where a board that starts at `from` may end, the farthest first; off any line where there is none within reach. */
function seamsWithin(
  lines: readonly number[] | "everywhere",
  from: number,
  latest: number,
  shunned: readonly number[],
): readonly { readonly at: number; readonly supported: boolean }[] {
  if (lines === "everywhere") {
    const clash = shunned.some((seam) => Math.abs(seam - latest) < STAGGER);
    return (clash ? [latest, from + (latest - from) / 2] : [latest]).map((at) => ({ at, supported: true }));
  }
  const possible = lines.filter((at) => at > from + LEAST_STRIP && at <= latest + SAME_LENGTH);
  return possible.length > 0 ? possible.map((at) => ({ at, supported: true })) : [{ at: latest, supported: false }];
}
