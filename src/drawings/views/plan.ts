import type { Build, PlacedOpening, Sweep } from "../../build/build.ts";
import { surfaceOf } from "../../build/build.ts";
import type { Surface } from "../../build/surface.ts";
import { toWorld } from "../../build/surface.ts";
import type { Rect } from "../../geometry/rect.ts";
import type { Vec2, Vec3 } from "../../geometry/vector.ts";
import type { Item } from "../../job/job.ts";
import type { DimensionChain, DrawnShape, View } from "../drawing.ts";
import { TEXT } from "../style.ts";
import { chain, lengthText, runningFrom, sizeText } from "./chains.ts";
import { cutParts } from "./cut.ts";
import { datumsOf, openingsOn } from "./faceNames.ts";
import { box, stroke, viewOf, words } from "./shapes.ts";

/** Height above the bare floor at which the plan is cut, metres; common practice for building plans. */
const PLAN_CUT = { metric: 1.2, imperial: 4 * 0.3048 } as const;
const LABEL_OFF = 0.16;
/** Items slimmer than this have their id beside them. */
const SLIM = 0.24;

const flat = (p: Vec3): Vec2 => ({ x: p.x, y: p.y });

/** The floor plan: cut at PLAN_CUT, the blind end to the left, the left wall at the foot of the sheet. */
export function planView(build: Build, marks: readonly { readonly axis: "x" | "y"; readonly at: number; readonly name: string }[]): View {
  const surfaces = new Map<string, Surface>(build.surfaces.map((surface) => [surface.id, surface]));
  const { units } = build.job;
  const cut = PLAN_CUT[units];
  const standing = build.parts.filter((part) => part.role !== "item" && part.role !== "article");
  const shapes: DrawnShape[] = [
    box("outline", { u0: 0, u1: build.box.outside.length, v0: 0, v1: build.box.outside.width }),
    ...cutParts(standing, surfaces, "z", cut, flat),
    ...build.openings.flatMap((placed) => openingInPlan(placed, cut)),
    ...build.job.items.flatMap((item) => itemInPlan(build, item, cut)),
    ...build.rooms.flatMap((room) => {
      const middle = { x: (room.x.from + room.x.to) / 2, y: (room.y.from + room.y.to) / 2 };
      const clear = [room.x.to - room.x.from, room.y.to - room.y.from];
      return [
        words("text", { x: middle.x, y: middle.y + 0.06 }, room.name, TEXT.label),
        words("text", { x: middle.x, y: middle.y - 0.12 }, sizeText(clear, units)),
      ];
    }),
    ...marks.flatMap(({ axis, at, name }) => sectionMark(build, axis, at, name)),
  ];
  return viewOf("plan", `Floor plan, cut ${lengthText(cut, units)} above the bare floor`, shapes, planChains(build));
}

/** An opening in its wall, with its leaf and the sector that the leaf sweeps; dashed where the cut passes above or below. */
function openingInPlan(placed: PlacedOpening, cutAt: number): readonly DrawnShape[] {
  const { surface, clear, opening, sweeps } = placed;
  if (surface.inward.z !== 0) {
    const label = { x: surface.origin.x + (clear.u0 + clear.u1) / 2, y: surface.origin.y + (clear.v0 + clear.v1) / 2 };
    const at = { u0: clear.u0 + surface.origin.x, u1: clear.u1 + surface.origin.x, v0: clear.v0 + surface.origin.y, v1: clear.v1 + surface.origin.y };
    return [box("openings", at, undefined, { dashed: surface.id === "roof" }), words("openings", label, opening.id)];
  }
  const outer = surface.kind === "partition" ? surface.stack.finished : -surface.skinDepth;
  const inner = surface.farStack?.finished ?? surface.stack.finished;
  const at = (u: number, w: number): Vec2 => flat(toWorld(surface, u, 0, w));
  const cut = clear.v0 <= cutAt && clear.v1 >= cutAt;
  const side = surface.kind === "partition" ? -LABEL_OFF + outer : outer - LABEL_OFF;
  const middle = (clear.u0 + clear.u1) / 2;
  return [
    stroke("openings", at(clear.u0, outer), at(clear.u0, inner), !cut),
    stroke("openings", at(clear.u1, outer), at(clear.u1, inner), !cut),
    ...(sweeps.length === 0
      ? [stroke("openings", at(clear.u0, (outer * 2 + inner) / 3), at(clear.u1, (outer * 2 + inner) / 3), !cut)]
      : sweeps.flatMap((sweep) => leafInPlan(sweep, at(middle, sweep.inside ? inner : outer)))),
    words("openings", at(middle, side), opening.id),
  ];
}

/** The leaf stands open: at the end of its sweep that turns away from the middle of the opening. */
function leafInPlan(sweep: Sweep, middle: Vec2): readonly DrawnShape[] {
  const shut = Math.atan2(middle.y - sweep.hinge.y, middle.x - sweep.hinge.x);
  const open = Math.cos(sweep.from - shut) < Math.cos(sweep.to - shut) ? sweep.from : sweep.to;
  const centre = flat(sweep.hinge);
  const tip = { x: centre.x + sweep.radius * Math.cos(open), y: centre.y + sweep.radius * Math.sin(open) };
  return [
    stroke("openings", centre, tip),
    { kind: "arc", layer: "swing", centre, radius: sweep.radius, from: sweep.from, to: sweep.to },
  ];
}

