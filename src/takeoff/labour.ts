import type { Build, PlacedOpening } from "../build/build.ts";
import { isBoxPart, type Part, type Role } from "../build/part.ts";
import { catalogue } from "../catalogue/catalogue.ts";
import { LABOUR_TASKS, type LabourTask } from "../job/labourTasks.ts";
import type { PriceBook } from "../job/priceBook.ts";
import { apply } from "../working/formula.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { netArea, netLength } from "./formulas.ts";
import { hoursByArea, hoursByLength, hoursByPiece } from "./labourFormulas.ts";
import { zoneOf } from "./coats.ts";
import { passesOf } from "./lines/foam.ts";
import { areaOf, byKey, firstOf, lengthOf, piecesOf } from "./lines/partQuantities.ts";
import { holePerimeter, isThroughSkin, seamOf, tapedFaces } from "./lines/sealants.ts";

/** Hours of one task in one place; price adds them up, plan dates them. */
export interface LabourWork {
  /** Task and place: "board gypsum/left/1". */
  readonly id: string;
  readonly task: LabourTask;
  /** Where: a surface, an opening's face, a zone of coats; "job" for the whole. */
  readonly place: string;
  /** Board layer, coat or pass within the place, from 1; undefined where there is only one. */
  readonly step: number | undefined;
  readonly trade: string;
  readonly hours: Quantity<"h">;
  readonly parts: readonly string[];
}

/** Every task of the job by place, with its person-hours from the price book: the one source of hours for price and plan. */
export function labourOf(build: Build, book: PriceBook): readonly LabourWork[] {
  const parts = build.parts.filter((part) => !isBoxPart(part));
  return [
    ...wholeJob(build),
    ...openingWork(build, parts),
    ...coatWork(parts),
    ...framingWork(parts),
    ...roughIn(build),
    ...foamWork(parts),
    ...battWork(parts),
    ...boardWork(parts),
    ...fitWork(parts),
  ].map((amount) => workOf(amount, book));
}

/** How much of a task there is in a place, before the book says what one takes. */
interface TaskAmount {
  readonly task: LabourTask;
  readonly place: string;
  readonly step?: number;
  readonly n?: Quantity<"1">;
  readonly L?: Quantity<"m">;
  readonly A?: Quantity<"m2">;
  readonly parts: readonly string[];
}

function workOf({ task, place, step, n, L, A, parts }: TaskAmount, book: PriceBook): LabourWork {
  const { trade, hours } = book.labour.tasks[task];
  const inHours = hours / SECONDS_IN_HOUR;
  const means = `person-hours: ${task}, ${place}${step === undefined ? "" : `, ${step}`}`;
  const from = { kind: "priceBook", path: `labour.tasks["${task}"].hours` } as const;
  const each = (unit: string): string => `hours of "${task}" for one ${unit}`;
  const total = (): Quantity<"h"> => {
    if (A !== undefined) {
      return apply(hoursByArea, { A, H_square: given(inHours, "h/m2", "H_square", each("square metre"), from) }, { means });
    }
    if (L !== undefined) return apply(hoursByLength, { L, H_metre: given(inHours, "h/m", "H_metre", each("metre"), from) }, { means });
    if (n !== undefined) return apply(hoursByPiece, { n, H_each: given(inHours, "h", "H_each", each("piece"), from) }, { means });
    throw new RangeError(`labour ${task} at ${place}: no amount for ${LABOUR_TASKS[task]}`);
  };
  const id = `${task}/${place}${step === undefined ? "" : `/${step}`}`;
  return { id, task, place, step, trade, hours: total(), parts };
}

const SECONDS_IN_HOUR = 3600;

function once(means: string): Quantity<"1"> {
  return given(1, "1", "n", means, { kind: "job", path: "job" });
}

function wholeJob(build: Build): readonly TaskAmount[] {
  const one = (task: LabourTask): TaskAmount => ({ task, place: "job", n: once(task), parts: [] });
  const stops = holdPointsOf(build).map((place): TaskAmount => ({ ...one("inspect"), place }));
  return [one("mobilise"), one("receive box"), ...stops, one("weigh and load")];
}

export type HoldPoint = "openings" | "rough-in" | "foam" | "refrigerant" | "final";

