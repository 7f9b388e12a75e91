// Derived: what is remembered is asked for once, by content and not by name.
import { expect, test } from "vitest";
import type { Accuracy, NotSolved, Section } from "../physics/conduction.ts";
import { makeContext } from "./context.ts";

const accuracy: Accuracy = { coupling: 0.02, share: 0.02, mostUnknowns: 1000 };
const section = (width: number, what: string): Section => ({
  window: { u0: 0, u1: width, v0: 0, v1: 1 },
  regions: [{ what, outline: { outer: [{ x: 0, y: 0 }, { x: width, y: 0 }, { x: width, y: 1 }], holes: [] }, fill: { kind: "solid", conductivity: 1 } }],
  sheets: [],
  airs: [],
});

test("a section is solved once for its content, whatever its parts are called, and forgotten when it is the longest unused", () => {
  const solved: number[] = [];
  const answer: NotSolved = { ok: false, reason: "asked for" };
  const { solve } = makeContext(2, ({ window }) => {
    solved.push(window.u1);
    return answer;
  });
  for (const [width, what] of [[1, "a"], [1, "b"], [2, "a"], [1, "a"], [3, "a"], [1, "a"], [2, "a"]] as const) expect(solve(section(width, what), accuracy)).toBe(answer);
  expect(solved).toEqual([1, 2, 3, 2]);
  solve(section(2, "a"), { ...accuracy, coupling: 0.01 });
  expect(solved).toHaveLength(5);
});
