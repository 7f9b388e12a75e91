import type { Build } from "../../build/build.ts";
import type { Part } from "../../build/part.ts";
import type { Surface } from "../../build/surface.ts";
import type { Polygon } from "../../geometry/polygon.ts";
import { polygonArea, polygonBounds } from "../../geometry/polygon.ts";
import type { Rect } from "../../geometry/rect.ts";
import { overlaps, rectHeight, rectWidth } from "../../geometry/rect.ts";
import type { DimensionChain, DrawnShape, View } from "../drawing.ts";
import { TEXT } from "../style.ts";
import { chain, runningFrom, sizeText } from "./chains.ts";
import { layerOf } from "./cut.ts";
import { openingLabel, openingSeen } from "./elevation.ts";
import { capital, datumsOf, openingsOn } from "./faceNames.ts";
import { openingChains } from "./openingChains.ts";
import { box, direct, mirrored, rings, stroke, viewOf, words } from "./shapes.ts";
import type { Map2 } from "./shapes.ts";

/** Which side of a surface is looked at: faces have one inside, partitions two. */
export type Side = "inside" | "door side" | "blind side";

/** Walls from inside are seen from behind; roof and floor read as the plan does, the ceiling as if mirrored in the floor. */
function mapOf(surface: Surface, side: Side): Map2 {
  if (surface.kind === "partition") return side === "blind side" ? mirrored : direct;
  return surface.inward.z === 0 ? mirrored : direct;
}

function titleOf(surface: Surface, side: Side, what: string): string {
  if (surface.kind === "partition") {
    return `${capital(surface.name)}, ${what}, seen from the ${side === "blind side" ? "blind end" : "door end"}`;
  }
  if (surface.id === "roof") return `Ceiling, ${what}, reads as the plan does`;
  return surface.id === "floor" ? `Floor, ${what}, seen from above` : `${capital(surface.name)}, ${what}, seen from inside`;
}

/** Studs, tracks, headers, furring and openings of a face from inside; undefined where it has none of them. */
export function framingView(build: Build, surface: Surface): View | undefined {
  const side: Side = surface.kind === "partition" ? "door side" : "inside";
  const map = mapOf(surface, side);
  const parts = build.parts.filter((part) => part.surface === surface.id && isFraming(part));
  const openings = openingsOn(build, surface);
  if (parts.length === 0 && openings.length === 0) return undefined;
  const { units } = build.job;
  const shapes = [
    ...datumLines(surface, map),
    box("outline", surface.inside, map),
    ...parts.map((part) => box(layerOf(part.role), part.rect, map, part.temporary ? { dashed: true } : { filled: true })),
    ...openings.flatMap((placed) => openingSeen(placed, map, false)),
  ];
  const { u: [start] } = datumsOf(surface);
  const middles = studMiddles(parts);
  const studRow: DimensionChain[] =
    middles.length === 0
      ? []
      : [
          runningFrom(
            { direction: "across", side: "above", row: 1, label: `${studWord(parts)}, ${start.from}` },
            start.at, middles, units, (u) => map(u, 0).x,
          ),
        ];
  const places = openingChains(surface, openings, units, map, { below: 1, above: 2, left: 1, right: 1 });
  return viewOf(`${surface.id}-framing`, titleOf(surface, side, "framing"), shapes, [...places, ...studRow]);
}

/** One layer of boards from the side that it is put up from, over the studs that carry it. */
export function boardsView(build: Build, surface: Surface, layer: number, side: Side): View | undefined {
  const boards = build.parts.filter((part) => part.surface === surface.id && part.layer === layer && isBoard(part) && !isLeaf(part));
  if (boards.length === 0) return undefined;
  const what = `layer ${layer - farStart(surface, side)}, ${boardWord(boards)}`;
  const behind = build.parts.filter((part) => part.surface === surface.id && isStudLike(part));
  return boardView(build, surface, boards, behind, mapOf(surface, side), `${surface.id}-${side.replace(" ", "-")}-boards-${layer}`, titleOf(surface, side, what));
}

/** The lining on the inside of the cargo door leaves, a view for each layer. */
export function leafViews(build: Build, doorEnd: Surface): readonly View[] {
  const lining = build.parts.filter((part) => part.surface === doorEnd.id && isBoard(part) && isLeaf(part));
  const layers = [...new Set(lining.map(({ layer }) => layer))];
  return layers.map((layer, index) => {
    const boards = lining.filter((part) => part.layer === layer);
    const title = `Cargo doors, leaf lining, layer ${index + 1}, ${boardWord(boards)}, seen from inside`;
    return boardView(build, doorEnd, boards, [], mirrored, `doorEnd-leaf-boards-${index + 1}`, title);
  });
}

