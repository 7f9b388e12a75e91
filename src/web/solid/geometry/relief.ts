import type { Polygon, Rect, Surface } from "../../../river/screen.ts";
import { type Form, type FormMaker, formMaker } from "./form.ts";
import { type Piece, type Strip, stripsOf } from "./strips.ts";

/** Between two sheets that bend along u: `front` lies further inward than `back`. */
export interface Relief {
  readonly outline: readonly Polygon[];
  /** Where front or back bend. */
  readonly bends: readonly number[];
  /** The part of the surface where the back bends; elsewhere it is flat. */
  readonly zone: Rect;
  readonly front: (u: number) => number;
  readonly back: (u: number, inZone: boolean) => number;
}

/** A closed thing between two bent sheets over outlines whose sides run along u and v. */
export function reliefForm(surface: Surface, relief: Relief): Form {
  const maker = formMaker(surface);
  const strips = stripsOf(relief.outline, relief.bends, relief.zone);
  for (const strip of strips) {
    for (const piece of strip.pieces) sheets(maker, relief, strip, piece);
    endWalls(maker, relief, strip);
  }
  const none: readonly Piece[] = [];
  const bends = new Set(relief.bends);
  for (const [index, { u0, pieces }] of strips.entries()) {
    lineWalls(maker, relief, { u: u0, bends: bends.has(u0) }, strips[index - 1]?.pieces ?? none, pieces);
  }
  const last = strips.at(-1);
  if (last !== undefined) lineWalls(maker, relief, { u: last.u1, bends: false }, last.pieces, none);
  return maker.form();
}

/** Front and back of one piece. */
function sheets(maker: FormMaker, { front, back }: Relief, { u0, u1 }: Strip, { v0, v1, inZone }: Piece): void {
  const [f0, f1, b0, b1] = [front(u0), front(u1), back(u0, inZone), back(u1, inZone)];
  maker.quad([u0, v0, f0], [u1, v0, f1], [u1, v1, f1], [u0, v1, f0]);
  maker.quad([u0, v0, b0], [u0, v1, b0], [u1, v1, b1], [u1, v0, b1]);
}

/** Walls of a strip along u: at its ends, and where the back steps. */
function endWalls(maker: FormMaker, { front, back }: Relief, { u0, u1, pieces }: Strip): void {
  const wall = (v: number, from: readonly [number, number], to: readonly [number, number], facesDown: boolean): void => {
    const low = [[u0, v, from[0]], [u1, v, from[1]]] as const;
    const high = [[u1, v, to[1]], [u0, v, to[0]]] as const;
    if (facesDown) maker.quad(low[0], low[1], high[0], high[1]);
    else maker.quad(high[1], high[0], low[1], low[0]);
    maker.edge(low[0], low[1]);
    maker.edge(high[0], high[1]);
  };
  const fronts = [front(u0), front(u1)] as const;
  const backs = (piece: Piece): readonly [number, number] => [back(u0, piece.inZone), back(u1, piece.inZone)];
  for (const [index, piece] of pieces.entries()) {
    const before = pieces[index - 1];
    const after = pieces[index + 1];
    if (before?.v1 !== piece.v0) wall(piece.v0, backs(piece), fronts, true);
    else if (piece.inZone) wall(piece.v0, backs(piece), backs(before), true);
    if (after?.v0 !== piece.v1) wall(piece.v1, backs(piece), fronts, false);
    else if (piece.inZone) wall(piece.v1, backs(piece), backs(after), false);
  }
}

interface Line {
  readonly u: number;
  /** True where the sheets bend here, which is drawn as a line. */
  readonly bends: boolean;
}

/** Walls across u between two strips, where one of them is missing or lies deeper than the other, and the line of a bend. */
function lineWalls(maker: FormMaker, { front, back }: Relief, { u, bends }: Line, left: readonly Piece[], right: readonly Piece[]): void {
  const f = front(u);
  const vs = [...new Set([...left, ...right].flatMap(({ v0, v1 }) => [v0, v1]))].sort((a, b) => a - b);
  for (const [index, v1] of vs.slice(1).entries()) {
    const v0 = vs[index] as number;
    const over = (piece: Piece): boolean => piece.v0 <= v0 && piece.v1 >= v1;
    const l = left.find(over);
    const r = right.find(over);
    const bl = l === undefined ? f : back(u, l.inZone);
    const br = r === undefined ? f : back(u, r.inZone);
    if (bl < br) maker.quad([u, v0, bl], [u, v1, bl], [u, v1, br], [u, v0, br]);
    if (br < bl) maker.quad([u, v0, br], [u, v0, bl], [u, v1, bl], [u, v1, br]);
    const line = bl === br ? maker.bend : maker.edge;
    if (bl !== br || bends) for (const w of new Set([f, bl, br])) line([u, v0, w], [u, v1, w]);
  }
}
