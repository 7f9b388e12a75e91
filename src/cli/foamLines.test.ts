import { expect, test } from "vitest";
import type { FoamHelp, Variant } from "../river/foamHelp.ts";
import { foamLines } from "./foamLines.ts";

// Invented numbers: only what is printed of them is held.
const variant = (name: string, foam: number, fails: boolean): Variant => ({
  name,
  foam,
  standOff: 0,
  pitch: 0.4064,
  objections: fails ? ["a", "b", "c"].map((says) => ({ verdict: "stop", says })) : [],
  numbers: {
    coldest: { factor: 0.7126, room: "hut", section: "left wall at a stud" },
    criteria: [{ criterion: "mould in a month", room: "hut", when: "January", holds: !fails, need: 0.7 }],
    faces: [{ surface: "left", name: "left wall", transmittance: 0.4 }, { surface: "right", name: "right wall", transmittance: 0.5 }],
    loss: 81.26,
    yearlyHeat: 3.6e9,
    priceCents: 1234500,
    leftOut: [],
  },
});

const help: FoamHelp = {
  buildUp: "wall",
  faces: ["left wall", "right wall"],
  foam: "foam",
  present: 0.05,
  least: 0.02,
  greatest: 0.08,
  needs: [
    { criterion: "dew point in a month", least: { kind: "any", failsAgain: undefined } },
    { criterion: "mould in a month", least: { kind: "found", thickness: 0.0311, failsAgain: 0.076 } },
    { criterion: "dew point at the design hour", least: { kind: "not asked" } },
    { criterion: "own vapour barrier", least: { kind: "none" } },
  ],
  curve: [variant("", 0.03, true), variant("", 0.05, false)],
  variants: [{ ...variant("studs far apart", 0.05, true), numbers: undefined }],
  currency: "USD",
  leavesOut: "this and that",
};

test("prints needs, curve and other framing, with what speaks against them", () => {
  expect(foamLines(help, "metric")).toMatchInlineSnapshot(`
    [
      "wall: foam, 50 mm on left wall, right wall; from 20 mm to 80 mm fits",
      "",
      "least foam that keeps the faces' own sections",
      "  above the dew point in every month                        any",
      "  below 80 % humidity at the surface in every month         from 32 mm; fails again at 76 mm",
      "  above the dew point at the winter design hour             not asked: no heated room states its humidity, or the site no months",
      "  its own vapour barrier                                    no thickness up to 80 mm",
      "",
      "  foam            factor  U, W/(m²·K)               loss       heat a year   price with tax    fails",
      "  30 mm           0.713   0.4 to 0.5                81.3 W/K   1,000 kWh     12,345.00 USD     mould in a month",
      "    stop: a",
      "    stop: b",
      "    and 1 more",
      "  50 mm (now)     0.713   0.4 to 0.5                81.3 W/K   1,000 kWh     12,345.00 USD",
      "  coldest with 50 mm: left wall at a stud, hut",
      "",
      "with 50 mm of foam",
      "  studs far apart",
      "                  cannot be built",
      "    stop: a",
      "    stop: b",
      "    and 1 more",
      "",
      "Not looked at: this and that.",
      "Licensed people and local authorities decide.",
      "",
    ]
  `);
});

test("rounds the least foam up, so that what is printed passes", () => {
  const mould = (system: "metric" | "imperial") => foamLines(help, system).find((line) => line.includes("80 %"))!;
  expect(mould("metric")).toMatch(/from 32 mm; fails again at 76 mm$/);
  // 31.1 mm is 1.224 in, and the next sixteenth above is 1-1/4 in.
  expect(mould("imperial")).toMatch(/from 1-1\/4"; fails again at 3"$/);
});
