import type { JsonObject, JsonValue } from "../../job/file.ts";

type System = "metric" | "imperial";

/** The kinds of opening in the order of the list, each with the id that a new one is named after and what it starts as. */
export const OPENING_STARTERS: readonly { readonly kind: string; readonly id: string; readonly make: (system: System) => JsonObject }[] = [
  {
    kind: "personnel door", id: "D1",
    make: (system) => ({
      at: { along: pick(system, "900 mm", "36 in"), up: pick(system, "0 mm", "0 in") },
      article: "door-steel-36x80", frame: { row: "hss-2x2x3-16" }, trim: "trim-2x2-18mil",
      swing: { hinge: "left", opens: "out", angle: "90°" },
    }),
  },
  { kind: "window", id: "W1", make: (system) => ({ ...framedAt(system, "900 mm", "36 in"), article: "window-slider-36x36" }) },
  { kind: "fan", id: "FN1", make: (system) => ({ ...framedAt(system, "1800 mm", "72 in"), article: "fan-wall-300" }) },
  {
    kind: "intake", id: "IN1",
    make: (system) => ({ ...framedAt(system, "300 mm", "12 in"), article: "damper-12x12", fittings: ["screen-12x12"] }),
  },
  { kind: "cable entry", id: "CE1", make: (system) => ({ at: placeAt(system, "300 mm", "12 in"), article: "cable-entry-200x150" }) },
  { kind: "pipe sleeve", id: "PS1", make: (system) => ({ at: placeAt(system, "300 mm", "12 in"), article: "sleeve-50" }) },
  { kind: "split-unit lines", id: "SL1", make: (system) => ({ at: placeAt(system, "1800 mm", "72 in"), article: "sleeve-50" }) },
  { kind: "hatch", id: "H1", make: (system) => ({ ...framedAt(system, "900 mm", "36 in"), article: "hatch-wall-24x24" }) },
];

/** A new fit-out item: a table, to be made into what it shall be. */
export function itemStarter(system: System): JsonObject {
  return {
    what: "table",
    size: { length: pick(system, "1200 mm", "48 in"), width: pick(system, "600 mm", "24 in"), height: pick(system, "750 mm", "30 in") },
    mass: pick(system, "25 kg", "55 lb"),
    at: { along: pick(system, "300 mm", "12 in"), across: pick(system, "300 mm", "12 in") },
  };
}

/** Groups that a person can add, by pattern: what they start as. */
export function groupStarter(pattern: string, system: System): JsonObject | undefined {
  switch (pattern) {
    case "buildUps{}.foam":
    case "floor.foam":
      return { row: "foam-closed-cell-2lb", thickness: pick(system, "50 mm", "2 in") };
    case "buildUps{}.studs":
      return { row: "stud-2-1-2-18mil", track: "track-2-1-2-18mil", pitch: "16 in" };
    case "buildUps{}.batts":
      return { row: "batt-rock-2-1-2-16" };
    case "buildUps{}.furring":
      return { row: "hat-7-8-18mil", pitch: "16 in" };
    case "openings[].size":
      return { width: pick(system, "600 mm", "24 in"), height: pick(system, "600 mm", "24 in") };
    case "openings[].frame":
      return { row: "hss-2x2x3-16" };
    case "openings[].swing":
      return { hinge: "left", opens: "out" };
    case "items[].clear":
      return { front: pick(system, "900 mm", "36 in") };
    default:
      return undefined;
  }
}

/** What a new member of a list starts as, by the list's pattern; undefined for lists that have their own way to add. */
export function memberStarter(pattern: string): JsonValue | undefined {
  switch (pattern) {
    case "buildUps{}.boards":
      return { row: "gypsum-type-x-5-8" };
    case "floor.layers":
      return { row: "plywood-3-4" };
    case "buildUps{}.paint":
      return { row: "paint-latex", coats: 2 };
    case "coatings.outside":
    case "coatings.roof":
    case "coatings.underside":
      return { row: "primer-alkyd", coats: 1 };
    case "openings[].fittings":
      return "screen-12x12";
    case "openings[].hardware":
      return "closer";
    case "supplied":
      return { article: "split-3-5-kw-outdoor" };
    case "fire.rated":
      return { face: "left", rating: "60 min", from: "outside" };
    case "shop.crews":
      return { id: "crew", what: "new crew", people: 2, trades: ["carpenter"] };
    case "shop.crews[].trades":
      return "carpenter";
    case "shop.holidays":
      return "2027-12-25";
    case "notes":
      return "New note";
    default:
      return undefined;
  }
}

function framedAt(system: System, metric: string, imperial: string): JsonObject {
  return { at: placeAt(system, metric, imperial), frame: { row: "hss-2x2x3-16" }, trim: "trim-2x2-18mil" };
}

function placeAt(system: System, metric: string, imperial: string): JsonObject {
  return { along: pick(system, "900 mm", "36 in"), up: pick(system, metric, imperial) };
}

function pick(system: System, metric: string, imperial: string): string {
  return system === "metric" ? metric : imperial;
}
