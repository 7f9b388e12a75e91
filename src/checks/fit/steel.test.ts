import { describe, expect, test } from "vitest";
import { checkWorking } from "../../../test/checkWorking.ts";
import { board, type HandPart, handBuild, type JobFile } from "../../../test/handBuilt.ts";
import { cutRects } from "../../geometry/polygon.ts";
import { rectArea } from "../../geometry/rect.ts";
import type { Finding } from "../check.ts";
import { fit } from "./fit.ts";

const all = (parts: readonly HandPart[], change: (file: JobFile) => void = () => undefined): readonly Finding[] => {
  const findings = fit.run(handBuild(change, parts)).filter(({ id }) => id.startsWith("fit/steel-in-the-way"));
  for (const { working, comparison } of findings)
    checkWorking([...working, ...(comparison === undefined ? [] : [comparison.left, comparison.right])]);
  return findings;
};
const found = (...of: Parameters<typeof all>): readonly Finding[] => all(...of).filter(({ verdict }) => verdict !== "pass");

// A fitting that stands from the wall's corner 30 mm past its inside plane; its sizes are the test's own.
const fitting: HandPart = {
  id: "fitting",
  surface: "left",
  role: "corner fitting",
  rect: { u0: -0.15, u1: 0.03, v0: 2.2, v1: 2.4 },
  depth: { from: -0.04, to: 0.03 },
};
const bar = (u0: number, more: Partial<HandPart> = {}): HandPart => ({
  id: "bar",
  surface: "left",
  role: "stud",
  rect: { u0, u1: u0 + 0.04, v0: 0, v1: 2.3 },
  depth: { from: 0, to: 0.06 },
  runs: "v",
  ...more,
});

describe("parts in the box's steel", () => {
  test("a millimetre passes, a tenth more stops, and both are named", () => {
    expect(found([fitting, bar(0.029)])).toEqual([]);
    const [stop, ...others] = found([fitting, bar(0.0289)]);
    expect(others).toEqual([]);
    expect(stop).toMatchObject({ verdict: "stop", code: "part in steel", about: ["bar", "fitting"] });
    expect(stop?.facts["by"]).toBeCloseTo(0.0011, 12);
  });

  test("a build clear of steel passes once, one without steel says nothing", () => {
    expect(all([fitting, bar(1), bar(2)])).toMatchObject([{ verdict: "pass", facts: { count: 2 } }]);
    expect(all([bar(0)])).toEqual([]);
  });

  test("the reach is the least way out: along, up or inward", () => {
    const by = (part: HandPart) => found([fitting, part])[0]?.facts["by"];
    expect(by(bar(0.01))).toBeCloseTo(0.02, 12);
    expect(by(bar(0, { depth: { from: 0.022, to: 0.06 } }))).toBeCloseTo(0.008, 12);
    expect(by(bar(0, { rect: { u0: 0, u1: 0.04, v0: 0, v1: 2.205 } }))).toBeCloseTo(0.005, 12);
    expect(found([fitting, bar(0, { depth: { from: 0.029, to: 0.06 } })])).toEqual([]);
    expect(found([fitting, bar(0, { rect: { u0: 0, u1: 0.04, v0: 0, v1: 2.201 } })])).toEqual([]);
  });

  test.each(["post", "rail", "corner fitting", "cross-member"] as const)("a %s counts", (role) => {
    expect(found([{ ...fitting, role }, bar(0)])).toHaveLength(1);
  });

  test.each(["stud", "track", "opening frame", "trim", "furring", "article", "board"] as const)("so does what is added as a %s", (role) => {
    expect(found([fitting, bar(0, { role, ...(role === "board" ? { layer: 1 } : {}) })])).toHaveLength(1);
  });

  test("foam, coats and the box's own parts lie around it", () => {
    for (const role of ["foam", "coating", "skin", "cargo door", "rail"] as const) expect(found([fitting, bar(0, { role })])).toEqual([]);
  });

  test("steel of another face counts in the world", () => {
    // Along the blind end u runs from the right; the left wall's plane is its far end.
    const crossing: HandPart = {
      id: "end stud",
      surface: "blindEnd",
      role: "stud",
      rect: { u0: 0.2, u1: 0.24, v0: 0, v1: 2.3 },
      depth: { from: 0, to: 0.05 },
      runs: "v",
    };
    expect(found([fitting, crossing])).toEqual([]);
    const { inside } = handBuild().surfaces.find(({ id }) => id === "blindEnd")!;
    const near = { ...crossing, rect: { ...crossing.rect, u0: inside.u1 - 0.05, u1: inside.u1 } };
    const blindToPost = 0.15 - 0.06;
    expect(found([{ ...fitting, rect: { ...fitting.rect, u1: -blindToPost + 0.02 } }, near])[0]).toMatchObject({ verdict: "stop" });
    expect(found([{ ...fitting, rect: { ...fitting.rect, u1: -blindToPost - 0.001 } }, near])).toEqual([]);
  });

  test("an item goes by its own id", () => {
    const item = {
      id: "A",
      what: "cabinet",
      size: { length: "400 mm", width: "400 mm", height: "2350 mm" },
      mass: "10 kg",
      at: { along: "0 mm", across: "0 mm" },
      front: "right",
    };
    const corner = { ...fitting, rect: { u0: -0.15, u1: 0.03, v0: 2.2, v1: 2.3 } };
    expect(found([corner], (file) => void (file["items"] = [item]))[0]).toMatchObject({ verdict: "stop", facts: { part: "A" } });
  });

  test("a hole past the sheet is told by its own rule only; a trim in steel beside a good hole is told here", () => {
    const door =
      (along: string) =>
      (file: JobFile): void => {
        file["openings"] = [
          { id: "D1", kind: "personnel door", face: "left", at: { along, up: "0 mm" }, size: { width: "900 mm", height: "2000 mm" } },
        ];
      };
    const trim = bar(0, { role: "trim", of: "D1" });
    expect(all([fitting, trim], door("-50 mm"))).toEqual([]);
    expect(found([fitting, trim], door("40 mm"))).toHaveLength(1);
  });
});

