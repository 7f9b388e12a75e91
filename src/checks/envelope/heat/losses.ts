import type { Build } from "../../../build/build.ts";
import { catalogue } from "../../../catalogue/catalogue.ts";
import { rectArea, rectHeight, rectWidth } from "../../../geometry/rect.ts";
import { insideSurfaceResistance, outsideSurfaceResistance, totalResistance, transmittance } from "../../../physics/plainLayers.ts";
import { apply } from "../../../working/formula.ts";
import { type Given, given, type Quantity } from "../../../working/quantity.ts";
import { source } from "../../../working/source.ts";
import { fromRow } from "../../fromRow.ts";
import { closureOf } from "../cuts/openings.ts";
import type { FacePlan } from "../sections/fields.ts";
import type { Flank, Junction, Planned } from "../sections/planned.ts";
import type { SectionPlan } from "../sections/sections.ts";
import { bridgedTransmittance, fieldTransmittance, heatLoss, junctionTransmittance, plainArea } from "./formulas.ts";
import type { SolvedSection, Solver } from "./solved.ts";

/** What a face loses: its field, its bars, and both together. */
export interface FaceLoss {
  readonly surface: string;
  readonly name: string;
  readonly field: Quantity<"W/(m2 K)">;
  readonly bars: readonly { readonly id: string; readonly name: string; readonly psi: Quantity<"W/(m K)">; readonly length: Quantity<"m"> }[];
  readonly area: Quantity<"m2">;
  readonly bridged: Quantity<"W/(m2 K)">;
}

/** What a junction loses beyond its faces. */
export interface JunctionLoss {
  readonly id: string;
  readonly name: string;
  readonly psi: Quantity<"W/(m K)">;
  readonly length: Quantity<"m">;
}

/** What an opening's article loses. */
export interface OpeningLoss {
  readonly opening: string;
  readonly transmittance: Quantity<"W/(m2 K)">;
  readonly area: Quantity<"m2">;
  /** No article states a transmittance: bare steel stands for it. */
  readonly isBare: boolean;
}

export interface Losses {
  readonly faces: readonly FaceLoss[];
  readonly junctions: readonly JunctionLoss[];
  readonly openings: readonly OpeningLoss[];
  /** Of the whole box; undefined where a face's field could not be solved. */
  readonly whole: Quantity<"W/K"> | undefined;
}

/** Transmittances of faces, junctions and openings, and what the whole box loses for each kelvin. */
export function lossesOf(build: Build, { faces, junctions }: SectionPlan, { solve }: Solver): Losses {
  const faceLosses = faces.flatMap((face) => faceLoss(build, face, solve) ?? []);
  const psiOf = new Map(faces.flatMap((face) => {
    const loss = faceLosses.find(({ surface }) => surface === face.surface.id);
    return face.kinds.flatMap(({ id, bars }) => {
      const psi = loss?.bars.find((one) => one.id === id)?.psi;
      return psi === undefined ? [] : bars.map((bar) => [bar.id, psi] as const);
    });
  }));
  const junctionLosses = junctions.flatMap((junction) => junctionLoss(junction, psiOf, solve) ?? []);
  const openings = openingLosses(build);
  const complete = build.surfaces.every(({ id, kind }) => kind === "partition" || faceLosses.some(({ surface }) => surface === id));
  return { faces: faceLosses, junctions: junctionLosses, openings, whole: complete ? wholeLoss(faceLosses, junctionLosses, openings) : undefined };
}

function wholeLoss(faces: readonly FaceLoss[], junctions: readonly JunctionLoss[], openings: readonly OpeningLoss[]): Quantity<"W/K"> {
  return apply(heatLoss, {
    U: [...faces.map(({ bridged }) => bridged), ...openings.map(({ transmittance: U }) => U)],
    A: [...faces.map(({ area }) => area), ...openings.map(({ area }) => area)],
    psi: junctions.map(({ psi }) => psi),
    l: junctions.map(({ length }) => length),
  });
}

type Solve = Solver["solve"];

