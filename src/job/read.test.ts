import fc from "fast-check";
import { expect, test } from "vitest";
import bunkRoom from "../../examples/trail-crew-bunk-room.job.json" with { type: "json" };
import inverterRoom from "../../examples/island-inverter-room.job.json" with { type: "json" };
import laboratory from "../../examples/snow-laboratory.job.json" with { type: "json" };
import { typedAt, valueAt } from "./file.ts";
import type { JsonValue } from "./file.ts";
import { foundText, issueText } from "./issue.ts";
import type { JobIssue } from "./issue.ts";
import { stepsOf } from "./path.ts";
import { readJob, readJobValue } from "./read.ts";

const DEMOS: readonly JsonValue[] = [laboratory, inverterRoom, bunkRoom];
const SEED = { seed: 20, numRuns: 400 };

function said(value: JsonValue, space?: number): string {
  const read = readJob(JSON.stringify(value, undefined, space));
  return read.ok ? "read" : read.issues.map(issueText).join("\n");
}

/** The value with another one in a place; undefined takes the field out. */
function changed(value: JsonValue, path: string, to: JsonValue | undefined): JsonValue {
  const copy: unknown = structuredClone(value);
  const steps = stepsOf(path) ?? [];
  const holder = valueAt(copy as JsonValue, steps.slice(0, -1)) as Record<string | number, unknown>;
  const last = steps.at(-1) ?? "";
  if (to === undefined) Reflect.deleteProperty(holder, last);
  else holder[last] = to;
  return copy as JsonValue;
}

test("reads quantities to SI and keeps the texts", () => {
  const read = readJobValue(bunkRoom);
  if (!read.ok) throw new Error(read.issues.map(issueText).join("\n"));
  expect(read.job.openings[1]?.at.up).toBeCloseTo(28 * 0.0254, 12);
  expect(read.job.site.winterDesign).toBeCloseTo(0, 12);
  expect(typedAt(read.file, "openings[1].at.up")).toBe("28 in");
  expect(read.file).toEqual(bunkRoom);
});

test("every issue of a broken file at once, in the file's order", () => {
  const broken = {
    format: "cornerpost-job", version: 1, units: "metrik", sit: {},
    box: { row: "40-hi-cube", condition: "new", tare: "40 t", greatestGross: "30 t" },
    buildUps: { wall: { what: "w", foam: { row: "foam-closed-cell-2lb", thickness: 3 }, boards: [{ row: "plywood-half" }] }, "1st": { what: "" } },
    faces: { left: { buildUp: "wal" }, right: {}, blindEnd: {}, doorEnd: { cargoDoors: "shut" }, roof: {} },
    rooms: [{ id: "R1", what: "one", heatTo: "25 °C", coolTo: "20 °C" }, { id: "r1", what: "two", people: 2.5 }],
    openings: [{ id: "left", face: "lefft", at: { along: "1 m", up: "900 kg" } }],
    shop: { start: "2027-02-30", hoursPerDay: "0 h", crews: [] },
  };
  expect(said(broken, 2)).toMatchInlineSnapshot(`
    "line 1: job is missing; wanted: fields in { }, for example {"id":"D1","title":"in a few words","revision":"A","date":"2027-02-01","drawnBy":"in a few words","customer":{"name":"in a few words"}}.
    line 1: site is missing; wanted: fields in { }, for example {"place":"in a few words","latitude":"47.1°","longitude":"-121.4°","elevation":"2140 m","winterDesign":"-34 °C","summerDesign":{"dryBulb":"35 °C"},"surroundings":"open"}.
    line 1: codes is missing; wanted: fields in { }, for example {"basis":"US","use":"laboratory"}.
    line 1: floor is missing; wanted: fields in { }, for example {}.
    line 1: prices is missing; wanted: fields in { }, for example {"book":"D1"}.
    line 4: units is "metrik"; wanted: one of "metric", "imperial", for example "metric".
    line 5: sit is not a field of a job file; wanted: one of $schema, format, version, job, units, site, codes, box, buildUps, faces, ceilingFirst, floor, partitions, rooms, openings, items, supplied, fire, coatings, prices, shop, notes, for example "site".
    line 7: box.row is "40-hi-cube"; wanted: id of a row in the catalogue of boxes; this is not in the catalogue of boxes, for example "40-high-cube".
    line 9: box.tare is "40 t"; wanted: mass as text with its unit; this may not be above 10,000 kg, for example "3900 kg".
    line 9: box.tare is "40 t"; wanted: not above the greatest gross mass, for example "30 t".
    line 17: buildUps.wall.foam.thickness is 3; wanted: length as text with its unit, for example "3 in".
    line 21: buildUps.wall.boards[0].row is "plywood-half"; wanted: id of a row in the catalogue of boards; this is not in the catalogue of boards, for example "plywood-1-2".
    line 25: buildUps["1st"] is {"what":""}; wanted: a name of letters, digits, spaces and hyphens, starting with a letter, 40 at most, for example "wall".
    line 31: faces.left.buildUp is "wal"; wanted: the name of a build-up of this job: wall, 1st, for example "wall".
    line 36: faces.doorEnd.cargoDoors is "shut"; wanted: one of "working", "fixed shut", for example "working".
    line 40: rooms is [{"id":"R1","what":"one","heatTo":"25 °C","coolTo":"20 °C"},{"id":"r1","what":"…; wanted: 1 room, named from the blind end: one more than the partitions; 2 given.
    line 44: rooms[0].heatTo is "25 °C"; wanted: not above what the room is cooled to, for example "20 °C".
    line 48: rooms[1].id is "r1"; wanted: an id of its own; this one is an entry of rooms, for example "r1-2".
    line 50: rooms[1].people is 2.5; wanted: a whole number without quotes, for example 0.
    line 54: openings[0].kind is missing; wanted: one of "personnel door", "window", "fan", "intake", "cable entry", "pipe sleeve", "split-unit lines", "hatch", for example "personnel door".
    line 54: openings[0].size is missing; wanted: the clear opening's size, or an article that has one, for example {"width":"36 in","height":"80 in"}.
    line 55: openings[0].id is "left"; wanted: an id of its own; this one is a face of the box, for example "left-2".
    line 56: openings[0].face is "lefft"; wanted: a face of the box, or the id of a partition: left, right, blindEnd, doorEnd, roof, floor, for example "left".
    line 59: openings[0].at.up is "900 kg"; wanted: length as text with its unit; this cannot be read, "kg" is a unit of mass, not of length, for example "900 mm".
    line 64: shop.start is "2027-02-30"; wanted: calendar day as year-month-day; this is not a calendar day, for example "2027-02-01".
    line 65: shop.hoursPerDay is "0 h"; wanted: duration as text with its unit; this has to be above 0 s, for example "8 h".
    line 66: shop.crews is []; wanted: a list in [ ], at least 1 entry, for example [{"id":"D1","what":"in a few words","people":1,"trades":["in a few words"]}]."
  `);
});

