import { assemble } from "../src/build/assemble.ts";
import { type Build, surfaceOf } from "../src/build/build.ts";
import { makeContext } from "../src/checks/context.ts";
import { studyEnvelope } from "../src/checks/envelope.ts";
import { coldestPoint, weightsOf } from "../src/checks/envelope/moisture/coldest.ts";
import { layersOf } from "../src/checks/resistance/layers.ts";
import { catalogue } from "../src/catalogue/catalogue.ts";
import { inch } from "../src/catalogue/imperial.ts";
import { insideSurfaceResistance, outsideSurfaceResistance, totalResistance } from "../src/physics/plainLayers.ts";
import { apply } from "../src/working/formula.ts";
import { jobOf, sampleJobFile } from "./sampleJob.ts";

/** A side wall of the study: thickness of foam and stand-off of its studs, in. */
export interface WallCase {
  readonly foam: number;
  readonly standOff: number;
}

/** What comes of one wall; resistances in m2K/W, transmittances in W/(m2 K), temperatures in °C. */
export interface WallFigures extends WallCase {
  /** Of the foam alone, as the rule of thumb counts. */
  readonly foamAlone: number;
  /** Of the plain layers with both surfaces. */
  readonly plain: number;
  /** Of the section without studs: the sheet as it is folded, its outer flats full of foam. */
  readonly field: number;
  /** With every stud on an inner flat, over an outer flat, and as they stand in the wall. */
  readonly onInner: number;
  readonly overOuter: number;
  readonly bridged: number;
  /** The coldest surface at the hour of the study, at a stud on an inner flat, over an outer flat, and in the field. */
  readonly coldOnInner: number;
  readonly coldOverOuter: number;
  readonly coldField: number;
}

/** The hour of the study, °C. */
export const HOUR = { outside: -20, inside: 20 } as const;

/** The walls of the study: 2 in and 3 in of foam, studs against the sheet, 1/2 in and 1 in off it, where the foam fits. */
export const CASES: readonly WallCase[] = [
  { foam: 2, standOff: 0 },
  { foam: 2, standOff: 0.5 },
  { foam: 2, standOff: 1 },
  { foam: 3, standOff: 0.5 },
  { foam: 3, standOff: 1 },
];

const FOAM = "foam-closed-cell-2lb";
const PITCH = 16 * inch;
const context = makeContext();

/** The left wall of a 20 ft box, lined all round: 2-1/2 in studs of 33 mil at 16 in, 5/8 in gypsum, no openings. */
export function figuresOf({ foam, standOff }: WallCase): WallFigures {
  const build = assemble(jobOf(studyJob(foam, standOff)));
  const study = studyEnvelope(build, context);
  const face = study.plan.faces.find(({ surface }) => surface.id === "left")!;
  const loss = study.losses.faces.find(({ surface }) => surface === "left")!;
  const psi = (kind: string): number => loss.bars.find(({ id }) => id.endsWith(kind))!.psi.value;
  const weights = weightsOf("R1", HOUR.outside, HOUR.inside, new Map([["R1", HOUR.inside]]));
  const cold = (planned: (typeof face)["field"]): number => {
    const { factor } = coldestPoint(study.solver.solve(planned, "mould")!, "R1", weights, "any")!;
    return HOUR.outside + factor * (HOUR.inside - HOUR.outside);
  };
  const kind = (id: string) => face.kinds.find((one) => one.id.endsWith(id))!.planned;
  return {
    foam,
    standOff,
    foamAlone: (foam * inch) / catalogue.materials.get(catalogue.foams.get(FOAM).material).conductivity,
    plain: plainOf(build),
    field: 1 / loss.field.value,
    onInner: 1 / (loss.field.value + psi("on-inner-flat") / PITCH),
    overOuter: 1 / (loss.field.value + psi("over-outer-flat") / PITCH),
    bridged: 1 / loss.bridged.value,
    coldOnInner: cold(kind("on-inner-flat")),
    coldOverOuter: cold(kind("over-outer-flat")),
    coldField: cold(face.field),
  };
}

function plainOf(build: Build): number {
  return apply(totalResistance, { R_si: insideSurfaceResistance("horizontal"), R_layer: [...layersOf(build, surfaceOf(build, "left"))], R_se: outsideSurfaceResistance() }).value;
}

function studyJob(foam: number, standOff: number): Record<string, unknown> {
  const file = sampleJobFile();
  const buildUps = file["buildUps"] as Record<string, object>;
  const wall = {
    what: "wall of the study",
    foam: { row: FOAM, thickness: `${foam} in` },
    studs: { row: "stud-2-1-2-33mil", track: "track-2-1-2-33mil", pitch: "16 in", standOff: `${standOff} in`, cornerPull: "3 in" },
    boards: [{ row: "gypsum-type-x-5-8" }],
  };
  return { ...file, buildUps: { ...buildUps, wall }, rooms: [{ id: "R1", what: "Room", heatTo: `${HOUR.inside} °C` }] };
}
