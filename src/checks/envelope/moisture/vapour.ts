import { type Build, surfaceOf } from "../../../build/build.ts";
import type { Part } from "../../../build/part.ts";
import type { Surface, SurfaceId } from "../../../build/surface.ts";
import { catalogue } from "../../../catalogue/catalogue.ts";
import { MILL_DENSITY } from "../../../catalogue/steel.ts";
import { type Airs, permeanceOf, type VapourClass, vapourClassOf, type VapourLayer, vapourYear, type VapourYear } from "../../../physics/moisture.ts";
import { insideSurfaceResistance, outsideSurfaceResistance } from "../../../physics/plainLayers.ts";
import { flowThrough } from "../cuts/airs.ts";
import { gapConductivity } from "../cuts/gaps.ts";
import type { DampRoom } from "./rooms.ts";

/** A year of vapour through the layers of a face beside one room. */
export interface FaceVapour {
  readonly room: DampRoom;
  readonly surface: Surface;
  readonly layers: readonly VapourLayer[];
  readonly year: VapourYear;
  /** Layers inward of the sheet with their vapour class. */
  readonly classes: readonly { readonly what: string; readonly vapourClass: VapourClass }[];
  /** Batts that lie against the sheet with no foam between. */
  readonly battsOnSteel: boolean;
}

/** Spaces between layers thinner than this are none, m. */
const NO_GAP = 0.001;

/** Vapour through every face of every damp room that has monthly airs; faces without any layer but steel are left out. */
export function vapourThrough(build: Build, rooms: readonly DampRoom[]): readonly FaceVapour[] {
  return rooms.flatMap((room) => {
    const { months } = room;
    if (months === undefined) return [];
    return facesOf(build, room).flatMap((id): readonly FaceVapour[] => {
      const surface = surfaceOf(build, id);
      const layers = layersThrough(build, surface);
      if (layers.length < 2) return [];
      const flow = flowThrough(surface);
      const wall = { layers, outsideResistance: outsideSurfaceResistance().value, insideResistance: insideSurfaceResistance(flow).value };
      const year = vapourYear(wall, months.map(wallAirs));
      const classes = layers.slice(1).map((layer) => ({ what: layer.what, vapourClass: vapourClassOf(permeanceOf(layer)) }));
      return [{ room, surface, layers, year, classes, battsOnSteel: surface.stack.batts !== undefined && surface.stack.foam === undefined }];
    });
  });
}

/** The faces that bound a room; an end face only the room beside it. */
function facesOf({ rooms }: Build, { placed }: DampRoom): readonly SurfaceId[] {
  return [
    "left",
    "right",
    ...(rooms[0] === placed ? ["blindEnd"] : []),
    ...(rooms.at(-1) === placed ? ["doorEnd"] : []),
    "roof",
    "floor",
  ];
}

/**
 * Layers of a face from outside in, where they are thinnest: over the inner flats of the sheet, and between bars. Coats are
 * left out, which lets more vapour in.
 */
function layersThrough(build: Build, surface: Surface): readonly VapourLayer[] {
  const bySpan = new Map<string, { readonly from: number; readonly to: number; readonly part: Part }>();
  for (const part of build.parts) {
    const { shape, depth, material } = part;
    if (part.surface !== surface.id || material === undefined || (shape.kind !== "panel" && shape.kind !== "fill") || part.role === "cargo door") continue;
    const from = surface.profile === undefined ? depth.from : Math.max(depth.from, 0);
    const key = `${from.toFixed(5)} ${depth.to.toFixed(5)}`;
    if (!bySpan.has(key)) bySpan.set(key, { from, to: depth.to, part });
  }
  const inward = [...bySpan.values()].sort((a, b) => a.from - b.from);
  const layers: VapourLayer[] = [...skinOf(build, surface)];
  // Under the floor there is no sheet that would close a gap.
  let reached: number | undefined = surface.id === "floor" ? undefined : 0;
  for (const { from, to, part } of inward) {
    if (reached !== undefined && from - reached > NO_GAP) {
      const thickness = from - reached;
      layers.push({ what: "air", thickness, conductivity: gapConductivity(thickness, flowThrough(surface)), mu: 1 });
    }
    const { conductivity, vapourResistance } = catalogue.materials.get(part.material ?? "");
    layers.push({ what: part.what.replace(/ on the .*/, ""), thickness: to - Math.max(from, reached ?? from), conductivity, mu: vapourResistance });
    reached = to;
  }
  return layers.filter(({ thickness }) => thickness > 0);
}

function skinOf({ parts }: Build, surface: Surface): readonly VapourLayer[] {
  const { profile } = surface;
  if (profile !== undefined) return [steel(`${surface.name} sheet`, profile.thickness)];
  const leaf = parts.find(({ role, surface: on }) => role === "cargo door" && on === surface.id);
  return leaf !== undefined && "area" in leaf.shape ? [steel(leaf.what, leaf.mass / leaf.shape.area / MILL_DENSITY)] : [];
}

function steel(what: string, thickness: number): VapourLayer {
  const { conductivity } = catalogue.materials.get("weathering-steel");
  return { what, thickness, conductivity, mu: null };
}

function wallAirs({ T_e, p_e, T_i, p_i }: Airs) {
  return {
    outside: { temperature: T_e.value, vapourPressure: p_e.value },
    inside: { temperature: T_i.value, vapourPressure: p_i.value },
  };
}
