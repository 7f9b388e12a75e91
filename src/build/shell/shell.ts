import { catalogue } from "../../catalogue/catalogue.ts";
import type { BoxRow } from "../../catalogue/rows.ts";
import { cutRects, polygonArea } from "../../geometry/polygon.ts";
import { type Rect, rectArea } from "../../geometry/rect.ts";
import { add, scale, type Vec3 } from "../../geometry/vector.ts";
import type { PlacedOpening } from "../build.ts";
import { partMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import { findSurface, type Surface } from "../surface.ts";
import { skinParts } from "./skin.ts";

/**
 * The box as bought, with the openings cut into it. A part named "rest of the box" carries what its plate says beyond
 * the modelled steel, timber and doors (gaskets, locking gear, paint, welds), so that the uncut box weighs its tare. `frame` is what `boxFrame` gives.
 */
export function shellParts(
  box: BoxRow,
  tare: number,
  surfaces: readonly Surface[],
  openings: readonly PlacedOpening[],
  frame: readonly Part[],
): readonly Part[] {
  const cut = clad(box, surfaces, openings);
  const uncut = openings.length === 0 ? cut : clad(box, surfaces, []);
  return [...frame, ...cut, restOfTheBox([...frame, ...uncut], tare, surfaces)];
}

/** Sheets, bare floor and cargo doors. */
function clad(box: BoxRow, surfaces: readonly Surface[], openings: readonly PlacedOpening[]): readonly Part[] {
  const holesIn = (surface: Surface): readonly Rect[] =>
    openings.filter((opening) => opening.surface.id === surface.id).map(({ hole }) => hole);
  const skins = surfaces.flatMap((surface) => skinParts(surface, holesIn(surface)));
  const others = surfaces.flatMap((surface) => {
    if (surface.id === "floor") return bareFloor(box, surface, holesIn(surface));
    if (surface.id === "doorEnd") return cargoDoors(box, surface, holesIn(surface));
    return [];
  });
  return [...skins, ...others];
}

function bareFloor(box: BoxRow, floor: Surface, holes: readonly Rect[]): readonly Part[] {
  const outline = cutRects(floor.inside, holes);
  const area = outline.reduce((sum, one) => sum + polygonArea(one), 0);
  const { thickness, material } = box.floor;
  return [
    partMaker(floor).make({
      role: "bare floor",
      what: "bare floor",
      rect: floor.inside,
      depth: { from: -thickness, to: 0 },
      shape: { kind: "panel", outline, area, blank: floor.inside },
      material,
      basis: { by: "area", area, massPerArea: thickness * catalogue.materials.get(material).density },
    }),
  ];
}

/** The two leaves, left first; the mass that a hole takes away is its share of the leaf. */
function cargoDoors(box: BoxRow, doorEnd: Surface, holes: readonly Rect[]): readonly Part[] {
  const { make } = partMaker(doorEnd);
  return leafRects(doorEnd).map((rect) => {
    const outline = cutRects(rect, holes);
    const area = outline.reduce((sum, one) => sum + polygonArea(one), 0);
    return make({
      role: "cargo door",
      what: "cargo door leaf",
      rect,
      depth: { from: -doorEnd.skinDepth, to: 0 },
      shape: { kind: "panel", outline, area, blank: rect },
      material: "steel",
      basis: { by: "area", area, massPerArea: box.cargoDoors.leafMass / rectArea(rect) },
    });
  });
}

/** The two cargo door leaves as seen from outside, left first: the doorway shared at its middle. */
export function leafRects(doorEnd: Surface): readonly [Rect, Rect] {
  const { panel } = doorEnd;
  const middle = (panel.u0 + panel.u1) / 2;
  return [
    { ...panel, u1: middle },
    { ...panel, u0: middle },
  ];
}

/** Lies at the modelled box's own centre of mass, so that the box balances as it did without it. */
function restOfTheBox(uncut: readonly Part[], tare: number, surfaces: readonly Surface[]): Part {
  const floor = findSurface(surfaces, "floor");
  const modelled = uncut.reduce((sum, part) => sum + part.mass, 0);
  const moment = uncut.reduce<Vec3>((sum, part) => add(sum, scale(part.centre, part.mass)), { x: 0, y: 0, z: 0 });
  const part = partMaker(floor).make({
    role: "rest of the box",
    what: "gaskets, locking gear, welds, paint and the like",
    rect: floor.outside,
    depth: { from: -floor.skinDepth, to: 0 },
    shape: { kind: "block" },
    basis: { by: "given", mass: tare - modelled },
  });
  return { ...part, centre: scale(moment, 1 / modelled) };
}
