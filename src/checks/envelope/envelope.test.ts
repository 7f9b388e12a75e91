// Verdicts: derived, from solutions of which every surface has the temperature factor that the test asks for.
import { describe, expect, test } from "vitest";
import { checkWorking } from "../../../test/checkWorking.ts";
import type { JobFile } from "../../../test/handBuilt.ts";
import { jobOf, sampleJobFile } from "../../../test/sampleJob.ts";
import { assemble } from "../../build/assemble.ts";
import { airsAt, leastSurfaceFactor } from "../../physics/moisture.ts";
import type { Section, SectionSolution } from "../../physics/conduction.ts";
import { given } from "../../working/quantity.ts";
import { source } from "../../working/source.ts";
import type { Finding } from "../check.ts";
import { makeContext } from "../context.ts";
import { envelope } from "./envelope.ts";

/** A context in which every surface of every room has one factor. */
function allAt(factor: number) {
  return makeContext(400, ({ airs, window }: Section): SectionSolution => {
    const environments = [...new Set(airs.map(({ environment }) => environment))];
    const inside = airs.find(({ environment }) => environment !== "outside");
    return {
      ok: true,
      environments,
      coupling: () => window.u1 * window.v1,
      surface: () => [{ at: { x: 0.1, y: 0.1 }, air: inside?.id ?? "outside", shares: environments.map((one) => (one === "outside" ? 1 - factor : factor)) }],
      field: { xs: new Float64Array(), ys: new Float64Array(), active: new Uint8Array(), shares: [], conductivity: new Float64Array(), slope: new Int8Array(), halves: new Uint8Array() },
      quality: { unknowns: 1, refinements: 1, couplingChange: 0, shareChange: 0, imbalance: 0 },
    };
  });
}

const YEAR = Array.from({ length: 12 }, (_, month) => ({ temperature: `${[-5, -3, 2, 8, 12, 16, 18, 18, 13, 8, 2, -4][month]} °C`, humidity: "80 %" }));
const room = (more: JobFile = {}) => (file: JobFile): void => {
  file["rooms"] = [{ id: "R1", what: "Room", heatTo: "20 °C", humidity: "50 %", people: 2, ...more }];
  file["site"] = { ...(file["site"] as object), winterDesign: "-8 °C", monthly: YEAR };
};
const run = (factor: number, change: (file: JobFile) => void = room()): readonly Finding[] => {
  const file = sampleJobFile();
  change(file);
  const findings = envelope.run(assemble(jobOf(file)), allAt(factor));
  for (const { working, comparison } of findings) checkWorking([...working, ...(comparison === undefined ? [] : [comparison.left, comparison.right])]);
  return findings;
};
const surfaces = (findings: readonly Finding[]): readonly Finding[] => findings.filter(({ code }) => code.startsWith("surface"));

/** What the coldest month and the design hour ask of the room above. */
function needs(criterion: "mould" | "condensation", T: number, humidity: number): number {
  const test = { kind: "constant", source: source("this test", "derived") } as const;
  const airs = airsAt(
    { temperature: given(T, "degC", "T_e", "outside", test), humidity: given(humidity, "1", "phi", "outside", test) },
    { heatTo: given(20, "degC", "T_heat", "room", test), humidity: { kind: "held", humidity: given(0.5, "1", "phi", "room", test) } },
  );
  return leastSurfaceFactor(airs, criterion)!.value;
}