/** Where work stops until someone signs, in order; each takes one "inspect". */
export function holdPointsOf(build: Build): readonly HoldPoint[] {
  const stops: readonly (readonly [HoldPoint, boolean])[] = [
    ["openings", build.openings.some(isThroughSkin)],
    ["rough-in", true],
    ["foam", build.parts.some((part) => part.shape.kind === "fill" && !isBoxPart(part))],
    ["refrigerant", build.parts.some(isIndoorUnit)],
    ["final", true],
  ];
  return stops.filter(([, stands]) => stands).map(([stop]) => stop);
}

/** True for the indoor part of a split unit, which is the one that cools: lines, test and charge are counted by it. */
function isIndoorUnit(part: Part): boolean {
  if (part.row?.table !== "articles") return false;
  const { kind, cooling } = catalogue.articles.get(part.row.id);
  return kind === "split unit" && cooling !== undefined;
}

function openingWork(build: Build, parts: readonly Part[]): readonly TaskAmount[] {
  const faces = new Map<string, PlacedOpening[]>();
  for (const placed of build.openings) {
    const list = faces.get(placed.surface.id);
    if (list === undefined) faces.set(placed.surface.id, [placed]);
    else list.push(placed);
  }
  const primer = parts.filter((part) => part.shape.kind === "film" && part.shape.coat === 1 && zoneOf(part) === "outside");
  return [...faces].flatMap(([place, openings]): readonly TaskAmount[] => {
    const ids = new Set(openings.map(({ opening }) => opening.id));
    const frames = parts.filter((part) => part.role === "opening frame" && part.of !== undefined && ids.has(part.of));
    const n = given(openings.length, "1", "n", `openings in ${place}`, { kind: "job", path: "openings" });
    const holes = openings.map((placed) => holePerimeter(placed, 1, "L"));
    const L = apply(netLength, { L: holes }, { means: `cut length in ${place}` });
    const bars = frames.filter((part) => part.shape.kind === "bar");
    const frameParts = frames.map(({ id }) => id);
    const welding: readonly TaskAmount[] =
      bars.length === 0 ? [] : [{ task: "weld frame", place, L: apply(netLength, { L: bars.map(lengthOf) }), parts: frameParts }];
    if (!openings.every(isThroughSkin)) return welding;
    return [
      { task: "mark opening", place, n, parts: [] },
      { task: "cut opening", place, n, parts: [] },
      { task: "cut along hole", place, L, parts: [] },
      ...welding,
      { task: "repair coat", place, n, parts: primer.map(({ id }) => id) },
    ];
  });
}

function coatWork(parts: readonly Part[]): readonly TaskAmount[] {
  const films = byKey(parts, (part) => (part.shape.kind === "film" ? `${zoneOf(part)}/${part.shape.coat}` : undefined));
  const coats = [...films.values()].map((group): TaskAmount => {
    const first = firstOf(group);
    const place = zoneOf(first);
    const step = first.shape.kind === "film" ? first.shape.coat : 1;
    const A = apply(netArea, { A: group.map(areaOf) }, { means: `area of coat ${step}, ${place}` });
    return { task: place === "inside" ? "coat inside" : "coat outside", place, step, A, parts: group.map(({ id }) => id) };
  });
  const blasted = coats
    .filter(({ task, step }) => task === "coat outside" && step === 1)
    .map(({ place, A }): TaskAmount => ({ task: "clean and blast", place, ...(A === undefined ? {} : { A }), parts: [] }));
  return [...blasted, ...coats];
}

const FRAMING: ReadonlySet<Role> = new Set<Role>([
  "stud", "jamb stud", "cripple stud", "track", "header", "sill", "blocking", "corner angle",
]);

function framingWork(parts: readonly Part[]): readonly TaskAmount[] {
  const pieces = (task: LabourTask, wanted: (part: Part) => boolean): readonly TaskAmount[] =>
    [...byKey(parts.filter(wanted), ({ surface }) => surface)].map(([place, group]) => ({
      task,
      place,
      n: piecesOf(group, `pieces on ${place}`),
      parts: group.map(({ id }) => id),
    }));
  const trims = byKey(parts, (part) => (part.role === "trim" && part.shape.kind === "bar" ? part.surface : undefined));
  return [
    ...pieces("set framing", ({ role }) => FRAMING.has(role)),
    ...pieces("set furring", ({ role }) => role === "furring"),
    ...pieces("take off furring", ({ role, temporary }) => role === "furring" && temporary),
    ...[...trims].map(([place, group]): TaskAmount => ({
      task: "trim",
      place,
      L: apply(netLength, { L: group.map(lengthOf) }, { means: `trim on ${place}` }),
      parts: group.map(({ id }) => id),
    })),
  ];
}

