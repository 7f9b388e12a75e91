import { readJobValue } from "../src/job/read.ts";
import type { Job } from "../src/job/job.ts";

/** A plain job as its file would hold it: a 20 ft box lined all round, with nothing cut into it. */
export function sampleJobFile(): Record<string, unknown> {
  return {
    format: "cornerpost-job",
    version: 1,
    job: { id: "sample", title: "Sample", revision: "A", date: "2027-01-04", drawnBy: "Test", customer: { name: "Test" } },
    units: "metric",
    site: {
      place: "Nowhere",
      latitude: "45°",
      longitude: "10°",
      elevation: "100 m",
      winterDesign: "-20 °C",
      summerDesign: { dryBulb: "32 °C" },
      surroundings: "open",
    },
    codes: { basis: "Europe", use: "office" },
    box: { row: "20-standard", condition: "new" },
    buildUps: {
      wall: {
        what: "foamed wall",
        foam: { row: "foam-closed-cell-2lb", thickness: "2 in" },
        studs: {
          row: "stud-2-1-2-18mil",
          track: "track-2-1-2-18mil",
          pitch: "16 in",
          standOff: "1/2 in",
          cornerPull: "3 in",
        },
        boards: [{ row: "gypsum-1-2" }],
      },
      ceiling: {
        what: "foamed ceiling",
        foam: { row: "foam-closed-cell-2lb", thickness: "2 in" },
        studs: { row: "stud-1-5-8-18mil", track: "track-1-5-8-18mil", pitch: "16 in", standOff: "1/2 in" },
        boards: [{ row: "gypsum-1-2" }],
      },
    },
    faces: {
      left: { buildUp: "wall" },
      right: { buildUp: "wall" },
      blindEnd: { buildUp: "wall" },
      doorEnd: { cargoDoors: "fixed shut", buildUp: "wall" },
      roof: { buildUp: "ceiling" },
    },
    floor: { layers: [{ row: "vinyl-sheet-2" }] },
    rooms: [{ id: "R1", what: "Room" }],
    prices: { book: "demo-shop" },
    shop: { start: "2027-02-01", hoursPerDay: "8 h", crews: [{ id: "C1", what: "Crew", people: 2, trades: ["all"] }] },
  };
}

/** The plain job with batts: in front of thinner foam in the walls, and in a partition with a door between two rooms. */
export function battedJobFile(): Record<string, unknown> {
  const file = sampleJobFile();
  const buildUps = file["buildUps"] as Record<string, object>;
  return {
    ...file,
    buildUps: {
      ...buildUps,
      wall: { ...buildUps["wall"], foam: { row: "foam-closed-cell-2lb", thickness: "1-1/2 in" }, batts: { row: "batt-rock-1-1-2-16" } },
      between: {
        what: "partition with wool",
        studs: { row: "stud-2-1-2-18mil", track: "track-2-1-2-18mil", pitch: "16 in" },
        batts: { row: "batt-glass-2-1-2-16" },
        boards: [{ row: "gypsum-1-2" }],
      },
    },
    partitions: [{ id: "P1", at: "3 m", buildUp: "between" }],
    rooms: [{ id: "R1", what: "Blind room" }, { id: "R2", what: "Door room" }],
    openings: [{ id: "D1", kind: "personnel door", face: "P1", at: { along: "500 mm", up: "0 mm" }, size: { width: "800 mm", height: "2 m" } }],
  };
}

/** Reads a job value that has to be right. */
export function jobOf(value: unknown): Job {
  const read = readJobValue(value);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2));
  return read.job;
}