test("build-ups, partitions and openings without a meaning", () => {
  const wall = laboratory.buildUps.wall;
  let job: JsonValue = laboratory;
  job = changed(job, "buildUps.wall", { ...wall, studs: { ...wall.studs, row: "track-2-1-2-33mil", track: "track-3-5-8-33mil", pitch: "1 in" } });
  job = changed(job, "buildUps.ceiling.studs", { ...laboratory.buildUps.ceiling.studs, track: "track-2-1-2-33mil", pitch: "14 ft" });
  job = changed(job, "buildUps.leaf", { what: "boards", furring: { row: "stud-1-5-8-18mil", pitch: "4 ft" } });
  job = changed(job, "faces.doorEnd.leafLining", "leaf");
  job = changed(job, "partitions", [
    { id: "P1", at: "4 m", buildUp: "wall", blindSide: "wall" },
    { id: "P2", at: "3 m", buildUp: "leaf" },
    { id: "P3", at: "13 m", buildUp: "inner wall" },
  ]);
  job = changed(job, "openings", [
    { id: "D1", kind: "personnel door", face: "roof", at: { along: "1 m", up: "1 m" }, swing: { hinge: "left", opens: "in" }, article: "heater-3-kw" },
    { id: "W1", kind: "window", face: "left", at: { along: "1 m", up: "1 m" }, frame: { row: "stud-2-1-2-18mil" } },
  ]);
  expect(said(job)).toMatchInlineSnapshot(`
    "line 1: buildUps.wall.studs.row is "track-2-1-2-33mil"; wanted: a section of the shape stud; this one is a track, for example "stud-2-1-2-18mil".
    line 1: buildUps.ceiling.studs.track is "track-2-1-2-33mil"; wanted: a track that holds a stud 92 mm deep; this one is 65 mm deep, for example "track-3-5-8-18mil".
    line 1: buildUps.ceiling.studs.pitch is "14 ft"; wanted: at most 3658 mm, so that gypsum-type-x-5-8 laid across studs reaches from stud to stud, for example "16 in".
    line 1: buildUps.leaf.studs is missing; wanted: studs that carry the furring.
    line 1: buildUps.leaf.furring.row is "stud-1-5-8-18mil"; wanted: a section of the shape hat or flat or channel or angle; this one is a stud, for example "hat-7-8-18mil".
    line 1: faces.doorEnd.leafLining is "leaf"; wanted: a build-up of foam, boards and paint only: a leaf holds no studs, batts or furring.
    line 1: partitions[0].buildUp is "wall"; wanted: a build-up of studs, batts, boards and paint only: a partition has no skin for foam, stand-off or furring.
    line 1: partitions[0].blindSide is "wall"; wanted: a build-up of boards and paint only: the partition's own build-up gives studs and batts.
    line 1: partitions[1].at is "3 m"; wanted: a place beyond that of partition P1: partitions are listed from the blind end.
    line 1: partitions[1].buildUp is "leaf"; wanted: a build-up with studs: a partition stands on nothing else.
    line 1: partitions[2].at is "13 m"; wanted: a place inside the box, which is 12032 mm long inside, for example "2 m".
    line 1: rooms is [{"id":"store","what":"cold sample store","heatTo":"2 °C","people":0,"airFlow":…; wanted: 4 rooms, named from the blind end: one more than the partitions; 2 given.
    line 1: openings[0].size is missing; wanted: the clear opening's size: heater-3-kw asks for none of its own, for example {"width":"36 in","height":"80 in"}.
    line 1: openings[0].face is "roof"; wanted: a wall or a partition: the roof takes no personnel door, for example "left".
    line 1: openings[0].swing is {"hinge":"left","opens":"in"}; wanted: nothing: a swing is said of upright leaves, not on the roof.
    line 1: openings[0].article is "heater-3-kw"; wanted: an article of the kind door in a personnel door; this one is a heater, for example "door-steel-36x80".
    line 1: openings[1].size is missing; wanted: the clear opening's size, or an article that has one, for example {"width":"36 in","height":"80 in"}.
    line 1: openings[1].frame.row is "stud-2-1-2-18mil"; wanted: a section of the shape hollow or angle or channel or flat; this one is a stud, for example "hss-2x2x3-16"."
  `);
});