/** Openings through which wires, pipes or lines pass. */
const PENETRATIONS = new Set(["fan", "cable entry", "pipe sleeve", "split-unit lines"]);

function roughIn(build: Build): readonly TaskAmount[] {
  const through = build.openings.filter(({ opening }) => PENETRATIONS.has(opening.kind)).length;
  const rooms = given(build.rooms.length, "1", "n", "rooms", { kind: "job", path: "rooms" });
  const n = given(through, "1", "n", "penetrations for wires, pipes and lines", { kind: "job", path: "openings" });
  return [
    { task: "rough-in room", place: "job", n: rooms, parts: [] },
    ...(through === 0 ? [] : [{ task: "rough-in penetration", place: "job", n, parts: [] } as const]),
  ];
}

function foamWork(parts: readonly Part[]): readonly TaskAmount[] {
  return parts.flatMap((part): readonly TaskAmount[] => {
    if (part.shape.kind !== "fill") return [];
    const A = given(part.shape.area, "m2", "A", `area of ${part.what}`, { kind: "part", id: part.id, field: "area" });
    return Array.from({ length: passesOf(part).value }, (_, pass) => ({
      task: "spray foam",
      place: part.id,
      step: pass + 1,
      A,
      parts: [part.id],
    }));
  });
}

function battWork(parts: readonly Part[]): readonly TaskAmount[] {
  const batts = byKey(parts, ({ role, surface }) => (role === "batt" ? surface : undefined));
  return [...batts].map(([place, group]) => ({
    task: "set batts",
    place,
    A: apply(netArea, { A: group.map(areaOf) }, { means: `area of batts on ${place}` }),
    parts: group.map(({ id }) => id),
  }));
}

function boardWork(parts: readonly Part[]): readonly TaskAmount[] {
  const boards = byKey(parts, (part) =>
    part.shape.kind === "panel" && part.row?.table === "boards"
      ? `${part.surface}/${part.layer ?? 1}/${catalogue.boards.get(part.row.id).kind}`
      : undefined,
  );
  const boarded = [...boards.values()].map((group): TaskAmount => {
    const first = firstOf(group);
    const row = catalogue.boards.get(first.row?.id ?? "");
    const A = apply(netArea, { A: group.map(areaOf) }, { means: `area of ${row.kind} on ${first.surface}` });
    const task = `board ${row.kind}` as const;
    return { task, place: first.surface, step: first.layer ?? 1, A, parts: group.map(({ id }) => id) };
  });
  const taped = tapedFaces(parts).map((pieces): TaskAmount => {
    const first = firstOf(pieces);
    const side = first.depth.from < 0 ? 1 : 2;
    return { task: "tape and fill", place: first.surface, step: side, L: seamOf(pieces), parts: [] };
  });
  return [...boarded, ...taped];
}

function fitWork(parts: readonly Part[]): readonly TaskAmount[] {
  const articles = byKey(parts, (part) => {
    if (part.row?.table !== "articles") return undefined;
    return catalogue.articles.get(part.row.id).kind;
  });
  const fitted = [...articles.values()].map((group): TaskAmount => {
    const { kind } = catalogue.articles.get(firstOf(group).row?.id ?? "");
    return { task: `fit ${kind}`, place: "job", n: piecesOf(group, `pieces: ${kind}`), parts: group.map(({ id }) => id) };
  });
  const systems = parts.filter(isIndoorUnit);
  const items = parts.filter((part) => part.role === "item" && part.row === undefined);
  return [
    ...fitted,
    ...(systems.length === 0
      ? []
      : [{ task: "refrigerant work", place: "job", n: piecesOf(systems, "split units by their indoor parts"), parts: [] } as const]),
    ...(items.length === 0
      ? []
      : [{ task: "place item", place: "job", n: piecesOf(items, "items"), parts: items.map(({ id }) => id) } as const]),
  ];
}
