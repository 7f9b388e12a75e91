import { describe, expect, test } from "vitest";
import { jobOf, sampleJobFile } from "../../test/sampleJob.ts";
import { catalogue } from "../catalogue/catalogue.ts";
import { depthAt } from "../geometry/trapezoid.ts";
import { assemble } from "./assemble.ts";
import { type Build, surfaceOf, tareOf } from "./build.ts";
import { massWorking } from "./mass.ts";
import { isBoxPart, type Part } from "./part.ts";
import { toWorld } from "./surface.ts";

type JobFile = ReturnType<typeof sampleJobFile>;
const build = (change: (file: JobFile) => void = () => undefined): Build => {
  const file = sampleJobFile();
  change(file);
  return assemble(jobOf(file));
};
const door = {
  id: "D1",
  kind: "personnel door",
  face: "left",
  at: { along: "2 m", up: "0 mm" },
  size: { width: "36 in", height: "80 in" },
  frame: { row: "hss-2x2x1-8" },
  swing: { hinge: "left", opens: "out" },
  trim: "trim-2x2-18mil",
};
const sum = (parts: readonly Part[]): number => parts.reduce((total, part) => total + part.mass, 0);
const role = (one: Build, wanted: Part["role"]): readonly Part[] => one.parts.filter((part) => part.role === wanted);
const bare = (file: JobFile): void => {
  file["faces"] = { left: {}, right: {}, blindEnd: {}, doorEnd: { cargoDoors: "working" }, roof: {} };
  file["floor"] = { layers: [] };
};

describe("mass", () => {
  test("of a bare box is its tare to the gram, for every box in the catalogue", () => {
    for (const { id } of catalogue.boxes.rows) {
      const one = build((file) => {
        bare(file);
        file["box"] = { row: id, condition: "new" };
      });
      expect(sum(one.parts)).toBeCloseTo(tareOf(one), 6);
    }
  });

  test("of every part is what its working says", () => {
    for (const part of build((file) => (file["openings"] = [door])).parts) {
      expect(massWorking(part).value).toBeCloseTo(part.mass, 12);
      expect(Number.isFinite(part.mass)).toBe(true);
    }
  });

  test("falls by the cut steel where a door is cut in", () => {
    const before = role(build(bare), "skin").find(({ surface }) => surface === "left");
    const after = role(
      build((file) => {
        bare(file);
        file["openings"] = [door];
      }),
      "skin",
    ).find(({ surface }) => surface === "left");
    const profile = catalogue.profiles.get("side-36");
    // Area of the hole times the developed length over the plane length, by small steps along the profile.
    const from = 2 - 2 * 0.0254;
    const to = 2 + 38 * 0.0254;
    const steps = 200000;
    let length = 0;
    for (let k = 0; k < steps; k += 1) {
      const a = from + ((to - from) * k) / steps;
      const b = from + ((to - from) * (k + 1)) / steps;
      length += Math.hypot(b - a, depthAt(profile, b) - depthAt(profile, a));
    }
    const height = 82 * 0.0254;
    expect((before?.mass ?? NaN) - (after?.mass ?? NaN)).toBeCloseTo(length * height * profile.thickness * 7850, 3);
  });
});

describe("foam", () => {
  test("fills its thickness and the troughs behind it, by closed form over whole pitches and the rest by steps", () => {
    const one = build();
    const left = surfaceOf(one, "left");
    const foam = role(one, "foam").find(({ surface }) => surface === "left");
    if (foam?.shape.kind !== "fill" || left.profile === undefined) throw new Error("the left wall is foamed");
    const height = left.inside.v1 - 0.0508;
    const width = left.inside.u1 - left.inside.u0;
    const covered = {
      v0: Math.max(left.panel.v0, 0),
      v1: Math.min(left.panel.v1, height),
      u0: Math.max(left.panel.u0, left.inside.u0),
      u1: Math.min(left.panel.u1, left.inside.u1),
    };
    const steps = 400000;
    const step = (covered.u1 - covered.u0) / steps;
    let area = 0;
    for (let k = 0; k < steps; k += 1) area += depthAt(left.profile, covered.u0 + (k + 0.5) * step) * step;
    const troughs = area * (covered.v1 - covered.v0);
    expect(foam.shape.area).toBeCloseTo(width * height, 9);
    expect(foam.shape.troughs).toBeCloseTo(troughs, 6);
    expect(foam.shape.volume).toBeCloseTo(width * height * 0.0508 + troughs, 6);
  });

  test("counts no corner twice: walls and roof fill the shell between two boxes", () => {
    const one = build((file) => (file["faces"] = { ...(file["faces"] as object), doorEnd: { cargoDoors: "working" } }));
    const { inside } = surfaceOf(one, "roof");
    const [length, width, height] = [inside.u1 - inside.u0, inside.v1 - inside.v0, surfaceOf(one, "left").inside.v1];
    const t = 0.0508;
    const flat = role(one, "foam").reduce(
      (total, { shape }) => total + (shape.kind === "fill" ? shape.volume - shape.troughs : NaN),
      0,
    );
    expect(flat).toBeCloseTo(length * width * height - (length - t) * (width - 2 * t) * (height - t), 9);
  });
});

