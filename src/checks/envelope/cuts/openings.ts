import type { Build, PlacedOpening } from "../../../build/build.ts";
import type { Part } from "../../../build/part.ts";
import type { Span } from "../../../build/surface.ts";
import { catalogue } from "../../../catalogue/catalogue.ts";
import type { Rect } from "../../../geometry/rect.ts";
import type { Region, Sheet } from "../../../physics/conduction.ts";
import { insideSurfaceResistance, outsideSurfaceResistance } from "../../../physics/plainLayers.ts";
import { openingAir, OUTSIDE, roomAt } from "./airs.ts";
import { gapConductivity } from "./gaps.ts";
import { type Cut, overlapOf, type SurfaceInCut, worldOf } from "./cut.ts";
import { type Shown, slab } from "./layers.ts";

/** What closes an opening against the weather: its best article of known transmittance, else a bare steel sheet. */
export interface Closure {
  readonly what: string;
  readonly depth: Span;
  /** W/(m2 K) from air to air; undefined for the sheet. */
  readonly transmittance: number | undefined;
  readonly article: string | undefined;
}

/** Steel of an article that states no transmittance, m: errs cold. */
const BARE_STEEL = 0.0015;

/** The closure of an opening in a face. */
export function closureOf({ parts }: Build, { opening, surface }: PlacedOpening): Closure {
  const articles = parts.filter(({ role, of }) => role === "article" && of === opening.id);
  const known = articles.flatMap((part) => {
    const transmittance = articleOf(part).transmittance;
    return transmittance === undefined ? [] : [{ part, transmittance }];
  });
  const best = known.sort((a, b) => a.transmittance - b.transmittance)[0];
  if (best !== undefined) {
    const { what, depth, row } = best.part;
    return { what, depth, transmittance: best.transmittance, article: row?.id };
  }
  const plane = articles[0]?.depth.from ?? -surface.skinDepth;
  return { what: articles[0]?.what ?? opening.kind, depth: { from: plane, to: plane }, transmittance: undefined, article: undefined };
}

/** Air before and behind the closure of an opening, and the closure, where a plane cuts it. */
export function openingInCut(build: Build, placed: PlacedOpening, inCut: SurfaceInCut, cut: Cut): Shown {
  const clear = crossed(placed.clear, inCut);
  if (clear === undefined) return { regions: [], sheets: [] };
  const closure = closureOf(build, placed);
  const { x, y } = inCut.place((clear.from + clear.to) / 2, 0);
  const room = roomAt(build, worldOf(cut, x, y).x);
  if (room === undefined) return { regions: [], sheets: [] };
  const inside = openingAir(room);
  const lined = crossed(placed.lining, inCut) ?? clear;
  const { finished } = inCut.surface.stack;
  const frame = build.parts.find(({ role, of }) => role === "opening frame" && of === placed.opening.id);
  const reveal = frame?.depth.to ?? closure.depth.to;
  return {
    regions: [
      ...aroundArticle(placed, inCut, lined, { from: reveal, to: finished }, inside),
      ...air(placed, inCut, clear, { from: inCut.w.from, to: closure.depth.from }, OUTSIDE),
      ...air(placed, inCut, clear, { from: closure.depth.to, to: finished }, inside),
      ...leaf(closure, inCut, clear),
    ],
    sheets: [...bareSheet(closure, inCut, clear), ...sleeve(closure, inCut, clear, reveal)],
  };
}

function air({ opening }: PlacedOpening, inCut: SurfaceInCut, t: Span, depth: Span, id: string): readonly Region[] {
  const outline = slab(inCut, t, depth);
  return outline === undefined ? [] : [{ what: `air in the opening ${opening.id}`, outline, fill: { kind: "air", air: id } }];
}

/** Between the article and the lining, inward of the frame: closed by the trim, else open to the room. */
function aroundArticle(placed: PlacedOpening, inCut: SurfaceInCut, t: Span, depth: Span, room: string): readonly Region[] {
  if (placed.opening.trim === undefined) return air(placed, inCut, t, depth, room);
  const outline = slab(inCut, t, depth);
  if (outline === undefined) return [];
  const conductivity = gapConductivity(depth.to - depth.from, "horizontal");
  return [{ what: `air behind the trim of ${placed.opening.id}`, outline, fill: { kind: "solid", conductivity } }];
}

/** A body whose conductivity gives the article's transmittance between the level surface resistances. */
function leaf({ transmittance, depth, what }: Closure, inCut: SurfaceInCut, t: Span): readonly Region[] {
  if (transmittance === undefined) return [];
  const body = 1 / transmittance - insideSurfaceResistance("horizontal").value - outsideSurfaceResistance().value;
  if (!(body > 0)) throw new RangeError(`${what}: a transmittance of ${transmittance} W/(m2 K) leaves no resistance to the article itself`);
  const outline = slab(inCut, t, depth);
  return outline === undefined ? [] : [{ what, outline, fill: { kind: "solid", conductivity: (depth.to - depth.from) / body } }];
}

function bareSheet({ transmittance, depth, what }: Closure, inCut: SurfaceInCut, t: Span): readonly Sheet[] {
  if (transmittance !== undefined) return [];
  const points = [inCut.place(t.from, depth.from), inCut.place(t.to, depth.from)];
  return [{ what, points, conductivity: catalogue.materials.get("steel").conductivity, thickness: BARE_STEEL }];
}

/** Around outside air that reaches past the frame to an article further in, as to a damper behind its louvre. */
function sleeve({ what, depth }: Closure, inCut: SurfaceInCut, t: Span, from: number): readonly Sheet[] {
  if (depth.from - from < 1e-3) return [];
  const { conductivity } = catalogue.materials.get("steel");
  return [t.from, t.to].map((at) => ({ what: `sleeve of the ${what}`, points: [inCut.place(at, from), inCut.place(at, depth.from)], conductivity, thickness: BARE_STEEL }));
}

/** The stretch of t that a rectangle covers where the plane crosses it, inside the window. */
function crossed(rect: Rect, { runs, at, t }: SurfaceInCut): Span | undefined {
  const [along, across] = [{ from: rect.u0, to: rect.u1 }, { from: rect.v0, to: rect.v1 }];
  const [own, other] = runs === "u" ? [along, across] : [across, along];
  return at > other.from && at < other.to ? overlapOf(own, t) : undefined;
}

function articleOf({ row }: Part) {
  if (row === undefined) throw new RangeError("an article needs its row");
  return catalogue.articles.get(row.id);
}
