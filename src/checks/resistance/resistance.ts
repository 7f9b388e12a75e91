import type { Build } from "../../build/build.ts";
import type { Surface } from "../../build/surface.ts";
import {
  type HeatFlow,
  insideSurfaceResistance,
  meanThickness,
  outsideSurfaceResistance,
  totalResistance,
  transmittance,
} from "../../physics/plainLayers.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import type { Check, Finding } from "../check.ts";
import { findingMaker, type MakeFinding } from "../finding.ts";
import { sayIn } from "../say.ts";
import { battThickness, layersOf, leastFoam } from "./layers.ts";
import { NO_BRIDGES, SENTENCES } from "./sentences.ts";

/** Thermal resistance of each face's plain layers. See docs/checks/resistance.md. */
export const resistance: Check = {
  id: "resistance",
  asks: "What thermal resistance do the plain layers of each face give in the field between studs?",
  needs: ["faces", "buildUps", "rooms"],
  leavesOut:
    "studs, posts, rails, cross-members, frames and openings, which bridge the insulation: ISO 6946 does not allow its combined method where metal bridges insulation, so the true value is lower; air between the layers; moisture; air leakage; ageing beyond the declared value",
  decides: "the designer of record and the local energy code",
  run(build) {
    const make = findingMaker("resistance", SENTENCES, sayIn(build.job.units));
    const held = build.job.rooms.filter(({ heatTo, coolTo }) => heatTo !== undefined || coolTo !== undefined);
    const unstated = held.length === 0 ? [make("temperatures not stated", {}, { verdict: "note", at: "rooms", about: [] })] : [];
    const faces = build.surfaces.filter(({ kind }) => kind === "face").map((surface) => faceFinding(build, surface, held, make));
    return [...unstated, ...faces];
  },
};

/** Winter decides: heat leaves upward through the roof, downward through the floor. */
const FLOWS: Readonly<Partial<Record<string, HeatFlow>>> = { roof: "up", floor: "down" };

function faceFinding(build: Build, surface: Surface, held: Build["job"]["rooms"], make: MakeFinding<typeof SENTENCES>): Finding {
  const flow = FLOWS[surface.id] ?? "horizontal";
  const name = surface.name;
  const bridges = bridgesOf(surface);
  const between = bridges === NO_BRIDGES ? "" : `, between ${bridges}`;
  const R_tot = apply(
    totalResistance,
    { R_si: insideSurfaceResistance(flow), R_layer: layersOf(build, surface), R_se: outsideSurfaceResistance() },
    { means: `thermal resistance of the ${name} from air to air${between}` },
  );
  const U = apply(transmittance, { R_tot }, { means: `thermal transmittance of the ${name}${between}` });
  const facts = { surface: name, resistance: R_tot.value, transmittance: U.value };
  const foam = leastFoam(build, surface);
  const batts = battThickness(surface);
  const body = { at: surface.id, about: [surface.id], working: [U] };
  const mean = meanFoam(build, surface);
  if (foam !== undefined && mean !== undefined) {
    const foamed = { ...facts, bridges, foam, mean: mean.value };
    const note = { ...body, verdict: "note", working: [U, mean] } as const;
    return batts === undefined ? make("clear field", foamed, note) : make("clear field of foam and batts", { ...foamed, batts }, note);
  }
  if (batts !== undefined) return make("clear field of batts", { ...facts, bridges, batts }, { ...body, verdict: "note" });
  const bounding = held.filter((room) => bounds(build, surface, room));
  if (bounding.length === 0) return make("clear field without foam", facts, { ...body, verdict: "note" });
  const rooms = bounding.map(({ what }) => what).join(" and ");
  return make("bare face", { surface: name, resistance: R_tot.value, rooms, count: bounding.length }, { ...body, verdict: "watch" });
}

/** What crosses the insulation of a face again and again. */
function bridgesOf({ id, stack }: Surface): string {
  if (id === "floor") return "cross-members";
  return stack.studs === undefined ? NO_BRIDGES : "studs";
}

/** Mean thickness of the foam, troughs of the sheet filled. */
function meanFoam(build: Build, surface: Surface): Quantity<"m"> | undefined {
  const part = build.parts.find((one) => one.role === "foam" && one.surface === surface.id);
  if (part?.shape.kind !== "fill") return undefined;
  const { volume, area } = part.shape;
  return apply(
    meanThickness,
    {
      V: given(volume, "m3", "V", "volume of the foam, troughs included", { kind: "part", id: part.id, field: "shape.volume" }),
      A: given(area, "m2", "A", "area of the foam", { kind: "part", id: part.id, field: "shape.area" }),
    },
    { means: "mean thickness of foam, troughs included" },
  );
}

/** An end face bounds only the room beside it; every other face bounds all rooms. */
function bounds({ rooms }: Build, { id }: Surface, room: Build["job"]["rooms"][number]): boolean {
  if (id === "blindEnd") return rooms[0]?.room === room;
  if (id === "doorEnd") return rooms.at(-1)?.room === room;
  return true;
}
