import type { Build } from "../../../build/build.ts";
import { edgeJunctions, PAIRS } from "./junctions.ts";
import { type FacePlan, facePlan } from "./fields.ts";
import { openingJunctions, openingsShown } from "./openings.ts";
import { partitionJunctions } from "./partitions.ts";
import type { Junction } from "./planned.ts";

/** Every section that a build asks for. */
export interface SectionPlan {
  readonly faces: readonly FacePlan[];
  readonly junctions: readonly Junction[];
  /** What openings, studs and partitions leave no place to cut, in words. */
  readonly missing: readonly string[];
}

/** Faces with their studs, edges of the box, partitions, openings. */
export function sectionPlan(build: Build): SectionPlan {
  const surfaces = build.surfaces.filter(({ kind }) => kind === "face");
  const faces = surfaces.flatMap((surface) => facePlan(build, surface) ?? []);
  const junctions = [...edgeJunctions(build, faces), ...partitionJunctions(build, faces), ...openingJunctions(build, faces)];
  const cut = new Set(junctions.map(({ id }) => id));
  const nameOf = (id: string): string => surfaces.find((surface) => surface.id === id)?.name ?? id;
  const missing = [
    ...surfaces.filter(({ id }) => !faces.some(({ surface }) => surface.id === id)).map(({ name }) => `field of the ${name}`),
    ...PAIRS.flatMap(([a, b]) => (cut.has(`${a}-${b}`) ? [] : [`edge of ${nameOf(a)} and ${nameOf(b)}`])),
    ...build.surfaces.filter(({ kind, id }) => kind === "partition" && ![...cut].some((one) => one.startsWith(`${id}-`))).map(({ name }) => name),
    ...openingsShown(build).flatMap(({ opening }) => (["jamb", "head"] as const).flatMap((edge) => (cut.has(`${opening.id}/${edge}`) ? [] : [`${edge} of ${opening.id}`]))),
  ];
  return { faces, junctions, missing };
}
