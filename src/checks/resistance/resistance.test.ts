import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkWorking } from "../../../test/checkWorking.ts";
import { handBuild, type HandPart, type JobFile, partitionAt } from "../../../test/handBuilt.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import { rectPolygon } from "../../geometry/polygon.ts";
import type { Finding } from "../check.ts";
import { resistance } from "./resistance.ts";

const area = { u0: 0, u1: 2, v0: 0, v1: 2 };
const foamPart = (volume: number): HandPart => ({
  surface: "left",
  role: "foam",
  rect: area,
  depth: { from: 0, to: 0.05 },
  shape: { kind: "fill", outline: [rectPolygon(area)], area: 4, troughs: volume - 0.2, volume },
});
const faces = (change: (file: JobFile) => void = () => undefined, parts: readonly HandPart[] = [foamPart(0.272)]): readonly Finding[] => {
  const findings = resistance.run(handBuild(change, parts));
  for (const { working } of findings) checkWorking(working);
  return findings;
};
const face = (findings: readonly Finding[], id: string): Finding => findings.find((one) => one.id === `resistance/${id}`)!;
const heat = (file: JobFile): void => void (file["rooms"] = [{ id: "R1", what: "Room", heatTo: "20 °C" }]);
const lambda = (material: string): number => catalogue.materials.get(material).conductivity;

// Closed form of plain layers in series (ISO 6946): worked by hand from the catalogue's thicknesses and conductivities.
test("a wall is its surfaces, sheet, least foam and boards in series", () => {
  const sheet = catalogue.profiles.get("side-36");
  const gypsum = catalogue.boards.get("gypsum-1-2");
  const wanted = 0.13 + sheet.thickness / lambda(sheet.material) + 0.0508 / lambda("foam-closed-cell") + gypsum.thickness / lambda(gypsum.material) + 0.04;
  const left = face(faces(), "left");
  expect(left).toMatchObject({ verdict: "note", code: "clear field" });
  expect(left.facts["resistance"]).toBeCloseTo(wanted, 12);
  expect(left.facts["transmittance"]).toBeCloseTo(1 / wanted, 12);
});

test("batts add their thickness to foam, and are no bare face without it", () => {
  const batts = (foamed: boolean) => (file: JobFile): void => {
    const buildUps = file["buildUps"] as Record<string, JobFile>;
    const { foam, studs, boards } = buildUps["wall"]!;
    buildUps["wall"] = { what: "wall with wool", studs, boards, batts: { row: "batt-rock-1-1-2-16" }, ...(foamed ? { foam } : {}) };
    heat(file);
  };
  const wool = 0.0381 / lambda("mineral-wool");
  const plain = face(faces(), "left").facts["resistance"] as number;
  const both = face(faces(batts(true)), "left");
  expect(both).toMatchObject({ verdict: "note", code: "clear field of foam and batts" });
  expect(both.facts["resistance"]).toBeCloseTo(plain + wool, 12);
  const alone = face(faces(batts(false), []), "left");
  expect(alone).toMatchObject({ verdict: "note", code: "clear field of batts" });
  expect(alone.facts["resistance"]).toBeCloseTo(plain + wool - 0.0508 / lambda("foam-closed-cell"), 12);
});

test("heat goes up through the roof and down through the floor", () => {
  const roof = face(faces(), "roof");
  const floor = face(faces(), "floor");
  const { thickness, material } = handBuild().box.floor;
  const vinyl = catalogue.boards.get("vinyl-sheet-2");
  expect(floor.facts["resistance"]).toBeCloseTo(0.17 + thickness / lambda(material) + vinyl.thickness / lambda(vinyl.material) + 0.04, 12);
  expect(roof.sources.some(({ work }) => work.includes("ISO 6946"))).toBe(true);
});

test("foam under the floor counts, between cross-members", () => {
  const under: HandPart = { ...foamPart(0.2), surface: "floor" };
  const floor = (file: JobFile): void => void (file["floor"] = { layers: [], foam: { row: "foam-closed-cell-2lb", thickness: "50 mm" } });
  const { facts, says } = face(faces(floor, [under]), "floor");
  const { thickness, material } = handBuild().box.floor;
  expect(facts["resistance"]).toBeCloseTo(0.17 + thickness / lambda(material) + 0.05 / lambda("foam-closed-cell") + 0.04, 12);
  expect(says).toContain("between cross-members");
});

