import { describe, expect, it } from "vitest";
import { defaultWords, issuesBelow, issueWords, problemOfQuantity, readBack, takes, textAt, valueOfText } from "./fieldText.ts";

const issue = { code: "unit", path: "openings[0].at.up", found: '"900"', wants: "length as text with its unit", example: '"900 mm"' } as const;

describe("the text of a field", () => {
  it("is what the file holds, and nothing where it holds nothing", () => {
    const file = { rooms: [{ people: 4, heatTo: "20 °C" }], fire: null };
    expect(textAt(file, ["rooms", 0, "people"])).toBe("4");
    expect(textAt(file, ["rooms", 0, "heatTo"])).toBe("20 °C");
    expect([textAt(file, ["rooms", 3]), textAt(file, ["fire"])]).toEqual(["", ""]);
  });

  it("goes back as typed, whole numbers as numbers, and away where it may", () => {
    const whole = { kind: "whole", least: 0, greatest: 60 } as const;
    const length = { kind: "quantity", of: "length" } as const;
    expect(valueOfText(whole, false, " 4 ")).toBe(4);
    expect(valueOfText(whole, false, "four")).toBe("four");
    expect(valueOfText(length, true, "4 ft")).toBe("4 ft");
    expect(valueOfText(length, true, "")).toBe("");
    expect(valueOfText(length, false, " ")).toBeUndefined();
  });

  it("says where an issue is, what is wanted and what would do, at its own field alone", () => {
    expect(issueWords([issue], ["openings", 0, "at", "up"])).toBe('openings[0].at.up wants length as text with its unit, for example "900 mm".');
    expect(issueWords([issue], ["openings", 0, "at", "along"])).toBe("");
    expect([issuesBelow([issue], ["openings", 0]), issuesBelow([issue], ["openings"]), issuesBelow([issue], ["open"])]).toEqual([1, 1, 0]);
  });

  it("reads a quantity back in the units of the screen, once it says more", () => {
    expect(readBack("length", "4 ft", "metric")).toBe("= 1219 mm");
    expect(readBack("length", "1219 mm", "metric")).toBe("");
    expect(readBack("length", "1219", "metric")).toBe("");
    expect(readBack("temperature", "68 °F", "metric")).toBe("= 20 °C");
  });

  it("says why a text is no quantity while it is typed", () => {
    expect(problemOfQuantity("length", "12")).toContain("a unit of length is needed");
    expect(problemOfQuantity("length", "12 kg")).toContain("unit of mass");
    expect([problemOfQuantity("length", "12 mm"), problemOfQuantity("length", "")]).toEqual(["", ""]);
  });

  it("says the kind and the unit of what it takes", () => {
    const node = { kind: "quantity", of: "length" } as const;
    expect([takes(node, "metric"), takes(node, "imperial"), takes({ kind: "day" }, "metric")]).toEqual(["length: mm", "length: ft, in", ""]);
    expect(takes({ kind: "quantity", of: "airFlow" }, "imperial")).toBe("air flow: cfm");
  });

  it("says a default with its reason", () => {
    const node = { kind: "yes or no" } as const;
    expect(defaultWords({ required: false, preset: true, node }, "most codes ask")).toBe("yes: most codes ask");
    expect(defaultWords({ required: false, preset: undefined, node }, "nothing swings")).toBe("nothing swings");
    expect(defaultWords({ required: true, preset: undefined, node }, undefined)).toBe("");
  });
});
