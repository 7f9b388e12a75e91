import { describe, expect, it } from "vitest";
import { isUnderWay, packWords } from "./packWords.ts";

const pack = { id: "p", job: "j", number: 3, progress: 0.416, step: "setting the papers" } as const;

describe("how a pack stands", () => {
  it.each([
    ["waiting", true, "The pack of revision 3 waits for its turn."],
    ["working", true, "Making the pack of revision 3: setting the papers, 42 %."],
    ["done", false, "The pack of revision 3 is ready."],
    ["cancelled", false, "The pack of revision 3 was cancelled."],
    ["failed", false, "The pack of revision 3 could not be made: setting the papers."],
  ] as const)("%s", (state, underWay, says) => {
    expect(isUnderWay({ state })).toBe(underWay);
    expect(packWords({ ...pack, state })).toBe(says);
  });
});
