import type { Build } from "../../../build/build.ts";
import type { Rect } from "../../../geometry/rect.ts";
import type { Vec2, Vec3 } from "../../../geometry/vector.ts";
import { type CellFlux, cellFlux, type Field, type Isotherm, isotherms, nodeTemperatures } from "../../../physics/conduction.ts";
import type { System } from "../../../units/format.ts";
import type { SolvedSection } from "../heat/solved.ts";
import { coldestThen, type ColdestThen } from "./coldest.ts";
import { type AirThen, airsThen, type Hour } from "./hour.ts";
import { levelsBetween } from "./levels.ts";
import { type Fills, fillsOf, NOTHING } from "./fills.ts";
import { type Outline, ringsOf } from "./outlines.ts";

/** All that a picture of a section's temperatures needs, plain data. Metres; x along the face, y into the room. */
export interface SectionPicture {
  readonly id: string;
  readonly name: string;
  readonly hour: Hour;
  readonly window: Rect;
  /** Directions of x and y in the world: along the box from the blind end, across from the left wall, up. */
  readonly axes: { readonly x: Vec3; readonly y: Vec3 };
  /** Materials (closed rings of what is seen of them), then sheets (open). */
  readonly outlines: readonly Outline[];
  readonly grid: PictureGrid;
  readonly isotherms: readonly Isotherm[];
  /**
   * Of the air of the room whose surface is coldest; undefined where nothing says how damp it is. Without lines where the
   * section is nowhere so cold, or everywhere colder.
   */
  readonly dewPoint: Isotherm | undefined;
  readonly environments: readonly ShownAir[];
  readonly coldest: ColdestThen | undefined;
}

/** The air of an environment where the section shows it. */
export interface ShownAir {
  readonly name: string;
  /** °C */
  readonly temperature: number;
  readonly rings: readonly (readonly Vec2[])[];
}

/** Values at the nodes and in the cells of a grid of lines. Node k = j * xs.length + i; cell j * (xs.length - 1) + i. */
export interface PictureGrid {
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** By node: 0 where there is no material and so no temperature. */
  readonly active: Uint8Array;
  /** By node, °C; without meaning where the node is not active. */
  readonly temperature: Float64Array;
  /** By cell, W/m2, above zero toward larger x and y. */
  readonly flux: CellFlux;
  readonly what: readonly string[];
  /** By cell: index into `what` of the material in it, or of its lower half where a slope parts two; -1 for air and for nothing. */
  readonly whatAt: Int16Array;
  /** By cell: 1 where a slope cuts it from the lower left, -1 from the upper left, 0 where none does. */
  readonly slope: Int8Array;
  /** By cell, which halves hold material: 1 the lower, 2 the upper, 3 both or all of it, 0 none. */
  readonly halves: Uint8Array;
}

/**
 * The picture of a solved section at an hour, with isotherms at round temperatures of a unit system; undefined for a month of a
 * site that states no monthly means.
 */
export function pictureOf(build: Build, solved: SolvedSection, hour: Hour, system: System = build.job.units): SectionPicture | undefined {
  const airs = airsThen(build, hour);
  if (airs === undefined) return undefined;
  const { planned, section, solution } = solved;
  const { field, environments } = solution;
  const then = environments.map((one) => airs.get(one) as AirThen);
  const temperatures = then.map(({ temperature }) => temperature);
  const temperature = nodeTemperatures(field, temperatures);
  const fills = fillsOf(section, field);
  const rings = ringsOf(fills, field);
  const coldest = coldestThen(build, solved, airs);
  const dewPoint = coldest === undefined ? undefined : airs.get(coldest.environment)?.dewPoint;
  return {
    id: planned.id,
    name: planned.name,
    hour,
    window: section.window,
    axes: { x: planned.cut.x, y: planned.cut.y },
    outlines: [
      ...fills.names.slice(0, fills.materials).flatMap((what, fill) => (rings[fill] ?? []).map((points): Outline => ({ what, points, closed: true }))),
      ...section.sheets.map(({ what, points }): Outline => ({ what, points, closed: false })),
    ],
    grid: gridOf(field, temperature, cellFlux(field, temperatures), fills),
    isotherms: isotherms(field, temperature, levelsBetween(Math.min(...temperatures), Math.max(...temperatures), system)),
    dewPoint: dewPoint === undefined ? undefined : isotherms(field, temperature, [dewPoint])[0],
    environments: then.map(({ name, temperature: value }, environment) => ({ name, temperature: value, rings: rings[fills.names.indexOf(environments[environment] as string, fills.materials)] ?? [] })),
    coldest,
  };
}

function gridOf({ xs, ys, active, slope, halves }: Field, temperature: Float64Array, flux: CellFlux, { names, materials, lower, upper }: Fills): PictureGrid {
  const isMaterial = (fill: number): boolean => fill !== NOTHING && fill < materials;
  const whatAt = lower.map((fill, cell) => [fill, upper[cell] as number].find(isMaterial) ?? NOTHING);
  return { xs, ys, active, temperature, flux, what: names.slice(0, materials), whatAt, slope, halves };
}

