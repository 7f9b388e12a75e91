import { catalogue } from "../../catalogue/catalogue.ts";
import type { Build } from "../../build/build.ts";
import type { Part } from "../../build/part.ts";
import type { Span, Stack, Surface } from "../../build/surface.ts";
import type { SectionRow } from "../../catalogue/rows.ts";
import { wavePoints } from "../../geometry/trapezoid.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { BuildUp } from "../../job/job.ts";
import type { System } from "../../units/display.ts";
import type { DrawnShape, ScheduleTable, View } from "../drawing.ts";
import { chain, lengthText } from "./chains.ts";
import { capital } from "./faceNames.ts";
import { box, path, ring, stroke, viewOf } from "./shapes.ts";

/** A detail's view and the table that names its layers. */
export interface Detail {
  readonly view: View;
  readonly table: ScheduleTable;
}

interface Layer {
  readonly what: string;
  readonly span: Span;
  readonly kind: "skin" | "foam" | "batts" | "studs" | "furring" | "boards";
}

interface Kind {
  readonly names: string[];
  readonly surface: Surface;
  readonly stack: Stack;
  readonly buildUp: BuildUp | undefined;
  readonly floor: boolean;
}

/** Width of wall that a detail shows where no studs set it, metres. */
const USUAL_WIDTH = 0.6;
const BESIDE_STUDS = 0.1;

/** A section through each different build-up, true to scale, skin at the top and room at the foot; floors with the room at the top. */
export function details(build: Build): readonly Detail[] {
  return kindsOf(build).map((kind, index) => detail(build, kind, `B${index + 1}`));
}

/** Faces with the same build-up on the same sheet share a detail. */
function kindsOf(build: Build): readonly Kind[] {
  const kinds = new Map<string, Kind>();
  const { job } = build;
  const enter = (surface: Surface, stack: Stack, name: string | undefined, what: string, floor = false): void => {
    const buildUp = name === undefined ? undefined : job.buildUps[name];
    if (buildUp === undefined && !floor) return;
    const key = JSON.stringify([name, surface.profile?.id, surface.kind, stack]);
    const known = kinds.get(key);
    if (known === undefined) kinds.set(key, { names: [what], surface, stack, buildUp, floor });
    else known.names.push(what);
  };
  for (const surface of build.surfaces) {
    if (surface.kind === "partition") {
      const partition = job.partitions.find(({ id }) => id === surface.id);
      enter(surface, surface.stack, partition?.buildUp, surface.name);
    } else if (surface.id === "floor") enter(surface, surface.stack, undefined, "floor", true);
    else {
      const face = surface.id as "left" | "right" | "blindEnd" | "doorEnd" | "roof";
      enter(surface, surface.stack, job.faces[face].buildUp, surface.name);
      if (surface.leafStack !== undefined) enter(surface, surface.leafStack, job.faces.doorEnd.leafLining, "cargo door leaves");
    }
  }
  return [...kinds.values()];
}

