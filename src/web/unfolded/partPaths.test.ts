import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { makeScreenRiver } from "../../river/screen.ts";
import { LAYERS } from "../state/settings.ts";
import { marksOf } from "./marks.ts";
import { layerOfPart, layerPaths, partAt, profilePath, rectPath } from "./partPaths.ts";
import { thingsOf } from "./things.ts";
import { partitionPlacements, unfold } from "./unfold.ts";

const CASES = DEMO_JOBS.map(({ name, file, job, book }) => ({ name, file, screen: makeScreenRiver().run(job, book) }));

describe.each(CASES)("the drawing of $name", ({ file, screen }) => {
  const { build } = screen;
  const faces = unfold(build.surfaces);
  const beside = build.surfaces.filter(({ kind }) => kind === "partition").flatMap((one) => partitionPlacements(faces, one));

  // What is drawn otherwise: articles, items, coats, and what the box has besides its frame.
  it("draws every part on a layer, but for those that things stand for", () => {
    const undrawn = build.parts.filter((part) => [...faces, ...beside].every((one) => one.surface.id !== part.surface || layerOfPart(part, one) === undefined));
    expect([...new Set(undrawn.map(({ role }) => role))].filter((role) => !["article", "item", "coating", "rest of the box"].includes(role))).toEqual([]);
  });

  it("draws the layers of each face once, from the skin inward", () => {
    for (const placement of [...faces, ...beside]) {
      const layers = layerPaths(build.parts, placement).map(({ layer }) => layer);
      expect(layers).toEqual(LAYERS.filter((layer) => layers.includes(layer)));
    }
  });

  it("shows each board of a partition from its own side only", () => {
    for (const part of build.parts.filter(({ role, surface }) => role === "board" && beside.some((one) => one.surface.id === surface))) {
      const sides = beside.filter((one) => one.surface.id === part.surface && layerOfPart(part, one) !== undefined);
      expect(sides.map(({ side }) => side)).toEqual([part.depth.to <= 0 ? "door side" : "blind side"]);
    }
  });

  // Boards close most of a lined face; openings and notches around corner fittings take the rest.
  it("finds the part nearest to the room at most points of a lined face in its boards", () => {
    const shares = Array.from({ length: 15 }, (_, index) => (index + 0.5) / 15);
    for (const placement of faces.filter(({ surface }) => surface.stack.boards.length > 0)) {
      const { lined } = placement.surface;
      const points = shares.flatMap((a) => shares.map((b) => ({ u: lined.u0 + a * (lined.u1 - lined.u0), v: lined.v0 + b * (lined.v1 - lined.v0) })));
      const roles = points.map((at) => partAt(build.parts, placement, at, new Set(LAYERS))?.role);
      expect(roles.filter((role) => role === "board" || role === "floor board" || role === "trim").length).toBeGreaterThan(0.5 * points.length);
      expect(points.every((at) => ["skin", "cargo door", "bare floor", undefined].includes(partAt(build.parts, placement, at, new Set(["skin"]))?.role))).toBe(true);
    }
  });

  it("draws four lines for each pitch of a profile, less at its ends", () => {
    for (const { surface } of faces) {
      const lines = profilePath(surface).split("M").length - 1;
      const pitches = surface.profile === undefined ? 0 : (surface.panel.u1 - surface.panel.u0) / surface.profile.pitch;
      expect(Math.abs(lines - 4 * pitches)).toBeLessThan(4);
    }
  });

  it("marks each stop and watch about a place once, at the worst of its place", () => {
    const marks = marksOf(screen, thingsOf(file, screen));
    const problems = screen.findings.filter(({ verdict, about }) => (verdict === "stop" || verdict === "watch") && about.length > 0);
    const marked = marks.flatMap(({ findings }) => findings.map(({ id }) => id));
    expect(new Set(marked).size).toBe(marked.length);
    expect(new Set(marked)).toEqual(new Set(problems.map(({ id }) => id)));
    for (const { verdict, findings } of marks) expect(verdict).toBe(findings.some((one) => one.verdict === "stop") ? "stop" : "watch");
  });
});

it("writes a rectangle to a tenth of a millimetre", () => {
  expect(rectPath({ u0: 0.123456, u1: 1, v0: -2, v1: 3 })).toBe("M0.1235 -2H1V3H0.1235Z");
});