test("batts want studs, and a pitch that they reach across", () => {
  const { wall } = bunkRoom.buildUps;
  const alone = changed(bunkRoom, "buildUps.wall", { what: "wool", batts: { row: "batt-rock-1-1-2-16" } });
  const wide = changed(bunkRoom, "buildUps.wall", { ...wall, studs: { ...wall.studs, pitch: "24 in" }, batts: { row: "batt-rock-1-1-2-16" } });
  expect(said(alone)).toMatchInlineSnapshot(`"line 1: buildUps.wall.studs is missing; wanted: studs that hold the batts."`);
  expect(said(wide)).toMatchInlineSnapshot(`"line 1: buildUps.wall.studs.pitch is "24 in"; wanted: at most 406 mm, so that batt-rock-1-1-2-16 reaches from stud to stud, for example "16 in"."`);
  expect(readJob(JSON.stringify(changed(bunkRoom, "buildUps.wall.batts", { row: "batt-rock-1-1-2-16" }))).ok).toBe(true);
});

test("linings that leave no room, with the numbers", () => {
  const thick = changed(changed(bunkRoom, "buildUps.wall.studs", undefined), "buildUps.wall.foam.thickness", "1.1 m");
  const crowded = changed(laboratory, "partitions", [laboratory.partitions[0] as JsonValue, { id: "P2", at: "3250 mm", buildUp: "inner wall" }]);
  expect(said(thick)).toMatchInlineSnapshot(`"line 1: faces.right is {"buildUp":"wall","studsFrom":"blind end"}; wanted: linings that leave at least 300 mm of the inside width of 2352 mm; they take 2238 mm."`);
  expect(said(crowded)).toMatchInlineSnapshot(`
    "line 1: partitions[1].at is "3250 mm"; wanted: at least 50 mm to the finished face before it, counted from the blind end; they overlap by 74 mm.
    line 1: rooms is [{"id":"store","what":"cold sample store","heatTo":"2 °C","people":0,"airFlow":…; wanted: 3 rooms, named from the blind end: one more than the partitions; 2 given."
  `);
});

