import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { readJob } from "../../job/read.ts";
import { dayOf, idFrom, newJobText, whenText } from "./newJob.ts";

const fresh = { title: "Pump house, north shore", drawnBy: "A. Drafter", date: "2026-12-01" };

describe("a new job from another", () => {
  it("can be read, and differs in its identity alone", () => {
    for (const { text, file, job } of DEMO_JOBS) {
      const made = readJob(newJobText(text, fresh) ?? "");
      if (!made.ok) return expect.unreachable();
      expect(made.job.job).toEqual({ ...job.job, id: "pump-house-north-shore", title: fresh.title, revision: "A", date: fresh.date, drawnBy: fresh.drawnBy });
      expect({ ...made.file, job: 0 }).toEqual({ ...file, job: 0 });
    }
  });

  it("is none where the text is no job file", () => {
    expect(newJobText("not JSON", fresh)).toBeUndefined();
    expect(newJobText("[1]", fresh)).toBeUndefined();
  });

  it.each([
    ["Pump house", "pump-house"],
    ["Čerpací stanice №2", "cerpaci-stanice-no2"],
    ["2 rooms", "rooms"],
    ["日本", "job"],
    ["<script>alert(1)</script>", "script-alert-1-script"],
    ["x".repeat(60), "x".repeat(40)],
  ])("makes an id that the reader takes of %s", (title, id) => {
    expect(idFrom(title)).toBe(id);
  });

  it("tells days and moments on this device's clock", () => {
    expect(dayOf(new Date(2027, 0, 5, 23, 59))).toBe("2027-01-05");
    expect(whenText(new Date(2027, 0, 5, 7, 4).toISOString())).toBe("2027-01-05 07:04");
    expect(whenText("once")).toBe("once");
  });
});
