import type { Build } from "../build/build.ts";
import type { HoldPoint, LabourWork } from "../takeoff/labour.ts";
import { type After, type Draft, usualWait } from "./draft.ts";
import type { ShellDone } from "./shellItems.ts";

const WALLS = ["left", "right", "blindEnd", "doorEnd"];

/** Framing, wires in the walls, foam, batts, boards, partitions, tape. Gives what fitting out follows. */
export function liningItems(build: Build, plan: Draft, holds: readonly HoldPoint[], labour: readonly LabourWork[], { primed }: ShellDone): After {
  const base = build.job.floor.laid === "before walls" ? floorItems(plan, labour, primed) : primed;
  const walls = WALLS.flatMap((id) => framingItems(build, plan, id, base));
  const framed = framingItems(build, plan, "roof", walls);
  const wired = plan.work("rough-in", "rough-in of wires, pipes and lines", ({ task }) => task.startsWith("rough-in"), framed);
  const checked = plan.hold(
    "hold/rough-in",
    "hold point: rough-in before cover",
    "licensed electrician and local authority: wires, pipes and penetrations before they are covered",
    ({ task, place }) => task === "inspect" && place === "rough-in",
    wired,
  );
  const foamed = foamItems(plan, holds, labour, checked);
  const cleared = plan.work("furring-off", "take off temporary furring", ({ task }) => task === "take off furring", foamed);
  const filled = battItems(plan, "batts", "batts between the studs of walls and ceiling", [...WALLS, "roof"], cleared);
  const ceiling = (after: After): After => boardItems(plan, labour, { id: "ceiling", what: "ceiling boards", places: ["roof"] }, after);
  const wall = (after: After): After => boardItems(plan, labour, { id: "walls", what: "wall boards", places: WALLS }, after);
  const boarded = build.job.ceilingFirst ? wall(ceiling(filled)) : ceiling(wall(filled));
  const parted = build.surfaces
    .filter(({ kind }) => kind === "partition")
    .reduce((after, { id, name }) => {
      const welded = plan.work(`weld/${id}`, `weld opening frames, ${name}`, ({ task, place }) => task === "weld frame" && place === id, after);
      const studs = framingItems(build, plan, id, welded);
      const stuffed = battItems(plan, `batts/${id}`, `batts of ${name}`, [id], studs);
      return boardItems(plan, labour, { id: `boards/${id}`, what: `boards of ${name}`, places: [id] }, stuffed);
    }, boarded);
  const taped = plan.work("tape", "tape and fill joints", ({ task }) => task === "tape and fill", parted);
  return taped === parted ? parted : plan.wait("wait/tape", "joint compound dries", usualWait(TAPE_DRIES, "three coats of compound, each dry overnight"), taped);
}

/** Three coats of compound, a day each: common practice. */
const TAPE_DRIES = 72;
/** Foam cools before the next pass goes on it: common practice; the maker's sheet rules. */
const BETWEEN_PASSES = 1;
/** Nobody works unprotected in the box until the foam has cured and aired out: common practice; the maker's sheet rules. */
const FOAM_CURES = 24;

/** Layers of the floor, from the bare floor up. */
export function floorItems(plan: Draft, labour: readonly LabourWork[], after: After): After {
  return boardItems(plan, labour, { id: "floor", what: "floor", places: ["floor"] }, after);
}

function framingItems(build: Build, plan: Draft, id: string, after: After): After {
  const name = build.surfaces.find((surface) => surface.id === id)?.name ?? id;
  const studs = plan.work(`framing/${id}`, `studs and tracks, ${name}`, ({ task, place }) => task === "set framing" && place === id, after);
  return plan.work(`furring/${id}`, `furring, ${name}`, ({ task, place }) => task === "set furring" && place === id, studs);
}

function foamItems(plan: Draft, holds: readonly HoldPoint[], labour: readonly LabourWork[], after: After): After {
  if (!holds.includes("foam")) return after;
  const passes = stepsOf(labour.filter(({ task }) => task === "spray foam"));
  let before = after;
  for (const pass of passes) {
    const sprayed = plan.work(`foam/${pass}`, `foam, pass ${pass}`, ({ task, step }) => task === "spray foam" && step === pass, before);
    const isLast = pass === passes.at(-1);
    before = isLast
      ? plan.wait("wait/foam", "foam cures and airs out", usualWait(FOAM_CURES, "cure and airing of foam"), sprayed)
      : plan.wait(`wait/foam/${pass}`, "foam cools", usualWait(BETWEEN_PASSES, "time between passes of foam"), sprayed);
  }
  return plan.hold(
    "hold/foam",
    "hold point: foam",
    "foam applicator and inspector: thickness, adhesion, no voids, before it is covered",
    ({ task, place }) => task === "inspect" && place === "foam",
    before,
  );
}

function battItems(plan: Draft, id: string, what: string, places: readonly string[], after: After): After {
  return plan.work(id, what, ({ task, place }) => task === "set batts" && places.includes(place), after);
}

interface Boarding {
  readonly id: string;
  readonly what: string;
  readonly places: readonly string[];
}

function boardItems(plan: Draft, labour: readonly LabourWork[], { id, what, places }: Boarding, after: After): After {
  const isHere = ({ task, place }: LabourWork): boolean => task.startsWith("board ") && places.includes(place);
  return stepsOf(labour.filter(isHere)).reduce<After>((before, layer) => {
    const isInLayer = (work: LabourWork): boolean => isHere(work) && work.step === layer;
    const isWelded = labour.some((work) => isInLayer(work) && work.task === "board steel plate");
    return plan.work(`${id}/${layer}`, `${what}, layer ${layer}`, isInLayer, before, isWelded ? HOT_WORK : undefined);
  }, after);
}

/** Cured foam burns: welding in a foamed room is the usual way to set a box on fire. */
const HOT_WORK = "welding near foam and boards: shield them, fire watch during the work and after it";

function stepsOf(labour: readonly LabourWork[]): readonly number[] {
  const steps = labour.flatMap(({ step }) => (step === undefined ? [] : [step]));
  return [...new Set(steps)].sort((a, b) => a - b);
}