test("a file of another kind or of a newer program gives one issue", () => {
  expect(said({ format: "other", a: 1 })).toMatchInlineSnapshot(`"line 1: format is "other"; wanted: a job file of this program, for example "cornerpost-job"."`);
  expect(said({ ...bunkRoom, version: 9 })).toMatchInlineSnapshot(`"line 1: version is 9; wanted: version 1, the only one that this program reads, for example 1."`);
  expect(said([])).toMatchInlineSnapshot(`"line 1: the file is []; wanted: a job file, which is one object in { }, for example { "format": "cornerpost-job", … }."`);
  expect(readJob(" ".repeat(2_000_001))).toMatchObject({ ok: false, issues: [{ code: "limit" }] });
  expect(readJob('{ "units": "metric", "__proto__": {} }')).toMatchObject({ ok: false, issues: [{ code: "limit" }] });
});

test("fields written twice are found, though the language's own reader takes the last", () => {
  const text = JSON.stringify(bunkRoom).replace('"units":"imperial"', '"units":"metric","units":"imperial"');
  expect(readJob(text)).toMatchObject({ ok: false, issues: [{ code: "repeated field", path: "units", line: 1 }] });
});

test("a byte order mark before the file is no mistake", () => {
  expect(readJob(`\uFEFF${JSON.stringify(bunkRoom)}`).ok).toBe(true);
});

test("any JSON gives a job or issues, the same ones twice", () => {
  fc.assert(
    fc.property(fc.oneof(fc.json(), fc.jsonValue().map((value) => JSON.stringify({ ...bunkRoom, buildUps: value, openings: value }))), (text) => {
      const read = readJob(text);
      expect(readJob(text)).toEqual(read);
      if (!read.ok) for (const issue of read.issues) expect(issueText(issue)).toMatch(/\w.*\.$/s);
    }),
    SEED,
  );
});

const scraps = fc.oneof(
  fc.constantFrom<JsonValue>("", "0 in", "-5 m", "1e9 mm", "NaN", "left", "P1", "wall", "2 in", "10 min", -1, 0, 1e300, null, true, [], {}),
  fc.jsonValue() as fc.Arbitrary<JsonValue>,
);
const mutants = fc
  .record({ demo: fc.constantFrom(...DEMOS), places: fc.array(fc.tuple(fc.nat(), fc.option(scraps, { nil: undefined })), { minLength: 1, maxLength: 4 }) })
  .map(({ demo, places }) =>
    places.reduce((value, [pick, scrap]) => {
      const paths = pathsIn(value);
      return changed(value, paths[pick % paths.length] ?? "units", scrap);
    }, demo),
  );

test("a demo with fields changed or gone gives a job in finite numbers or issues", () => {
  fc.assert(
    fc.property(mutants, (value) => {
      const read = readJobValue(value);
      if (read.ok) expect(numbersIn(read.job as unknown as JsonValue).filter((number) => !Number.isFinite(number))).toEqual([]);
      else expect(read.issues.length).toBeGreaterThan(0);
    }),
    SEED,
  );
});

test("each issue shows what stands there, and the example would do", () => {
  const oneField = fc.record({ demo: fc.constantFrom(...DEMOS), pick: fc.nat(), scrap: fc.option(scraps, { nil: undefined }) });
  fc.assert(
    fc.property(oneField, ({ demo, pick, scrap }) => {
      const paths = pathsIn(demo);
      const path = paths[pick % paths.length] ?? "units";
      const value = changed(demo, path, scrap);
      const issue = issuesOf(value).find((one) => one.path === path && FIELD_CODES.has(one.code));
      if (issue === undefined) return;
      expect(issue.found).toBe(foundText(valueAt(value, stepsOf(path) ?? [])));
      const mended = changed(value, path, JSON.parse(issue.example) as JsonValue);
      expect(issuesOf(mended).filter((one) => one.path === path && FIELD_CODES.has(one.code))).toEqual([]);
    }),
    SEED,
  );
});

const FIELD_CODES: ReadonlySet<string> = new Set(["missing", "type", "choice", "unit", "range", "reference", "date", "text", "number"]);

function issuesOf(value: JsonValue): readonly JobIssue[] {
  const read = readJobValue(value);
  return read.ok ? [] : read.issues;
}

function pathsIn(value: JsonValue, at = ""): readonly string[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]: [string, JsonValue]) => {
    const step = Array.isArray(value) ? `[${key}]` : `[${JSON.stringify(key)}]`;
    const path = `${at}${step}`;
    return [canonical(path), ...pathsIn(inner, path)];
  });
}

/** The path as issues write it. */
function canonical(path: string): string {
  return path.replace(/\["([A-Za-z_$][\w$]*)"\]/g, ".$1").replace(/^\./, "");
}

function numbersIn(value: JsonValue | undefined): readonly number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}