test("a floor opening over a cross-member is told by its own rule", () => {
  const member: HandPart = {
    surface: "floor",
    role: "cross-member",
    rect: { u0: 2, u1: 2.045, v0: 0, v1: 2.3 },
    depth: { from: -0.15, to: -0.028 },
  };
  const sleeve: HandPart = {
    surface: "floor",
    role: "article",
    of: "PS1",
    rect: { u0: 2.02, u1: 2.1, v0: 1, v1: 1.08 },
    depth: { from: -0.2, to: 0 },
  };
  expect(all([member, sleeve])).toEqual([]);
  expect(all([{ ...member, role: "rail" }, sleeve])).toMatchObject([{ verdict: "stop" }]);
});

describe("boards around the box's steel", () => {
  const rect = { u0: -0.05, u1: 1.2, v0: 0, v1: 2.35 };
  const notched = (cut: typeof rect): HandPart => {
    const outline = cutRects(rect, [cut]);
    return { ...board("left", rect, 1, { from: 0.01, to: 0.0227 }), shape: { kind: "panel", outline, area: rectArea(rect), blank: rect } };
  };

  test("notched clear of it are counted in one note", () => {
    const [note, ...others] = found([
      fitting,
      notched(fitting.rect),
      { ...notched(fitting.rect), id: "second", depth: { from: 0.0227, to: 0.0289 } },
    ]);
    expect(others).toEqual([]);
    expect(note).toMatchObject({ verdict: "note", code: "boards notched", facts: { count: 2, around: "corner fittings" } });
  });

  test("notched short by more than a millimetre stop", () => {
    const short = (by: number) => found([fitting, notched({ ...fitting.rect, u1: fitting.rect.u1 - by })])[0];
    expect(short(0.0009)?.code).toBe("boards notched");
    expect(short(0.0015)?.code).toBe("part in steel");
  });

  test("boards of the floor are cut around posts without a word", () => {
    expect(found([fitting, { ...notched(fitting.rect), role: "floor board" }])).toEqual([]);
  });

  test("clear of steel say nothing", () => {
    expect(found([fitting, { ...board("left", rect, 1, { from: 0.03, to: 0.0427 }) }])).toEqual([]);
  });
});
