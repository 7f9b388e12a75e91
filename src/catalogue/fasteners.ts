import { source } from "../working/source.ts";
import { inch } from "./imperial.ts";
import type { FastenerRow } from "./rows.ts";

const screws = source("usual made screws; 3/8 in of thread past the steel's near face, common practice", "typical");
const made = source("usual made pieces", "typical");

/** Thread that must stand past the near face of the steel; the grip counts the steel too, up to 33 mil, rounded up. */
const THREAD_PAST = (3 / 8) * inch;
const STEEL_IN_GRIP = 0.0009;

function screw(id: string, what: string, inches: number, diameter: number, mass: number, pack: number): FastenerRow {
  const length = inches * inch;
  const grip = { least: 0, greatest: length - THREAD_PAST + STEEL_IN_GRIP };
  return { id, what, source: screws, length, diameter, mass, grip, pack };
}

/** Screws, rivets, inserts and clips. Mass of one piece in kg. */
export const fastenerRows: readonly FastenerRow[] = [
  screw("screw-drywall-25", "drywall screw 1 in, fine thread", 1, 0.0035, 0.0013, 1000),
  screw("screw-drywall-41", "drywall screw 1-5/8 in, fine thread", 1.625, 0.0035, 0.002, 1000),
  screw("screw-drywall-57", "drywall screw 2-1/4 in, fine thread", 2.25, 0.0039, 0.0031, 500),
  screw("screw-drilling-32", "self-drilling screw 1-1/4 in, winged, for wood panels on steel", 1.25, 0.0042, 0.0029, 500),
  screw("screw-drilling-41", "self-drilling screw 1-5/8 in, winged, for wood panels on steel", 1.625, 0.0042, 0.0036, 500),
  { id: "screw-wafer-13", what: "wafer-head self-drilling screw 1/2 in, stud to track", source: made, length: inch / 2, diameter: 0.0042, mass: 0.0014, grip: { least: 0.0006, greatest: 0.0035 }, pack: 1000 },
  { id: "screw-hex-25", what: "hex washer-head self-drilling screw 1 in, to steel up to 6 mm", source: made, length: inch, diameter: 0.0055, mass: 0.0055, grip: { least: 0.002, greatest: 0.012 }, pack: 250 },
  { id: "screw-floor-50", what: "floor screw 2 in, wood to wood", source: made, length: 2 * inch, diameter: 0.0048, mass: 0.0051, grip: { least: 0.01, greatest: 0.03 }, pack: 500 },
  { id: "screw-floor-75", what: "self-tapping floor screw 3 in, through the box's floor to its cross members", source: made, length: 3 * inch, diameter: 0.008, mass: 0.024, grip: { least: 0.03, greatest: 0.06 }, pack: 100 },
  { id: "rivet-blind-4-8", what: "blind rivet 4.8 mm, multi-grip, aluminium with steel pin, sealed", source: made, length: 0.0127, diameter: 0.0048, mass: 0.0021, grip: { least: 0.0016, greatest: 0.0064 }, pack: 250 },
  { id: "insert-threaded-m8", what: "threaded insert M8, steel", source: made, length: 0.018, diameter: 0.011, mass: 0.008, grip: { least: 0.0005, greatest: 0.003 }, pack: 100 },
  { id: "bolt-m8-25", what: "hex bolt M8 x 25 with washer", source: made, length: 0.025, diameter: 0.008, mass: 0.019, grip: { least: 0.002, greatest: 0.015 }, pack: 100 },
  { id: "bolt-m12-40", what: "hex bolt M12 x 40 with nut and washers", source: made, length: 0.04, diameter: 0.012, mass: 0.075, grip: { least: 0.006, greatest: 0.024 }, pack: 50 },
  { id: "stud-weld-m8", what: "weld stud M8 x 40", source: made, length: 0.04, diameter: 0.008, mass: 0.014, grip: { least: 0.001, greatest: 0.03 }, pack: 100 },
  { id: "clip-anchor", what: "welded angle clip 50 x 50 x 3 mm, holds a track to the box's steel", source: made, length: 0.05, diameter: 0.005, mass: 0.114, grip: { least: 0.0004, greatest: 0.003 }, pack: 50 },
  { id: "hanger-clip-ceiling", what: "ceiling clip, holds a furring bar off the roof sheet", source: made, length: 0.06, diameter: 0.005, mass: 0.06, grip: { least: 0.0004, greatest: 0.003 }, pack: 100 },
];
