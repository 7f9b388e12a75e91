import type { Vec2 } from "../../geometry/vector.ts";
import type { Air, Region, Section, Sheet } from "./section.ts";

// Sections that tests and measurements share. Sizes of the stud bay are typical of a dry box; no product is meant.

/** A rectangle of solid. */
export function solid(what: string, conductivity: number, x0: number, y0: number, x1: number, y1: number): Region {
  return { what, outline: { outer: corners(x0, y0, x1, y1), holes: [] }, fill: { kind: "solid", conductivity } };
}

/** A rectangle of air. */
export function airOver(air: string, x0: number, y0: number, x1: number, y1: number): Region {
  return { what: `air ${air}`, outline: { outer: corners(x0, y0, x1, y1), holes: [] }, fill: { kind: "air", air } };
}

/** An air that is alone in its environment of the same name. */
export function airOf(id: string, resistance: number): Air {
  return { id, environment: id, resistance };
}

export function sheet(what: string, conductivity: number, thickness: number, points: readonly Vec2[]): Sheet {
  return { what, points, conductivity, thickness };
}

/** Plain layers from the outside (below) to the inside: thickness in m, conductivity in W/(m K). */
export function layered(layers: readonly (readonly [thickness: number, conductivity: number])[], width: number, outside: number, inside: number): Section {
  let y = 0;
  const regions = layers.map(([thickness, conductivity], at) => {
    const region = solid(`layer ${at}`, conductivity, 0, y, width, y + thickness);
    y += thickness;
    return region;
  });
  return {
    window: { u0: 0, u1: width, v0: -0.01, v1: y + 0.01 },
    regions: [airOver("out", 0, -0.01, width, 0), airOver("in", 0, y, width, y + 0.01), ...regions],
    sheets: [],
    airs: [airOf("out", outside), airOf("in", inside)],
  };
}

/**
 * One bay of a lined side wall: corrugated skin 1.6 mm, foam in its troughs and between the studs, a C stud of 0.9 mm with
 * its lips left out, a plywood board and a sheet of steel 0.5 mm as lining. `phase` moves the corrugation along the wall, m.
 */
export function studBay({ phase = 0, pitch = 0.4, stud = 0.064, foam = 0.024 }: { phase?: number; pitch?: number; stud?: number; foam?: number } = {}): Section {
  const skin = corrugation(-DEPTH, phase, pitch);
  const back = stud;
  const first = skin[0] as Vec2;
  const last = skin[skin.length - 1] as Vec2;
  const web = pitch / 2;
  return {
    window: { u0: 0, u1: pitch, v0: -0.06, v1: back + 0.04 },
    regions: [
      airOver("out", 0, -0.06, pitch, back),
      { what: "foam", outline: { outer: [...skin, { x: last.x, y: back }, { x: first.x, y: back }], holes: [] }, fill: { kind: "solid", conductivity: foam } },
      solid("plywood", 0.13, 0, back, pitch, back + 0.012),
      airOver("in", 0, back + 0.012, pitch, back + 0.04),
    ],
    sheets: [
      sheet("skin", 50, 0.0016, skin),
      sheet("stud", 50, 0.0009, [{ x: web + 0.032, y: 0 }, { x: web, y: 0 }, { x: web, y: back }, { x: web + 0.032, y: back }]),
      sheet("lining", 50, 0.0005, [{ x: 0, y: back + 0.012 }, { x: pitch, y: back + 0.012 }]),
    ],
    airs: [airOf("out", 0.04), airOf("in", 0.13)],
  };
}

const DEPTH = 0.036;
/** Outer flat, slope, inner flat, slope: one period of the corrugation, m. */
const RUNS = [0.07, 0.068, 0.072, 0.068] as const;

/** The line of a corrugated skin from x = 0 to `width`: its outer flats at `low`, its inner flats DEPTH above. */
function corrugation(low: number, phase: number, width: number): readonly Vec2[] {
  const period = RUNS.reduce((sum, run) => sum + run, 0);
  const points: Vec2[] = [];
  let x = -period * Math.ceil(1 + phase / period) + phase;
  for (let turn = 0; x < width + period; turn += 1) {
    points.push({ x, y: turn % 4 < 2 ? low : low + DEPTH });
    x += RUNS[turn % 4] as number;
  }
  return points;
}

function corners(x0: number, y0: number, x1: number, y1: number): readonly Vec2[] {
  return [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ];
}
