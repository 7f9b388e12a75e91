import type { Accuracy } from "./solution.ts";
import type { Section } from "./section.ts";

/** Throws RangeError, naming the input, where a value of a section or of the accuracy asked for is outside its domain. */
export function checkSection(section: Section, accuracy: Accuracy): void {
  const { u0, u1, v0, v1 } = section.window;
  for (const [name, value] of Object.entries({ u0, u1, v0, v1 })) finite(`window.${name}`, value);
  if (!(u1 > u0) || !(v1 > v0)) throw new RangeError(`window is ${u1 - u0} by ${v1 - v0} m and has to have an area`);

  const airs = new Set<string>();
  for (const { id, resistance } of section.airs) {
    if (airs.has(id)) throw new RangeError(`airs: id ${id} stands twice`);
    airs.add(id);
    aboveZero(`airs: resistance of ${id}`, resistance, "m2K/W");
  }
  section.regions.forEach(({ what, outline, fill }, at) => {
    const name = `regions[${at}] (${what})`;
    for (const ring of [outline.outer, ...outline.holes]) {
      if (ring.length < 3) throw new RangeError(`${name}: an outline needs three points or more`);
      for (const { x, y } of ring) finitePoint(name, x, y);
    }
    if (fill.kind === "solid") aboveZero(`${name}: conductivity`, fill.conductivity, "W/(m K)");
    else if (!airs.has(fill.air)) throw new RangeError(`${name}: air ${fill.air} is not one of the section's airs`);
  });
  section.sheets.forEach(({ what, points, conductivity, thickness }, at) => {
    const name = `sheets[${at}] (${what})`;
    if (points.length < 2) throw new RangeError(`${name}: a sheet needs two points or more`);
    for (const { x, y } of points) finitePoint(name, x, y);
    aboveZero(`${name}: conductivity`, conductivity, "W/(m K)");
    aboveZero(`${name}: thickness`, thickness, "m");
  });

  aboveZero("accuracy.coupling", accuracy.coupling, "1");
  aboveZero("accuracy.share", accuracy.share, "1");
  aboveZero("accuracy.mostUnknowns", accuracy.mostUnknowns, "1");
}

function finite(name: string, value: number): void {
  if (!Number.isFinite(value)) throw new RangeError(`${name} is ${value}, not a finite number`);
}

function finitePoint(name: string, x: number, y: number): void {
  finite(`${name}: x of a point`, x);
  finite(`${name}: y of a point`, y);
}

function aboveZero(name: string, value: number, unit: string): void {
  if (!(value > 0) || !Number.isFinite(value)) throw new RangeError(`${name} is ${value} ${unit} and has to be above zero`);
}