function detail(build: Build, kind: Kind, name: string): Detail {
  const { surface, stack, buildUp } = kind;
  const { units } = build.job;
  const layers = layersOf(build, kind);
  const drawn = kind.floor ? layers.map((layer) => ({ ...layer, span: { from: -layer.span.to, to: -layer.span.from } })) : layers;
  const width = buildUp?.studs === undefined ? USUAL_WIDTH : buildUp.studs.pitch + 2 * BESIDE_STUDS;
  const shapes = [
    ...sheetShapes(surface, stack, width, buildUp),
    ...drawn.flatMap((layer) => layerShapes(layer, width, buildUp, layers[0]?.kind === "skin")),
    ...numbers(drawn),
    ...[0, width].map((x) => breakLine(x, drawn)),
  ];
  const edges = [...new Set(drawn.flatMap(({ span }) => [-span.from, -span.to]))].sort((a, b) => a - b);
  const title = `${name}: ${capital(kind.names.join(", "))}, ${surface.inward.z === 0 ? "level section" : "section along the box"}`;
  const view = viewOf(`detail-${name}`, title, shapes, [
    chain({ direction: "up", side: "right", row: 1 }, edges, units),
    chain({ direction: "up", side: "right", row: 2, label: "over all" }, [edges[0] as number, edges.at(-1) as number], units),
    ...(buildUp?.studs === undefined
      ? []
      : [chain({ direction: "across", side: "below", row: 1, label: "stud pitch" }, [BESIDE_STUDS, BESIDE_STUDS + buildUp.studs.pitch], units)]),
  ]);
  const rows = layers.map(({ what, span }, index) => [
    String(index + 1), what, lengthText(span.to - span.from, units), placeText(span, units),
  ]);
  const reference = surface.kind === "partition" ? "From stud middle" : surface.id === "floor" ? "From bare floor" : "From inside plane";
  return { view, table: { title: `${name}: ${buildUp?.what ?? "floor layers"}`, columns: ["No.", "Layer", "Thickness", reference], rows } };
}

function placeText({ from, to }: Span, units: System): string {
  return `${lengthText(from, units)} to ${lengthText(to, units)}`;
}

/** Layers from the skin inward; a partition's from the side toward the door end. */
function layersOf(build: Build, { surface, stack, buildUp, floor }: Kind): readonly Layer[] {
  const board = (row: string | undefined): string => (row === undefined ? "board" : catalogue.boards.get(row).what);
  const near = (floor ? build.job.floor.layers : (buildUp?.boards ?? [])).map(({ row }) => row);
  const boards = stack.boards.map((span, index): Layer => ({ what: board(near[index]), span, kind: "boards" }));
  if (floor) return [...belowFloor(build), ...boards];
  const studs: readonly Layer[] =
    stack.studs === undefined || buildUp?.studs === undefined
      ? []
      : [{ what: catalogue.sections.get(buildUp.studs.row).what, span: stack.studs, kind: "studs" }];
  const batts: readonly Layer[] =
    stack.batts === undefined || buildUp?.batts === undefined
      ? []
      : [{ what: catalogue.batts.get(buildUp.batts.row).what, span: stack.batts, kind: "batts" }];
  if (surface.kind === "partition") {
    const partition = build.job.partitions.find(({ id }) => id === surface.id);
    const far = build.job.buildUps[partition?.blindSide ?? partition?.buildUp ?? ""]?.boards ?? [];
    const farBoards = (surface.farStack?.boards ?? []).map((span, index): Layer => ({ what: board(far[index]?.row), span, kind: "boards" }));
    return [...[...boards].reverse(), ...batts, ...studs, ...farBoards];
  }
  const skin: readonly Layer[] =
    surface.profile === undefined
      ? []
      : [{ what: surface.profile.what, span: { from: -surface.skinDepth, to: 0 }, kind: "skin" }];
  const foam: readonly Layer[] =
    stack.foam === undefined || buildUp?.foam === undefined
      ? []
      : [{ what: catalogue.foams.get(buildUp.foam.row).what, span: stack.foam, kind: "foam" }];
  const furring: readonly Layer[] =
    stack.furring === undefined || buildUp?.furring === undefined
      ? []
      : [{ what: catalogue.sections.get(buildUp.furring.row).what, span: stack.furring, kind: "furring" }];
  return [...skin, ...foam, ...batts, ...studs, ...furring, ...boards];
}

/** Foam under the bare floor, and the bare floor itself. */
function belowFloor(build: Build): readonly Layer[] {
  const part = (role: Part["role"]): Part | undefined => build.parts.find((each) => each.surface === "floor" && each.role === role);
  const [foam, bare] = [part("foam"), part("bare floor")];
  return [
    ...(foam === undefined ? [] : [{ what: foam.what, span: foam.depth, kind: "foam" as const }]),
    ...(bare === undefined ? [] : [{ what: bare.what, span: bare.depth, kind: "boards" as const }]),
  ];
}