describe("parts in space", () => {
  const partitioned = build((file) => {
    file["openings"] = [
      door,
      { id: "W1", kind: "window", face: "right", at: { along: "3 m", up: "1 m" }, size: { width: "1 m", height: "700 mm" }, frame: { row: "hss-2x2x1-8" } },
      { id: "D2", kind: "personnel door", face: "P1", at: { along: "500 mm", up: "0 mm" }, size: { width: "800 mm", height: "2 m" } },
    ];
    file["partitions"] = [{ id: "P1", at: "3.9 m", buildUp: "partition" }];
    file["rooms"] = [{ id: "R1", what: "One" }, { id: "R2", what: "Two" }];
    file["buildUps"] = {
      ...(file["buildUps"] as object),
      partition: {
        what: "partition",
        studs: { row: "stud-2-1-2-18mil", track: "track-2-1-2-18mil", pitch: "16 in" },
        boards: [{ row: "gypsum-1-2" }],
      },
    };
  });
  interface PartBlock {
    readonly id: string;
    readonly from: readonly [number, number, number];
    readonly to: readonly [number, number, number];
  }
  const blockOf = (one: Build, part: Part): PartBlock => {
    const surface = surfaceOf(one, part.surface);
    const a = toWorld(surface, part.rect.u0, part.rect.v0, part.depth.from);
    const b = toWorld(surface, part.rect.u1, part.rect.v1, part.depth.to);
    return {
      id: part.id,
      from: [Math.min(a.x, b.x), Math.min(a.y, b.y), Math.min(a.z, b.z)],
      to: [Math.max(a.x, b.x), Math.max(a.y, b.y), Math.max(a.z, b.z)],
    };
  };
  const meet = (a: PartBlock, b: PartBlock): boolean => [0, 1, 2].every((k) => Math.min(a.to[k]!, b.to[k]!) - Math.max(a.from[k]!, b.from[k]!) > 1e-6);
  /** Boards with openings in them are L-shaped or pierced: only whole ones can be told apart by their blocks. */
  const solid = ({ shape }: Part): boolean =>
    shape.kind !== "panel" || Math.abs(shape.area - (shape.blank.u1 - shape.blank.u0) * (shape.blank.v1 - shape.blank.v0)) < 1e-9;

  test("boards of different faces never run into one another, nor into studs", () => {
    const boards = [...role(partitioned, "board"), ...role(partitioned, "floor board")].filter(solid);
    const studs = partitioned.parts.filter(({ role: one }) => one === "stud" || one === "jamb stud" || one === "cripple stud");
    expect(boards.length).toBeGreaterThan(10);
    const blocks = [...boards, ...studs].map((part) => blockOf(partitioned, part));
    const clashes = blocks.flatMap((a, index) => blocks.slice(index + 1).filter((b) => meet(a, b)).map((b) => `${a.id} ~ ${b.id}`));
    expect(clashes).toEqual([]);
  });

  test("nothing that is added stands in the posts, rails, fittings or cross-members of the box", () => {
    for (const bare of [[], ["roof"], ["blindEnd"], ["left", "right"]]) {
      const one = build((file) => {
        const faces = file["faces"] as Record<string, object>;
        file["faces"] = { ...faces, ...Object.fromEntries(bare.map((face) => [face, {}])) };
        const wall = (file["buildUps"] as Record<string, { studs: { standOff: string } }>)["wall"];
        if (wall !== undefined) wall.studs.standOff = "0 mm";
      });
      const steel = one.parts.filter(({ role: is }) => is === "post" || is === "rail" || is === "corner fitting" || is === "cross-member");
      const added = one.parts.filter((part) => !isBoxPart(part) && part.role !== "foam" && part.role !== "coating" && solid(part));
      const clashes = added.flatMap((a) => steel.filter((b) => meet(blockOf(one, a), blockOf(one, b))).map((b) => `${a.id} ~ ${b.id}`));
      expect(clashes).toEqual([]);
    }
  });

  test("every added part lies within the box", () => {
    const { outside, insets } = partitioned.box;
    for (const part of partitioned.parts.filter((one) => !isBoxPart(one) && one.role !== "article")) {
      const { from, to } = blockOf(partitioned, part);
      const within = [from[0] >= -1e-6, to[0] <= outside.length + 1e-6, from[1] >= -1e-6, to[1] <= outside.width + 1e-6];
      expect([part.id, ...within]).toEqual([part.id, true, true, true, true]);
      expect(to[2]).toBeLessThanOrEqual(outside.height - insets.floor + 1e-6);
    }
  });

  test("a door in the left wall that opens out swings clear of the room", () => {
    const placed = partitioned.openings.find(({ opening }) => opening.id === "D1");
    expect(placed?.sweeps.map(({ inside }) => inside)).toEqual([false]);
    expect(placed?.sweeps[0]?.radius).toBeCloseTo(0.9144, 12);
  });

  test("ids are unique", () => {
    const ids = partitioned.parts.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test("left and right walls of the same build-up are mirror images", () => {
    const one = build();
    const along = (surface: "left" | "right"): readonly string[] =>
      role(one, "stud")
        .filter((part) => part.surface === surface)
        .map((part) => part.centre.x.toFixed(6))
        .sort();
    expect(along("left")).toEqual(along("right"));
  });
});

describe("sizes", () => {
  test("the finished room is the inside of the box less both linings", () => {
    const [room] = build().rooms;
    const { inside } = catalogue.boxes.get("20-standard");
    // 1/2 in stand-off, stud, 1/2 in gypsum; the ceiling's stud is 1-5/8 in; 2 mm vinyl.
    const wall = (0.5 + 2.5 + 0.5) * 0.0254;
    const ceiling = (0.5 + 1.625 + 0.5) * 0.0254;
    expect((room?.x.to ?? NaN) - (room?.x.from ?? NaN)).toBeCloseTo(inside.length - 2 * wall, 9);
    expect((room?.y.to ?? NaN) - (room?.y.from ?? NaN)).toBeCloseTo(inside.width - 2 * wall, 9);
    expect((room?.z.to ?? NaN) - (room?.z.from ?? NaN)).toBeCloseTo(inside.height - ceiling - 0.002, 9);
  });

  test("boards cover walls and ceiling once, notched around the corner fittings", () => {
    const one = build();
    const { inside, insets, fittings } = catalogue.boxes.get("20-standard");
    const [plane, wall] = [3 * 0.0254, 3.5 * 0.0254];
    const height = inside.height - (0.5 + 1.625 + 0.5) * 0.0254;
    const walls = 2 * (inside.length - 2 * wall) * height + 2 * (inside.width - 2 * plane) * height;
    const ceiling = (inside.length - 2 * plane) * (inside.width - 2 * plane);
    const laid = role(one, "board").reduce((total, { shape }) => total + (shape.kind === "panel" ? shape.area : NaN), 0);
    // How far a fitting reaches past a plane that lies `inset` and `layers` behind the outside; not at all where below zero.
    const past = (reach: number, inset: number, layers: number): number => Math.max(0, reach - inset - layers);
    const { length: x, width: y, height: z } = fittings.body;
    const down = height - (inside.height + insets.roof - z);
    const ends = [insets.blindEnd, insets.doorEnd];
    const across = past(y, insets.left, plane);
    const notches = ends.reduce((sum, inset) => sum + 2 * (past(x, inset, wall) * down + across * down + past(x, inset, plane) * across), 0);
    expect(notches).toBeGreaterThan(0.005);
    expect(laid).toBeCloseTo(walls + ceiling - notches, 6);
  });
});
