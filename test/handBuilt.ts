import { assemble } from "../src/build/assemble.ts";
import { type Build, type Snag, surfaceOf } from "../src/build/build.ts";
import type { Part, Role } from "../src/build/part.ts";
import { type Span, toWorld } from "../src/build/surface.ts";
import { rectPolygon } from "../src/geometry/polygon.ts";
import { type Rect, rectArea } from "../src/geometry/rect.ts";
import { jobOf, sampleJobFile } from "./sampleJob.ts";

export type JobFile = ReturnType<typeof sampleJobFile>;

/**
 * A build put together by hand: the sample job with a change, its faces, openings and rooms in place, its items as
 * blocks, and only those other parts that the test names.
 */
export function handBuild(
  change: (file: JobFile) => void = () => undefined,
  parts: readonly HandPart[] = [],
  snags: readonly Snag[] = [],
): Build {
  const file = sampleJobFile();
  change(file);
  const bare: Build = { ...assemble(jobOf(file)), framings: [], parts: [], snags };
  return { ...bare, parts: [...parts, ...itemsOf(bare)].map((one, index) => placed(bare, one, index)) };
}

/** What a test has to say of a part; the rest is filled in. */
export interface HandPart {
  readonly id?: string;
  readonly surface: string;
  readonly role: Role;
  readonly rect: Rect;
  readonly depth: Span;
  readonly mass?: number;
  readonly runs?: "u" | "v";
  readonly layer?: number;
  readonly of?: string;
  readonly temporary?: boolean;
  readonly shape?: Part["shape"];
}

/** The fields of a job file that put a studded partition P1 at a place along the box, between two rooms. */
export function partitionAt(at: string): JobFile {
  const studs = { row: "stud-2-1-2-18mil", track: "track-2-1-2-18mil", pitch: "16 in" };
  const between = { what: "plain partition", studs, boards: [{ row: "gypsum-1-2" }] };
  return {
    buildUps: { ...(sampleJobFile()["buildUps"] as object), between },
    partitions: [{ id: "P1", at, buildUp: "between" }],
    rooms: [
      { id: "R1", what: "Blind room" },
      { id: "R2", what: "Door room" },
    ],
  };
}

/** A stud that runs up the surface, its flange from `u` to `u` + 32 mm. */
export function stud(surface: string, u: number, v: Span = { from: 0, to: 2.3 }, depth: Span = { from: 0.0127, to: 0.0762 }): HandPart {
  return { surface, role: "stud", rect: { u0: u, u1: u + 0.032, v0: v.from, v1: v.to }, depth, runs: "v" };
}

/** A rectangular board of a layer. */
export function board(surface: string, rect: Rect, layer: number, depth: Span): HandPart {
  return { surface, role: "board", rect, depth, layer };
}

function itemsOf(build: Build): readonly HandPart[] {
  const floor = surfaceOf(build, "floor").stack.finished;
  return build.job.items.map(({ id, at, size, mass }) => ({
    id: `floor/${id}/item/1`,
    surface: "floor",
    role: "item" as const,
    rect: { u0: at.along, u1: at.along + size.length, v0: at.across, v1: at.across + size.width },
    depth: { from: floor + at.up, to: floor + at.up + size.height },
    mass,
    of: id,
  }));
}

function placed(build: Build, hand: HandPart, index: number): Part {
  const { rect, depth } = hand;
  const surface = surfaceOf(build, hand.surface);
  return {
    id: hand.id ?? `${hand.surface}/${hand.role.replaceAll(" ", "-")}/${index + 1}`,
    role: hand.role,
    what: `${hand.role} set by hand`,
    surface: hand.surface,
    rect,
    depth,
    shape: hand.shape ?? shapeOf(hand),
    row: undefined,
    material: undefined,
    mass: hand.mass ?? 1,
    massBasis: { by: "given" },
    centre: toWorld(surface, (rect.u0 + rect.u1) / 2, (rect.v0 + rect.v1) / 2, (depth.from + depth.to) / 2),
    temporary: hand.temporary ?? false,
    of: hand.of,
    layer: hand.layer,
  };
}

function shapeOf({ role, runs, rect }: HandPart): Part["shape"] {
  if (role === "board" || role === "floor board") return { kind: "panel", outline: [rectPolygon(rect)], area: rectArea(rect), blank: rect };
  if (runs !== undefined) return { kind: "bar", runs, length: runs === "u" ? rect.u1 - rect.u0 : rect.v1 - rect.v0 };
  return { kind: "block" };
}
