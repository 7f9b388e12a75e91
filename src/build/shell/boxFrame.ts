import type { BoxRow, FrameMember } from "../../catalogue/rows.ts";
import type { Rect } from "../../geometry/rect.ts";
import { type PartMaker, partMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Span, Surface, SurfaceId } from "../surface.ts";

/** Corner fittings, posts, rails and cross-members of the box as bought. */
export function boxFrame(box: BoxRow, surfaces: readonly Surface[]): readonly Part[] {
  const { posts, insets, rails } = box;
  const frames: Readonly<Partial<Record<SurfaceId, (surface: Surface) => readonly Part[]>>> = {
    left: (surface) => sideFrame(box, surface, insets.left, { start: posts.blindEnd, end: posts.doorEnd }),
    right: (surface) => sideFrame(box, surface, insets.right, { start: posts.doorEnd, end: posts.blindEnd }),
    blindEnd: (surface) => endRails(surface, insets.blindEnd, rails.topBlind, rails.bottomBlind, "end rail"),
    doorEnd: (surface) => endRails(surface, insets.doorEnd, rails.doorHeader, rails.doorSill, "door frame bar"),
    floor: (surface) => crossMembers(box, surface),
  };
  return surfaces.flatMap((surface) => frames[surface.id]?.(surface) ?? []);
}

function sideFrame(
  box: BoxRow,
  surface: Surface,
  inset: number,
  posts: { readonly start: FrameMember; readonly end: FrameMember },
): readonly Part[] {
  const maker = partMaker(surface);
  const { outside, panel } = surface;
  const { body, mass } = box.fittings;
  const fittings = [outside.v0, outside.v1 - body.height].flatMap((v0) =>
    [outside.u0, outside.u1 - body.length].map((u0) =>
      maker.make({
        role: "corner fitting",
        what: "corner fitting",
        rect: { u0, u1: u0 + body.length, v0, v1: v0 + body.height },
        depth: { from: -inset, to: -inset + body.width },
        shape: { kind: "block" },
        material: "steel",
        basis: { by: "given", mass },
      }),
    ),
  );
  const height = { v0: outside.v0 + body.height, v1: outside.v1 - body.height };
  return [
    ...fittings,
    bar(maker, posts.start, "post", "corner post", { u0: outside.u0, u1: panel.u0, ...height }, inset, "v"),
    bar(maker, posts.end, "post", "corner post", { u0: panel.u1, u1: outside.u1, ...height }, inset, "v"),
    bar(maker, box.rails.topSide, "rail", "top side rail", { u0: panel.u0, u1: panel.u1, v0: panel.v1, v1: outside.v1 }, inset, "u"),
    bar(maker, box.rails.bottomSide, "rail", "bottom side rail", { u0: panel.u0, u1: panel.u1, v0: outside.v0, v1: panel.v0 }, inset, "u"),
  ];
}

function endRails(surface: Surface, inset: number, top: FrameMember, bottom: FrameMember, what: string): readonly Part[] {
  const maker = partMaker(surface);
  const { outside } = surface;
  const between = { u0: 0, u1: outside.u1 + outside.u0 };
  return [
    bar(maker, top, "rail", `top ${what}`, { ...between, v0: outside.v1 - top.face, v1: outside.v1 }, inset, "u"),
    bar(maker, bottom, "rail", `bottom ${what}`, { ...between, v0: outside.v0, v1: outside.v0 + bottom.face }, inset, "u"),
  ];
}

function bar(
  maker: PartMaker,
  member: FrameMember,
  role: "post" | "rail",
  what: string,
  rect: Rect,
  inset: number,
  runs: "u" | "v",
): Part {
  const length = runs === "u" ? rect.u1 - rect.u0 : rect.v1 - rect.v0;
  return maker.make({
    role,
    what,
    rect,
    depth: { from: -inset, to: -inset + member.depth },
    shape: { kind: "bar", runs, length },
    material: "steel",
    basis: { by: "length", length, massPerLength: member.massPerLength },
  });
}

/** Middles of the cross-members between the end rails: at the box's pitch, the odd space shared between both ends. */
export function crossMemberPlaces(box: BoxRow, floor: Surface): readonly number[] {
  const { pitch, flange } = box.crossMembers;
  const from = floor.outside.u0 + box.rails.bottomBlind.depth + flange / 2;
  const to = floor.outside.u1 - box.rails.doorSill.depth - flange / 2;
  const bays = Math.floor((to - from) / pitch);
  const first = from + (to - from - bays * pitch) / 2;
  return Array.from({ length: bays + 1 }, (_, k) => first + k * pitch);
}

function crossMembers(box: BoxRow, floor: Surface): readonly Part[] {
  const maker = partMaker(floor);
  const { depth, flange, massPerLength } = box.crossMembers;
  const { rails } = box;
  const across = { v0: floor.outside.v0 + rails.bottomSide.depth, v1: floor.outside.v1 - rails.bottomSide.depth };
  const length = across.v1 - across.v0;
  const under: Span = { from: -box.floor.thickness - depth, to: -box.floor.thickness };
  return crossMemberPlaces(box, floor).map((u) =>
    maker.make({
      role: "cross-member",
      what: "cross-member",
      rect: { u0: u - flange / 2, u1: u + flange / 2, ...across },
      depth: under,
      shape: { kind: "bar", runs: "v", length },
      material: "steel",
      basis: { by: "length", length, massPerLength },
    }),
  );
}