describe("surfaces", () => {
  const dew = needs("condensation", -5, 0.8);
  const mould = needs("mould", -5, 0.8);
  const design = needs("condensation", -8, 0.9);

  test("pass exactly at the greatest need, once for the room", () => {
    expect(surfaces(run(mould))).toMatchObject([{ verdict: "pass", code: "surfaces clear", facts: { when: "January" }, comparison: { holds: true, margin: 0 } }]);
  });

  test("a hair below the mould limit stop where people stay, and are watched where nobody does", () => {
    const below = mould - 1e-9;
    const stayed = surfaces(run(below));
    expect(stayed.length).toBeGreaterThan(10);
    expect(stayed.every(({ verdict, code }) => verdict === "stop" && code === "surface may grow mould")).toBe(true);
    expect(surfaces(run(below, room({ people: 0 }))).every(({ verdict }) => verdict === "watch")).toBe(true);
  });

  test("stop below the dew point of a month whoever is there", () => {
    const cold = surfaces(run(dew - 1e-9, room({ people: 0 })));
    expect(cold.every(({ verdict, code }) => verdict === "stop" && code === "surface condenses")).toBe(true);
  });

  test("are watched where they condense at the design hour only", () => {
    expect(design).toBeGreaterThan(needs("condensation", 18, 0.8));
    const dry = (file: JobFile): void => {
      room()(file);
      file["site"] = { ...(file["site"] as object), monthly: Array.from({ length: 12 }, () => ({ temperature: "18 °C", humidity: "30 %" })) };
    };
    const findings = surfaces(run(design - 1e-9, dry));
    expect(findings.length).toBeGreaterThan(10);
    expect(findings.every(({ verdict, code }) => verdict === "watch" && code === "surface condenses at the design hour")).toBe(true);
  });

  test("no stop without its section, its point and its margin", () => {
    const stops = run(0.1).filter(({ verdict }) => verdict === "stop");
    expect(stops.length).toBeGreaterThan(10);
    for (const { facts, comparison, says } of stops) {
      expect(comparison!.margin).toBeLessThan(0);
      if (facts["section"] === undefined) continue;
      expect(says).toContain(facts["section"]);
      for (const place of ["along", "across", "up"]) expect(Number.isFinite(facts[place])).toBe(true);
    }
  });
});

describe("what is missing is named", () => {
  test("humidity", () => {
    const [note] = run(0.5, (file) => void (file["rooms"] = [{ id: "R1", what: "Room", heatTo: "20 °C" }])).filter(({ code }) => code === "humidity not stated");
    expect(note).toMatchObject({ verdict: "note", facts: { field: "rooms[0].humidity" } });
  });

  test("monthly means", () => {
    const findings = run(0.5, (file) => void (file["rooms"] = [{ id: "R1", what: "Room", heatTo: "20 °C", humidityClass: 2 }]));
    expect(findings.find(({ code }) => code === "months not stated")!.says).toContain("site.monthly");
  });

  test("a heated room", () => {
    const findings = run(0.5, () => undefined);
    expect(findings.find(({ code }) => code === "no heated room")!.says).toContain("heatTo");
    expect(findings.filter(({ verdict }) => verdict === "stop" || verdict === "watch")).toEqual([]);
  });
});

describe("vapour", () => {
  const wall = (layers: object) => (file: JobFile): void => {
    room()(file);
    const buildUps = file["buildUps"] as Record<string, JobFile>;
    buildUps["wall"] = { what: "changed", studs: buildUps["wall"]!["studs"], boards: [{ row: "gypsum-1-2" }], ...layers };
  };
  const left = (findings: readonly Finding[]): Finding => findings.find(({ id }) => id === "envelope/R1/vapour/left")!;

  test("batts against the steel gather water, and the plane is named", () => {
    const finding = left(run(0.99, wall({ batts: { row: "batt-rock-1-1-2-16" } })));
    expect(finding.code).toBe("batts against steel");
    expect(["watch", "stop"]).toContain(finding.verdict);
    expect(finding.says).toContain("left wall sheet");
    expect(Number(finding.facts["amount"])).toBeGreaterThan(0.1);
  });

  test("foam of its barrier's thickness is never worse than a watch", () => {
    const finding = left(run(0.99, wall({ foam: { row: "foam-closed-cell-2lb", thickness: "2 in" } })));
    expect(["pass", "watch"]).toContain(finding.verdict);
  });

  test("foam is held to the product's own thickness, exactly at the limit", () => {
    const foam = (thickness: string) => run(0.99, wall({ foam: { row: "foam-closed-cell-2lb", thickness } })).find(({ id }) => id === "envelope/foam/left")!;
    expect(foam("2 in")).toMatchObject({ verdict: "pass", code: "foam is a barrier" });
    expect(foam("50 mm")).toMatchObject({ verdict: "watch", code: "foam too thin for a barrier" });
    expect(run(0.99, wall({ foam: { row: "foam-open-cell-half-lb", thickness: "2 in" } })).find(({ id }) => id === "envelope/foam/left")).toMatchObject({ verdict: "watch", code: "foam is open" });
  });
});