function faceLoss(build: Build, { surface, field, kinds }: FacePlan, solve: Solve): FaceLoss | undefined {
  const U_0 = fieldOf(field, solve);
  if (U_0 === undefined) return undefined;
  const { name, inside } = surface;
  const bars = kinds.flatMap((kind) => {
    const main = solve(kind.planned);
    if (main === undefined) return [];
    const l_0 = widthOf(kind.planned);
    const means = `linear transmittance of ${kind.name}, ${name}`;
    const psi = apply(junctionTransmittance, { L_2D: main.coupling, U_0: [U_0], l_0: [l_0], psi_bar: [] }, { symbol: "psi_bar", means });
    const length = given(kind.length, "m", "L_bar", `length of ${kind.name}, ${name}`, { kind: "part", id: surface.id, field: `length of ${kind.name}` });
    return [{ id: kind.id, name: kind.name, psi, length }];
  });
  const size = (value: number, symbol: "b_p" | "h_p", means: string): Quantity<"m"> =>
    given(value, "m", symbol, `${means} of the ${name} between inside planes`, { kind: "part", id: surface.id, field: "inside" });
  const A_op = build.openings
    .filter((placed) => placed.surface.id === surface.id)
    .map(({ opening, clear }) => given(rectArea(clear), "m2", "A_op", `clear opening ${opening.id}`, { kind: "part", id: opening.id, field: "clear" }));
  const area = apply(plainArea, { b_p: size(rectWidth(inside), "b_p", "width"), h_p: size(rectHeight(inside), "h_p", "height"), A_op }, { means: `area of the ${name} without openings` });
  const bridged = apply(
    bridgedTransmittance,
    { U_0, psi_bar: bars.map(({ psi }) => psi), L_bar: bars.map(({ length }) => length), A_face: area },
    { means: `transmittance of the ${name} with what bridges it` },
  );
  return { surface: surface.id, name, field: U_0, bars, area, bridged };
}

function fieldOf(planned: Planned, solve: Solve): Quantity<"W/(m2 K)"> | undefined {
  const solved = solve(planned);
  // A field through which nothing passes is a face that nothing closes or no room lies behind.
  if (solved === undefined || !(solved.coupling.value > 0)) return undefined;
  return apply(fieldTransmittance, { L_2D: solved.coupling, b_win: widthOf(planned) }, { means: `transmittance, ${planned.name}` });
}

function widthOf({ width, name, id }: Planned): Quantity<"m"> {
  return given(width, "m", "b_win", `width of the section, ${name}`, { kind: "part", id, field: "window" });
}

function junctionLoss({ id, name, main, flanks, length }: Junction, psiOf: ReadonlyMap<string, Quantity<"W/(m K)">>, solve: Solve): JunctionLoss | undefined {
  const solved = solve(main);
  const fields = flanks.map((flank) => fieldOf(flank.field, solve));
  if (solved === undefined || fields.some((one) => one === undefined)) return undefined;
  const psi = apply(
    junctionTransmittance,
    {
      L_2D: solved.coupling,
      U_0: fields.flatMap((one) => one ?? []),
      l_0: flanks.map((flank) => reachOf(flank, solved)),
      psi_bar: flanks.flatMap(({ bars }) => bars.flatMap((bar) => psiOf.get(bar.id) ?? [])),
    },
    { means: `linear transmittance, ${name}` },
  );
  return { id, name, psi, length: given(length, "m", "l", `length, ${name}`, { kind: "part", id, field: "length" }) };
}

function reachOf({ name, length }: Flank, { planned }: SolvedSection): Quantity<"m"> {
  return given(length, "m", "l_0", `reach of the ${name} in the section, ${planned.name}`, { kind: "part", id: planned.id, field: "window" });
}

/** Openings of faces by their article, or as bare steel where it states no transmittance. */
function openingLosses(build: Build): readonly OpeningLoss[] {
  return build.openings
    .filter(({ surface }) => surface.kind === "face")
    .map((placed) => {
      const { opening, clear } = placed;
      const closure = closureOf(build, placed);
      const area = given(rectArea(clear), "m2", "A", `clear opening ${opening.id}`, { kind: "part", id: opening.id, field: "clear" });
      if (closure.transmittance === undefined || closure.article === undefined) return { opening: opening.id, transmittance: bareSteel(opening.id), area, isBare: true };
      const U = given(closure.transmittance, "W/(m2 K)", "U", `transmittance of ${closure.what}`, articleField(closure.article));
      return { opening: opening.id, transmittance: U, area, isBare: false };
    });
}

function bareSteel(opening: string): Quantity<"W/(m2 K)"> {
  const R_tot = apply(totalResistance, { R_si: insideSurfaceResistance("horizontal"), R_layer: [], R_se: outsideSurfaceResistance() }, { means: `resistance of the opening ${opening} as bare steel` });
  return apply(transmittance, { R_tot }, { means: `transmittance of the opening ${opening} as bare steel` });
}

function articleField(id: string): Given {
  const { what } = catalogue.articles.get(id);
  return fromRow(`articles/${id}`, "transmittance", source(`usual value of made articles: ${what}`, "typical"));
}
