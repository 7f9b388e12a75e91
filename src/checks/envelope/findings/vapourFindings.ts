import type { Build } from "../../../build/build.ts";
import type { Surface } from "../../../build/surface.ts";
import { catalogue } from "../../../catalogue/catalogue.ts";
import { inch } from "../../../catalogue/imperial.ts";
import type { FoamRow } from "../../../catalogue/rows.ts";
import { type Comparison, compare } from "../../../working/comparison.ts";
import { given, type Quantity } from "../../../working/quantity.ts";
import { commonPractice, source } from "../../../working/source.ts";
import type { Finding } from "../../check.ts";
import type { MakeFinding } from "../../finding.ts";
import { fromRow } from "../../fromRow.ts";
import { MONTHS, type DampRoom } from "../moisture/rooms.ts";
import { type FaceVapour, vapourThrough } from "../moisture/vapour.ts";
import type { SENTENCES } from "../sentences.ts";

type Make = MakeFinding<typeof SENTENCES>;

/** Water in the layers of faces over a year, and whether foam counts as its own vapour barrier. */
export function vapourFindings(build: Build, rooms: readonly DampRoom[], make: Make): readonly Finding[] {
  const foams = foamedFaces(build);
  const barriers = new Set(foams.filter(({ comparison }) => comparison?.holds === true).map(({ surface }) => surface.id));
  return [...vapourThrough(build, rooms).map((one) => waterFinding(one, barriers, make)), ...(rooms.length === 0 ? [] : foams.map((one) => foamFinding(one, make)))];
}

/** No water left and none gathered: what a wall should show. */
const NO_WATER = given(0, "kg/m2", "m_w", "water that a layer may keep", { kind: "constant", source: source("a dry wall", "derived") });

function waterFinding({ room, surface, year, classes, battsOnSteel }: FaceVapour, barriers: ReadonlySet<string>, make: Make): Finding {
  const plane = planeOf(year);
  const facts = {
    room: room.placed.name,
    surface: surface.name,
    classes: classes.map(({ what, vapourClass }) => `${what} ${vapourClass === "open" ? "open" : `class ${vapourClass}`}`).join(", "),
  };
  const body = { at: `${room.environment}/vapour/${surface.id}`, about: [room.environment, surface.id] };
  const { greatest } = year;
  if (greatest === undefined) {
    return make("no water in layers", facts, { ...body, verdict: "pass", comparison: compare(amountOf(0, `most water in the ${surface.name}`), "<=", NO_WATER) });
  }
  const water = { ...facts, plane, amount: greatest.amount, month: MONTHS[greatest.month] as string };
  const most = compare(amountOf(greatest.amount, `most water in the ${surface.name}, at ${plane}`), "<=", NO_WATER);
  if (battsOnSteel) return make("batts against steel", water, { ...body, verdict: year.dries ? "watch" : "stop", comparison: most });
  if (year.dries) return make("water dries", water, { ...body, verdict: "watch", comparison: most });
  const left = compare(amountOf(year.left, `water left in the ${surface.name} after a year, at ${plane}`), "<=", NO_WATER);
  const stays = { ...water, left: year.left };
  return barriers.has(surface.id) && onlyAtFoam(year)
    ? make("water stays behind foam", stays, { ...body, verdict: "watch", comparison: left })
    : make("water stays", stays, { ...body, verdict: "stop", comparison: left });
}

function amountOf(value: number, means: string): Quantity<"kg/m2"> {
  return given(value, "kg/m2", "m_w", means, { kind: "solver", method: "vapour by monthly means, tangent construction of ISO 13788", size: "12 months", residual: 0 });
}

/** The plane with the most water at the end of a month. */
function planeOf({ months }: FaceVapour["year"]): string {
  const all = months.flatMap(({ water }) => water);
  const wettest = all.reduce<(typeof all)[number] | undefined>((most, one) => (most === undefined || one.atEnd > most.atEnd ? one : most), undefined);
  if (wettest === undefined) return "";
  const { outer, inner } = wettest.plane;
  return outer === inner ? `within the ${outer}` : `the plane of ${outer} and ${inner}`;
}

/** True where what is left lies at the foam or within it. */
function onlyAtFoam({ months }: FaceVapour["year"]): boolean {
  const last = months.at(-1);
  return last !== undefined && last.water.filter(({ atEnd }) => atEnd > 0).every(({ plane }) => `${plane.outer} ${plane.inner}`.includes("foam"));
}

interface FoamedFace {
  readonly surface: Surface;
  readonly row: FoamRow;
  readonly thickness: Quantity<"m">;
  /** Against the thickness from which it is its own barrier; undefined for open-cell foam. */
  readonly comparison: Comparison<"m"> | undefined;
}

/** Walls and roof with foam on the sheet. */
function foamedFaces(build: Build): readonly FoamedFace[] {
  return build.surfaces.flatMap((surface): readonly FoamedFace[] => {
    const part = build.parts.find(({ role, surface: on }) => role === "foam" && on === surface.id);
    const { foam } = surface.stack;
    if (part?.row === undefined || foam === undefined || surface.id === "floor") return [];
    const row = catalogue.foams.get(part.row.id);
    const thickness = given(foam.to - foam.from, "m", "d", `least thickness of foam on the ${surface.name}`, { kind: "part", id: part.id, field: "depth inward of the inside plane" });
    return [{ surface, row, thickness, comparison: row.closedCell ? compare(thickness, ">=", barrierOf(row, build.job.codes.use === "bunk room"), 1e-9) : undefined }];
  });
}

/** The product's own figure first; else 2 in, or 3 in where people live. */
export function barrierOf({ id, barrierThickness, source: from }: FoamRow, dwelling: boolean): Quantity<"m"> {
  const means = "least thickness from which closed-cell foam is its own vapour barrier";
  if (barrierThickness !== null) return given(barrierThickness, "m", "d_vb", means, fromRow(`foams/${id}`, "barrierThickness", from));
  return given((dwelling ? 3 : 2) * inch, "m", "d_vb", means, { kind: "constant", source: commonPractice });
}

function foamFinding({ surface, thickness, comparison }: FoamedFace, make: Make): Finding {
  const body = { at: `foam/${surface.id}`, about: [surface.id] };
  if (comparison === undefined) return make("foam is open", { surface: surface.name, foam: thickness.value }, { ...body, verdict: "watch", working: [thickness] });
  const facts = { surface: surface.name, foam: thickness.value, least: comparison.right.value };
  return comparison.holds
    ? make("foam is a barrier", facts, { ...body, verdict: "pass", comparison })
    : make("foam too thin for a barrier", facts, { ...body, verdict: "watch", comparison });
}