function boardView(
  build: Build, surface: Surface, boards: readonly Part[], behind: readonly Part[], map: Map2, id: string, title: string,
): View {
  const { units } = build.job;
  const openings = openingsOn(build, surface);
  const shapes: DrawnShape[] = [
    ...behind.map((part) => box("hidden", part.rect, map, { dashed: true })),
    ...boards.flatMap((part) => ("outline" in part.shape ? part.shape.outline.flatMap((one) => rings("boards", one, map)) : [box("boards", part.rect, map)])),
    ...openings.map(({ clear }) => box("openings", clear, map)),
    ...openings.map((placed) => openingLabel(placed, map)),
    ...boards.flatMap((part) => boardSize(part, openings.map(({ lining }) => lining), map, units)),
  ];
  const us = boards.flatMap(({ shape, rect }) => ("outline" in shape ? shape.outline.map(polygonBounds) : [rect]).flatMap((r) => [r.u0, r.u1]));
  const vs = boards.flatMap(({ rect }) => [rect.v0, rect.v1]);
  const { u: [start], v: [low] } = datumsOf(surface);
  const least = Math.min(...us);
  return viewOf(id, title, shapes, [
    runningFrom({ direction: "across", side: "below", row: 1, label: `seams ${start.from}` }, start.at, us, units, (u) => map(u, 0).x),
    chain({ direction: "across", side: "below", row: 2, label: "boards over all" }, [least, Math.max(...us)], units, (u) => map(u, 0).x),
    runningFrom({ direction: "up", side: "left", row: 1, label: low.from }, low.at, vs, units, (v) => map(0, v).y),
  ]);
}

/**
 * Size of the piece as it comes from the sheet, written along the longer side of the largest part that is left of it,
 * clear of openings where there is room.
 */
function boardSize(part: Part, openings: readonly Rect[], map: Map2, units: Build["job"]["units"]): readonly DrawnShape[] {
  if (part.shape.kind !== "panel") return [];
  const { blank, outline } = part.shape;
  const largest = outline.reduce<Polygon | undefined>(
    (best, one) => (best === undefined || polygonArea(one) > polygonArea(best) ? one : best),
    undefined,
  );
  if (largest === undefined) return [];
  const seen = polygonBounds(largest);
  const text = sizeText([rectWidth(blank), rectHeight(blank)], units);
  const upright = rectHeight(seen) > rectWidth(seen);
  const [long, slim] = [(text.length * LETTER) / 2, LETTER];
  const reach = upright ? { u: slim, v: long } : { u: long, v: slim };
  const spots = SHARES.flatMap((b) => SHARES.map((a) => ({ u: seen.u0 + a * rectWidth(seen), v: seen.v0 + b * rectHeight(seen) })));
  const free = spots.find(({ u, v }) => {
    const spot = { u0: u - reach.u, u1: u + reach.u, v0: v - reach.v, v1: v + reach.v };
    const within = spot.u0 > seen.u0 && spot.u1 < seen.u1 && spot.v0 > seen.v0 && spot.v1 < seen.v1;
    return within && !openings.some((opening) => overlaps(opening, spot));
  });
  const at = free ?? { u: (seen.u0 + seen.u1) / 2, v: (seen.v0 + seen.v1) / 2 };
  return [words("text", map(at.u, at.v), text, TEXT.small, upright)];
}

/** About what a letter takes on a board at the usual scales, metres. */
const LETTER = 0.066;
/** Where on a board its size is tried, as shares of its sides, the middle first. */
const SHARES = [0.5, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88];

/** Inner edges of posts, bare floor and top rail, from which places are measured. */
function datumLines(surface: Surface, map: Map2): readonly DrawnShape[] {
  const { inside } = surface;
  const { u } = datumsOf(surface);
  if (surface.kind === "partition" || surface.inward.z !== 0) return [];
  return u
    .filter(({ at }) => at > inside.u0 && at < inside.u1)
    .map(({ at }) => stroke("hidden", map(at, inside.v0), map(at, inside.v1), true));
}

function studMiddles(parts: readonly Part[]): readonly number[] {
  const upright = parts.filter(({ role }) => role === "stud" || role === "jamb stud");
  const members = upright.length > 0 ? upright : parts.filter(({ role }) => role === "cross-member");
  return members.map(({ rect }) => (rect.u0 + rect.u1) / 2);
}

function studWord(parts: readonly Part[]): string {
  return parts.some(({ role }) => role === "cross-member") ? "cross-members" : "studs";
}

function boardWord(boards: readonly Part[]): string {
  return boards[0]?.what.replace(/^.*?: /, "") ?? "boards";
}

function isFraming(part: Part): boolean {
  const layer = layerOf(part.role);
  return layer === "studs" || layer === "furring" || part.role === "cross-member" || part.role === "opening frame";
}

function isStudLike(part: Part): boolean {
  return layerOf(part.role) === "studs" && part.role !== "corner angle";
}

function isBoard(part: Part): boolean {
  return part.role === "board" || part.role === "floor board";
}

function isLeaf(part: Part): boolean {
  return part.id.startsWith("doorEnd/leaf-");
}

/** Layers of a partition's far side count on after the near side's. */
function farStart(surface: Surface, side: Side): number {
  return side === "blind side" ? surface.stack.boards.length : 0;
}
