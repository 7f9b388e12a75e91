import { describe, expect, it } from "vitest";
import { placeOfIssue } from "./issuePlace.ts";
import { placeOf, selectionAt, titleOf } from "./place.ts";

describe("places of the outline", () => {
  it("come back from the selection that they make", () => {
    for (const place of [
      { kind: "opening", id: "D1" },
      { kind: "face", id: "left" },
      { kind: "build-up", id: "wall" },
      { kind: "fields", field: "floor" },
    ] as const) {
      expect(placeOf(selectionAt(place))).toEqual(place);
    }
    expect(selectionAt({ kind: "fields", field: "site" })).toBeUndefined();
    expect(placeOf({ kind: "part", id: "left/stud/1" })).toBeUndefined();
  });

  it("have titles in plain words", () => {
    expect(titleOf({ kind: "face", id: "blindEnd" })).toBe("Blind end");
    expect(titleOf({ kind: "opening", id: "D1" })).toBe("Opening D1");
  });

  it.each([
    ["openings[1].at.up", { kind: "opening", id: "W1" }],
    ["openings[0]", { kind: "opening", id: "1" }],
    ['buildUps["long wall"].foam', { kind: "build-up", id: "long wall" }],
    ["faces.left.buildUp", { kind: "face", id: "left" }],
    ["site.wind", { kind: "fields", field: "site" }],
    ["ceilingFirst", { kind: "face", id: "roof" }],
    ["", undefined],
    ["colour", undefined],
    ["openings", undefined],
  ])("an issue at %s is mended in its form", (path, place) => {
    expect(placeOfIssue({ openings: [{}, { id: "W1" }] }, path)).toEqual(place);
  });
});