test("lining and foam of the cargo door leaves count", () => {
  const leaves = (file: JobFile): void => {
    const buildUps = file["buildUps"] as JobFile;
    const faces = file["faces"] as JobFile;
    file["buildUps"] = { ...buildUps, leaf: { what: "leaf", foam: { row: "foam-closed-cell-2lb", thickness: "25 mm" }, boards: [{ row: "plywood-1-4" }] } };
    file["faces"] = { ...faces, doorEnd: { cargoDoors: "working", leafLining: "leaf" } };
  };
  const plywood = catalogue.boards.get("plywood-1-4");
  const wanted = 0.13 + 0.025 / lambda("foam-closed-cell") + plywood.thickness / lambda(plywood.material) + 0.04;
  expect(face(faces(leaves), "doorEnd").facts["resistance"]).toBeCloseTo(wanted, 12);
});

describe("foam thickness", () => {
  test("least is the stated one, mean is volume over area", () => {
    const { facts } = face(faces(), "left");
    expect(facts["foam"]).toBeCloseTo(0.0508, 12);
    expect(facts["mean"]).toBeCloseTo(0.068, 12);
  });

  test("said once where mean and least are the same, and between studs only where there are some", () => {
    const bare = (file: JobFile): void => {
      const buildUps = file["buildUps"] as Record<string, JobFile>;
      buildUps["wall"] = { what: "foam alone", foam: { row: "foam-closed-cell-2lb", thickness: "50 mm" } };
    };
    const { says } = face(faces(bare, [foamPart(0.2)]), "left");
    expect(says).toContain("from air to air in the field, ");
    expect(says).toMatch(/with foam 50 mm thick\. The box's frame lowers the true value\.$/);
    expect(face(faces(), "left").says).toMatch(/in the field between studs, .* at its least and 68 mm on average\. Studs and frame lower the true value\.$/);
  });

  test("more foam never lowers the resistance", () => {
    const wall = (millimetres: number) => (file: JobFile) => {
      const buildUps = file["buildUps"] as Record<string, JobFile>;
      buildUps["wall"] = { ...buildUps["wall"], foam: { row: "foam-closed-cell-2lb", thickness: `${millimetres} mm` } };
    };
    const at = (millimetres: number): number => Number(face(faces(wall(millimetres)), "left").facts["resistance"]);
    fc.assert(
      fc.property(fc.integer({ min: 15, max: 300 }), fc.integer({ min: 1, max: 100 }), (thin, more) => {
        expect(at(thin + more)).toBeGreaterThan(at(thin));
      }),
      { seed: 20268, numRuns: 40 },
    );
  });
});

describe("verdicts", () => {
  test("a face without foam is watched where its room is heated, and only told where it is not", () => {
    expect(face(faces(heat), "floor")).toMatchObject({ verdict: "watch", code: "bare face", facts: { rooms: "Room", count: 1 } });
    expect(face(faces(), "floor")).toMatchObject({ verdict: "note", code: "clear field without foam" });
  });

  test("an end face bounds only the room beside it", () => {
    const blindRoom = (file: JobFile): void =>
      void Object.assign(file, partitionAt("2 m"), { rooms: [{ id: "R1", what: "Blind room", heatTo: "20 °C" }, { id: "R2", what: "Door room" }] });
    const bare = (file: JobFile): void => {
      blindRoom(file);
      file["faces"] = { left: {}, right: {}, blindEnd: {}, doorEnd: { cargoDoors: "working" }, roof: {} };
    };
    expect(face(faces(bare), "blindEnd")).toMatchObject({ verdict: "watch", facts: { rooms: "Blind room" } });
    expect(face(faces(bare), "doorEnd").verdict).toBe("note");
    expect(face(faces(bare), "roof").verdict).toBe("watch");
  });

  test("rooms that state no temperature are a note that says what is missing", () => {
    expect(face(faces(), "rooms").says).toContain("heatTo");
    expect(face(faces(heat), "rooms")).toBeUndefined();
  });

  test("nothing passes or stops: no need is stated that could be met", () => {
    expect(faces(heat).filter(({ verdict }) => verdict === "pass" || verdict === "stop")).toEqual([]);
  });

  test("every face of the box has one finding", () => {
    expect(faces(heat).map(({ id }) => id)).toEqual(["left", "right", "blindEnd", "doorEnd", "roof", "floor"].map((id) => `resistance/${id}`));
  });
});
