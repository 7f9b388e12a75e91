import type { Build } from "../build/build.ts";
import { catalogue } from "../catalogue/catalogue.ts";
import { type CoatZone, zoneOf } from "../takeoff/coats.ts";
import type { HoldPoint, LabourWork } from "../takeoff/labour.ts";
import { given, type Quantity } from "../working/quantity.ts";
import type { After, Draft } from "./draft.ts";

/** What later work follows: the shell is closed and primed; the outside has its last coat. */
export interface ShellDone {
  readonly primed: After;
  readonly coated: After;
}

/** The box itself: receive, cut and frame the openings, blast, repair and coat the outside. */
export function shellItems(build: Build, plan: Draft, holds: readonly HoldPoint[], boxLeads: After): ShellDone {
  const received = plan.work("receive", "receive and inspect the box", ({ task }) => task === "mobilise" || task === "receive box", boxLeads);
  const marked = plan.work("mark", "mark out the openings", ({ task }) => task === "mark opening", received);
  const framed = build.surfaces
    .filter(({ kind }) => kind === "face")
    .flatMap(({ id, name }) => {
      const cutting = new Set(["cut opening", "cut along hole"]);
      const cut = plan.work(`cut/${id}`, `cut openings, ${name}`, ({ task, place }) => place === id && cutting.has(task), marked);
      return plan.work(`weld/${id}`, `weld opening frames, ${name}`, ({ task, place }) => place === id && task === "weld frame", cut);
    });
  const sleeved = plan.work("fit/sleeve", "weld in: sleeves", ({ task }) => task === "fit sleeve", framed);
  const inspected = holds.includes("openings")
    ? plan.hold(
        "hold/openings",
        "hold point: openings and welds",
        "welding inspector or engineer in charge: openings in place and to size, welds complete",
        ({ task, place }) => task === "inspect" && place === "openings",
        sleeved,
      )
    : sleeved;
  const blasted = plan.work("blast", "clean and blast the outside", ({ task }) => task === "clean and blast", inspected);
  const repaired = plan.work("repair", "repair coat at cut edges and welds", ({ task }) => task === "repair coat", blasted);
  const primer = build.parts.find((part) => part.role === "coating" && zoneOf(part) === "outside")?.row?.id;
  const primed =
    primer === undefined || repaired === blasted
      ? repaired
      : plan.wait("wait/repair", "repair coat dries", coatWait(primer, "recoatHours"), repaired);
  const zones: readonly CoatZone[] = ["outside", "roof", "underside"];
  return { primed, coated: coatItems(build, plan, zones, primed) };
}

/**
 * Coats of zones, the first of each before the second of any, so that one zone dries while the next is coated. Each goes on
 * after the one before it may be coated over; the last one's cure has to end before delivery.
 */
export function coatItems(build: Build, plan: Draft, zones: readonly CoatZone[], after: After): After {
  const coats = zones.flatMap((zone) => {
    const rows = coatRows(build, zone);
    const last = Math.max(...rows.keys());
    return [...rows].map(([coat, ofCoat]) => ({ zone, coat, rows: ofCoat, isLast: coat === last }));
  });
  const dry = new Map<CoatZone, After>();
  for (const { zone, coat, rows, isLast } of coats.sort((a, b) => a.coat - b.coat)) {
    const task = zone === "inside" ? "coat inside" : "coat outside";
    const what = [...rows].map((row) => catalogue.coatings.get(row).what).join(", ");
    const isHere = (work: LabourWork): boolean => work.task === task && work.place === zone && work.step === coat;
    const coated = plan.work(`coat/${zone}/${coat}`, `coat ${coat}, ${zone}: ${what}`, isHere, dry.get(zone) ?? after);
    if (isLast) plan.wait(`${CURE}${zone}`, `last coat cures, ${zone}`, slowest(rows, "cureHours"), coated);
    dry.set(zone, plan.wait(`wait/coat/${zone}/${coat}`, `coat ${coat} dries, ${zone}`, slowest(rows, "recoatHours"), coated));
  }
  return dry.size === 0 ? after : [...dry.values()].flat();
}

/** The coating rows of a zone by coat; faces of one zone may have different paint. */
function coatRows(build: Build, zone: CoatZone): ReadonlyMap<number, ReadonlySet<string>> {
  const rows = new Map<number, Set<string>>();
  for (const part of build.parts) {
    if (part.shape.kind !== "film" || part.row === undefined || zoneOf(part) !== zone) continue;
    const known = rows.get(part.shape.coat);
    if (known === undefined) rows.set(part.shape.coat, new Set([part.row.id]));
    else known.add(part.row.id);
  }
  return rows;
}

/** Start of the ids of cures, which only delivery waits for. */
export const CURE = "cure/";

/** The longest time that any of the coatings asks for. */
function slowest(rows: ReadonlySet<string>, field: "recoatHours" | "cureHours"): Quantity<"h"> {
  return [...rows].map((row) => coatWait(row, field)).reduce((most, one) => (one.value > most.value ? one : most));
}

function coatWait(id: string, field: "recoatHours" | "cureHours"): Quantity<"h"> {
  const row = catalogue.coatings.get(id);
  const means = field === "recoatHours" ? `time before ${row.what} may be coated over, at 20 °C` : `cure of ${row.what}, at 20 °C`;
  return given(row[field], "h", "H_wait", means, { kind: "catalogue", row: `coatings ${id}`, field, source: row.source });
}
