import { describe, expect, it } from "vitest";
import { FIELD_WORDS, wordsFor } from "./fieldWords.ts";
import { jobFields, nodeAt, patternOf, patternsOf } from "./jobFields.ts";

const root = jobFields();
/** Written by the app, not by people. */
const NOT_SHOWN = ["$schema", "format", "version"];


describe("the words of the fields", () => {
  it("name every field of the schema that a person edits", () => {
    const wanted = patternsOf(root).filter((pattern) => !NOT_SHOWN.includes(pattern));
    expect(wanted.filter((pattern) => FIELD_WORDS[pattern] === undefined)).toEqual([]);
    expect(wanted.length).toBeGreaterThan(150);
  });

  it("name nothing that the schema does not hold", () => {
    const known = new Set(patternsOf(root));
    const stray = Object.keys(FIELD_WORDS).filter((pattern) => !known.has(pattern) && !known.has(pattern.replace(/\[\]$/, "")));
    expect(stray).toEqual([]);
  });

  it("say why for every field that may be left out", () => {
    const silent = optional(root).filter((pattern) => !NOT_SHOWN.includes(pattern) && !OF_THEIR_OWN.includes(pattern) && wordsFor(pattern).why === undefined);
    expect(silent).toEqual([]);
  });
});

/** Groups and lists that have a section of their own in the outline. */
const OF_THEIR_OWN = ["partitions", "openings", "items", "supplied", "fire", "floor"];

function optional(node: ReturnType<typeof jobFields>, pattern = ""): readonly string[] {
  if (node.kind === "list") return optional(node.of, `${pattern}[]`);
  if (node.kind === "named") return optional(node.of, `${pattern}{}`);
  if (node.kind !== "group") return [];
  return node.fields.flatMap(({ name, node: inner, required }) => {
    const own = pattern === "" ? name : `${pattern}.${name}`;
    return [...(required ? [] : [own]), ...optional(inner, own)];
  });
}

describe("the fields of the job file", () => {
  it.each([
    { steps: ["openings", 0, "at", "along"], node: { kind: "quantity", of: "length" }, pattern: "openings[].at.along" },
    { steps: ["buildUps", "long wall", "foam", "row"], node: { kind: "row", table: "foams" }, pattern: "buildUps{}.foam.row" },
    { steps: ["faces", "left", "buildUp"], node: { kind: "build-up name" }, pattern: "faces.left.buildUp" },
    { steps: ["shop", "start"], node: { kind: "day" }, pattern: "shop.start" },
    { steps: ["rooms", 0, "people"], node: { kind: "whole", least: 0, greatest: 60 }, pattern: "rooms[].people" },
    { steps: ["ceilingFirst"], node: { kind: "yes or no" }, pattern: "ceilingFirst" },
    { steps: ["rooms", 0, "airFlow"], node: { kind: "quantity", of: "airFlow" }, pattern: "rooms[].airFlow" },
    { steps: ["fire", "rated", 2, "face"], node: { kind: "surface" }, pattern: "fire.rated[].face" },
    { steps: ["version"], node: { kind: "fixed" }, pattern: "version" },
  ])("read $pattern from the schema", ({ steps, node, pattern }) => {
    expect(nodeAt(root, steps)).toEqual(node);
    expect(patternOf(root, steps)).toBe(pattern);
  });

  it("know no field that is not there", () => {
    expect(nodeAt(root, ["openings", 0, "colour"])).toBeUndefined();
    expect(nodeAt(root, ["openings", "first"])).toBeUndefined();
  });

  it("carry the schema's own defaults", () => {
    const swing = nodeAt(root, ["openings", 0, "swing"]);
    expect(swing?.kind === "group" && swing.fields.map(({ name, required, preset }) => [name, required, preset])).toEqual([
      ["hinge", true, undefined],
      ["opens", true, undefined],
      ["angle", false, "90°"],
    ]);
  });
});