/** The sheet in its true profile and thickness, and the foam that fills its troughs. */
function sheetShapes(surface: Surface, stack: Stack, width: number, buildUp: BuildUp | undefined): readonly DrawnShape[] {
  const { profile } = surface;
  if (profile === undefined || stack === surface.leafStack) return [];
  const inner = wavePoints(profile, 0, width).map(({ x, y }): Vec2 => ({ x, y }));
  const outer = inner.map(({ x, y }): Vec2 => ({ x, y: y + profile.thickness }));
  const troughs = buildUp?.foam !== undefined && stack.foam?.from === 0;
  const face = stack.foam === undefined ? 0 : -stack.foam.to;
  return [
    ring("section-cut", [...inner, ...[...outer].reverse()], { filled: true }),
    ...(troughs ? [ring("foam", [...inner, { x: width, y: face }, { x: 0, y: face }], { filled: true })] : []),
  ];
}

function layerShapes({ span, kind }: Layer, width: number, buildUp: BuildUp | undefined, onSheet: boolean): readonly DrawnShape[] {
  const band = { u0: 0, u1: width, v0: -span.to, v1: -span.from };
  switch (kind) {
    case "skin":
      return [];
    case "foam":
      return onSheet && span.from === 0 ? [] : [box("foam", band, undefined, { filled: true })];
    case "batts":
    case "furring":
    case "boards":
      return [box(kind, band, undefined, { filled: true })];
    case "studs": {
      const studs = buildUp?.studs;
      if (studs === undefined) return [];
      const row = catalogue.sections.get(studs.row);
      return [BESIDE_STUDS, BESIDE_STUDS + studs.pitch].map((x) => ring("studs", channel(row, x, span), { filled: true }));
    }
  }
}

/** The lipped channel of a stud, its middle at x: web, two flanges, two lips. */
function channel(row: SectionRow, x: number, { from, to }: Span): readonly Vec2[] {
  const t = row.thickness;
  const lip = row.lip ?? t;
  const [x0, x1] = [x - row.width / 2, x + row.width / 2];
  const [y0, y1] = [-to, -from];
  return [
    { x: x0, y: y0 }, { x: x1, y: y0 }, { x: x1, y: y0 + lip }, { x: x1 - t, y: y0 + lip }, { x: x1 - t, y: y0 + t },
    { x: x0 + t, y: y0 + t }, { x: x0 + t, y: y1 - t }, { x: x1 - t, y: y1 - t }, { x: x1 - t, y: y1 - lip },
    { x: x1, y: y1 - lip }, { x: x1, y: y1 }, { x: x0, y: y1 },
  ];
}

/** Each layer's number beside the detail; layers with one middle, as batts and their studs, share a line. */
function numbers(layers: readonly Layer[]): readonly DrawnShape[] {
  const places = new Map<string, { readonly y: number; readonly numbers: number[] }>();
  for (const [index, { span }] of layers.entries()) {
    const y = -(span.from + span.to) / 2;
    const known = places.get(y.toFixed(3));
    if (known === undefined) places.set(y.toFixed(3), { y, numbers: [index + 1] });
    else known.numbers.push(index + 1);
  }
  return [...places.values()].flatMap((place) => number(place.numbers.join(", "), place.y));
}

/** A number with a line into its layer. */
function number(text: string, y: number): readonly DrawnShape[] {
  return [
    stroke("dimensions", { x: -0.012, y }, { x: 0.018, y }),
    { kind: "text", layer: "text", at: { x: -0.018, y: y - 0.004 }, text, height: 0.0018, align: "right" },
  ];
}

/** The wall goes on beyond the edge of the detail. */
function breakLine(x: number, layers: readonly Layer[]): DrawnShape {
  const low = Math.min(...layers.map(({ span }) => -span.to));
  const high = Math.max(...layers.map(({ span }) => -span.from));
  return path("hidden", [{ x, y: low - 0.01 }, { x, y: high + 0.01 }], { dashed: true });
}
