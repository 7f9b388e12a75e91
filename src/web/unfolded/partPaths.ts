import type { Part, Polygon, Rect, Role, Surface, Vec2 } from "../../river/screen.ts";
import type { LayerId } from "../state/settings.ts";
import type { Placement } from "./unfold.ts";

/** A layer of a face as one path in the face's u and v. */
export interface LayerPath {
  readonly layer: LayerId;
  readonly d: string;
}

const LAYER_OF: Readonly<Partial<Record<Role, LayerId>>> = {
  skin: "skin",
  "cargo door": "skin",
  "bare floor": "skin",
  post: "frame",
  rail: "frame",
  "corner fitting": "frame",
  "cross-member": "frame",
  "opening frame": "frame",
  foam: "foam",
  batt: "batts",
  stud: "studs",
  "jamb stud": "studs",
  "cripple stud": "studs",
  track: "studs",
  header: "studs",
  sill: "studs",
  blocking: "studs",
  "corner angle": "studs",
  furring: "studs",
  trim: "trim",
};

/** In the order in which they are drawn: what lies nearest to the room comes last. */
const BOTTOM_UP: readonly LayerId[] = ["skin", "frame", "foam", "batts", "studs", "board1", "board2", "board3", "board4", "trim"];

/** The layer on which a part is drawn, seen from one side of its surface; undefined where it is not drawn as a layer. */
export function layerOfPart(part: Part, { surface, side }: Pick<Placement, "surface" | "side">): LayerId | undefined {
  if (part.role === "board" || part.role === "floor board") return boardLayer(part.layer, surface, side);
  return LAYER_OF[part.role];
}

/** The layers of one placement that have parts, bottom up. */
export function layerPaths(parts: readonly Part[], placement: Placement): readonly LayerPath[] {
  const on = parts.filter((part) => part.surface === placement.surface.id);
  return BOTTOM_UP.flatMap((layer) => {
    const d = on.filter((part) => layerOfPart(part, placement) === layer).map(partPath).join("");
    return d === "" ? [] : [{ layer, d }];
  });
}

/** A part's outline with its holes, or the rectangle that it takes. */
export function partPath({ shape, rect }: Part): string {
  return "outline" in shape ? shape.outline.map(polygonPath).join("") : rectPath(rect);
}

export function rectPath({ u0, u1, v0, v1 }: Rect): string {
  return `M${n(u0)} ${n(v0)}H${n(u1)}V${n(v1)}H${n(u0)}Z`;
}

/** The lines where the profile bends, over the height of the panel. */
export function profilePath({ profile, panel }: Surface): string {
  if (profile === undefined) return "";
  const { pitch, innerFlat, outerFlat } = profile;
  const slope = (pitch - innerFlat - outerFlat) / 2;
  const lines: string[] = [];
  for (let start = panel.u0; start < panel.u1; start += pitch) {
    for (const u of [start, start + outerFlat, start + outerFlat + slope, start + outerFlat + slope + innerFlat]) {
      if (u > panel.u0 && u < panel.u1) lines.push(`M${n(u)} ${n(panel.v0)}V${n(panel.v1)}`);
    }
  }
  return lines.join("");
}

/** The outer flats, which lie deepest seen from inside, as bands. */
export function troughsPath({ profile, panel }: Surface): string {
  if (profile === undefined) return "";
  const bands: string[] = [];
  for (let u0 = panel.u0; u0 < panel.u1; u0 += profile.pitch) {
    bands.push(rectPath({ ...panel, u0, u1: Math.min(panel.u1, u0 + profile.outerFlat) }));
  }
  return bands.join("");
}

/** The part nearest to the room at a point of a face, among those on layers that are shown. */
export function partAt(parts: readonly Part[], placement: Placement, at: { readonly u: number; readonly v: number }, shown: ReadonlySet<LayerId>): Part | undefined {
  const sign = placement.side === "door side" ? -1 : 1;
  const under = parts.filter((part) => {
    const layer = part.surface === placement.surface.id ? layerOfPart(part, placement) : undefined;
    return layer !== undefined && shown.has(layer) && covers(part, at);
  });
  return under.reduce<Part | undefined>((top, part) => (top === undefined || sign * part.depth.to > sign * top.depth.to ? part : top), undefined);
}

function covers({ rect, shape }: Part, { u, v }: { readonly u: number; readonly v: number }): boolean {
  if (u < rect.u0 || u > rect.u1 || v < rect.v0 || v > rect.v1) return false;
  return !("outline" in shape) || shape.outline.some((one) => inside(one, u, v));
}

function inside({ outer, holes }: Polygon, u: number, v: number): boolean {
  return [outer, ...holes].filter((ring) => inRing(ring, u, v)).length === 1;
}

/** Counts the edges that a ray to the right crosses. */
function inRing(ring: readonly Vec2[], u: number, v: number): boolean {
  let within = false;
  for (const [index, a] of ring.entries()) {
    const b = ring[(index + 1) % ring.length] as Vec2;
    if (a.y > v !== b.y > v && u < a.x + ((v - a.y) / (b.y - a.y)) * (b.x - a.x)) within = !within;
  }
  return within;
}

function polygonPath({ outer, holes }: Polygon): string {
  return [outer, ...holes].map((ring) => `M${ring.map(({ x, y }) => `${n(x)} ${n(y)}`).join("L")}Z`).join("");
}

/** Layers of a partition's far side count on after the near side's. */
function boardLayer(layer: number | undefined, surface: Surface, side: Placement["side"]): LayerId | undefined {
  if (layer === undefined) return undefined;
  const near = surface.stack.boards.length;
  if (side === "door side" && layer > near) return undefined;
  return BOARD_LAYERS[side === "blind side" ? layer - near - 1 : layer - 1];
}

const BOARD_LAYERS: readonly LayerId[] = ["board1", "board2", "board3", "board4"];

/** A tenth of a millimetre is finer than any screen shows. */
function n(x: number): string {
  return String(Math.round(x * 1e4) / 1e4);
}