/** An item on the floor and the space that is kept clear around it; dashed where it hangs above the cut. */
function itemInPlan(build: Build, item: Item, cutAt: number): readonly DrawnShape[] {
  const floor = surfaceOf(build, "floor");
  const u0 = floor.origin.x + item.at.along;
  const v0 = floor.origin.y + item.at.across;
  const foot = { u0, u1: u0 + item.size.length, v0, v1: v0 + item.size.width };
  const space = clearSpace(item, foot);
  const high = item.at.up > cutAt;
  const grown = space.u0 < foot.u0 || space.u1 > foot.u1 || space.v0 < foot.v0 || space.v1 > foot.v1;
  return [
    ...(grown ? [box("clear-space", space)] : []),
    box("items", foot, undefined, high ? { dashed: true } : { filled: true }),
    words("items", labelPlace(item, foot), item.id),
  ];
}

/** In the middle of the item; before its front where it is too slim to be written on. */
function labelPlace(item: Item, foot: Rect): Vec2 {
  const middle = { x: (foot.u0 + foot.u1) / 2, y: (foot.v0 + foot.v1) / 2 - 0.04 };
  if (Math.min(item.size.length, item.size.width) >= SLIM) return middle;
  switch (item.front) {
    case "blindEnd":
      return { ...middle, x: foot.u0 - SLIM };
    case "doorEnd":
      return { ...middle, x: foot.u1 + SLIM };
    case "left":
      return { ...middle, y: foot.v0 - SLIM };
    case "right":
      return { ...middle, y: foot.v1 + SLIM / 2 };
  }
}

/** The item's footprint with the space that it needs in front, behind and at its sides. */
function clearSpace({ front, clear }: Item, foot: Rect): Rect {
  const { front: ahead, back, sides } = clear;
  switch (front) {
    case "blindEnd":
      return { u0: foot.u0 - ahead, u1: foot.u1 + back, v0: foot.v0 - sides, v1: foot.v1 + sides };
    case "doorEnd":
      return { u0: foot.u0 - back, u1: foot.u1 + ahead, v0: foot.v0 - sides, v1: foot.v1 + sides };
    case "left":
      return { u0: foot.u0 - sides, u1: foot.u1 + sides, v0: foot.v0 - ahead, v1: foot.v1 + back };
    case "right":
      return { u0: foot.u0 - sides, u1: foot.u1 + sides, v0: foot.v0 - back, v1: foot.v1 + ahead };
  }
}

/** Two short strokes outside the box where a section is cut, each with the section's letter. */
function sectionMark(build: Build, axis: "x" | "y", at: number, name: string): readonly DrawnShape[] {
  const { length, width } = build.box.outside;
  const reach = axis === "x" ? width : length;
  const point = (along: number): Vec2 => (axis === "x" ? { x: at, y: along } : { x: along, y: at });
  return [-1, 1].flatMap((end) => {
    const from = end < 0 ? -0.34 : reach + 0.34;
    return [stroke("section-cut", point(from), point(from + end * 0.2)), words("text", point(from + end * 0.34), name, TEXT.title)];
  });
}

function planChains(build: Build): readonly DimensionChain[] {
  const { length, width } = build.box.outside;
  const { units } = build.job;
  const partings = build.rooms.flatMap(({ x }) => [x.from, x.to]);
  const [first] = build.rooms;
  const acrossRooms = first === undefined ? [] : [first.y.from, first.y.to];
  return [
    ...wallChains(build, "left", "below"),
    chain({ direction: "across", side: "below", row: 8, label: "rooms, between finished faces" }, [0, ...partings, length], units),
    chain({ direction: "across", side: "below", row: 9, label: "outside" }, [0, length], units),
    ...wallChains(build, "right", "above"),
    ...wallChains(build, "blindEnd", "left"),
    chain({ direction: "up", side: "left", row: 8, label: "finished" }, [0, ...acrossRooms, width], units),
    chain({ direction: "up", side: "left", row: 9, label: "outside" }, [0, width], units),
    ...wallChains(build, "doorEnd", "right"),
  ];
}

/** Openings of one wall: stretches from post to post, and distances from both posts. */
function wallChains(build: Build, id: "left" | "right" | "blindEnd" | "doorEnd", side: DimensionChain["side"]): readonly DimensionChain[] {
  const surface = surfaceOf(build, id);
  const rects = openingsOn(build, surface).map(({ clear }) => clear);
  if (rects.length === 0) return [];
  const { u: [start, end] } = datumsOf(surface);
  const direction = side === "below" || side === "above" ? "across" : "up";
  const toView = (u: number): number => {
    const { x, y } = toWorld(surface, u, 0, 0);
    return direction === "across" ? x : y;
  };
  const edges = rects.flatMap((r) => [r.u0, r.u1]);
  const { units } = build.job;
  return [
    runningFrom({ direction, side, row: 1, label: start.from }, start.at, [...edges, end.at], units, toView),
    runningFrom({ direction, side, row: 2, label: end.from }, end.at, [...edges, start.at], units, toView),
  ];
}
