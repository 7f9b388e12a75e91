import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { valueAt } from "../../job/file.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { outlineOf, stepsOfPlace } from "./outline.ts";

describe("the outline", () => {
  it("leads to everything in the file, each place once in its own section", () => {
    for (const { file, job } of DEMO_JOBS) {
      const sections = outlineOf(file, [], []);
      const entries = sections.flatMap((section) => section.entries);
      for (const { place } of entries) {
        const steps = stepsOfPlace(file, place);
        if (steps === undefined) return expect.unreachable(JSON.stringify(place));
        const optional = place.kind === "fields" || place.kind === "face";
        expect(optional || valueAt(file, steps) !== undefined).toBe(true);
      }
      const ids = sections.find(({ name }) => name === "Openings")?.entries.map(({ name }) => name);
      expect(ids).toEqual(job.openings.map(({ id }) => id));
      expect(sections.find(({ name }) => name === "Build-ups")?.entries.map(({ name }) => name)).toEqual(Object.keys(job.buildUps));
    }
  });

  it("shows fans and intakes under air, and the rooms that ask for it", () => {
    const file = {
      openings: [
        { id: "D1", kind: "personnel door", face: "left" },
        { id: "FN1", kind: "fan", face: "P1", what: "exhaust" },
        { id: "H1", kind: "hatch", face: "roof", fittings: ["screen-12x12"] },
      ],
      rooms: [{ id: "lab", airFlow: "120 L/s" }, { id: "store" }],
    };
    const air = outlineOf(file, [], []).find(({ name }) => name === "Air");
    expect(air?.entries.map(({ name, more }) => [name, more])).toEqual([
      ["FN1", "exhaust, partition P1"],
      ["H1", "hatch, roof"],
      ["lab", "asks for 120 L/s of outdoor air"],
    ]);
  });

  it("counts issues and shows the gravest finding at each place", () => {
    const [{ file, job, book }] = DEMO_JOBS as [(typeof DEMO_JOBS)[number]];
    const { findings } = makeScreenRiver().run(job, book);
    const issue = { code: "unit", path: "openings[1].at.up", found: "", wants: "", example: "" } as const;
    const entries = outlineOf(file, [issue], findings).find(({ name }) => name === "Openings")?.entries;
    expect(entries?.map(({ issues }) => issues)).toEqual(job.openings.map((_, index) => (index === 1 ? 1 : 0)));
    for (const { name, verdict } of entries ?? []) {
      const about = findings.filter((one) => one.about.includes(name)).map((one) => one.verdict);
      expect(verdict).toBe(about.includes("stop") ? "stop" : about.includes("watch") ? "watch" : undefined);
    }
  });

  it("finds no place for what is not there", () => {
    expect(stepsOfPlace({}, { kind: "opening", id: "D1" })).toBeUndefined();
    expect(stepsOfPlace({ buildUps: {} }, { kind: "build-up", id: "constructor" })).toBeUndefined();
  });
});
