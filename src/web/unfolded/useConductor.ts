import { useRef, useState } from "react";
import type { JobFile } from "../../job/file.ts";
import type { Rect, Screen, Surface, Vec2 } from "../../river/screen.ts";
import type { Step } from "../state/history.ts";
import type { Selection } from "../state/selection.ts";
import { useSession } from "../state/session.ts";
import { useSettings, type LayerId } from "../state/settings.ts";
import { distancesOf, type Distance } from "./distances.ts";
import { IDLE, turn } from "./gestures/gesture.ts";
import type { Effect, Gesture, Handle, Hit, Input } from "./gestures/states.ts";
import { cutTo, handReach, movedWithin } from "./heldOnFace.ts";
import { partAt } from "./partPaths.ts";
import { roundFigure, snapEdge, snapLines, snapMove, type SnapLine } from "./snap.ts";
import { besideRect, copyThing, placeThing, unitsOf } from "./thingEdits.ts";
import { thingsOf, type Thing } from "./things.ts";
import { fromSheet, stepOnFace, type Placement } from "./unfold.ts";
import { fromScreen, type View } from "./view.ts";

/** What is shown while a thing is moved: where it is, the lines that it met, how far it is from everything. */
export interface Guides {
  readonly id: string;
  readonly placement: Placement;
  readonly rect: Rect;
  readonly met: readonly SnapLine[];
  readonly distances: readonly Distance[];
}

/** A thing in the hand, as it was when it was taken. */
interface Held {
  readonly thing: Thing;
  readonly placement: Placement;
  readonly surface: Surface;
  readonly lines: readonly SnapLine[];
  readonly others: readonly Thing[];
  readonly handle: Handle | undefined;
  /** What was picked before. */
  readonly picked: Selection | undefined;
  /** The step that the gesture makes; once it is no longer open, as after an undo in mid-drag, the hand holds nothing. */
  readonly step: Step<JobFile> | undefined;
}

interface Sheet {
  readonly placements: readonly Placement[];
  readonly view: View;
  readonly onPan: (by: Vec2) => void;
  readonly onZoom: (about: Vec2, times: number) => void;
}

interface Conductor {
  /** Takes one input of the hand; true where a gesture is under way afterwards. */
  readonly take: (input: Input) => boolean;
  readonly guides: Guides | undefined;
}

/** Pixels within which edges are drawn to lines. */
const REACH = 7;
/** Milliseconds between two writes of a drag into the file; the outline follows the hand in every frame. */
const WRITE_EVERY = 50;
/** Pixels on an axis that are no intention. */
const TREMBLE = 4;

/** Carries out what the gestures ask for: moves the paper, picks, and writes into the job file, one undo step a gesture. */
export function useConductor({ placements, view, onPan, onZoom }: Sheet): Conductor {
  const gesture = useRef<Gesture>(IDLE);
  const held = useRef<Held>(undefined);
  const pending = useRef<{ readonly rect: Rect }>(undefined);
  const written = useRef(-Infinity);
  const [guides, setGuides] = useState<Guides>();
  const step = useSession(({ history }) => history.gesture);

  /** Takes a thing into the hand and opens the gesture's step. */
  const grasp = (label: string, id: string, key: string, handle: Handle | undefined): Held | undefined => {
    const { screen, file, selection, beginGesture } = useSession.getState();
    const placement = placements.find((one) => one.key === key);
    if (screen === undefined || placement === undefined) return undefined;
    const { surface } = placement;
    const things = thingsOf(file, screen);
    const thing = things.find((one) => one.id === id && one.surface === surface.id);
    if (thing === undefined) return undefined;
    beginGesture(label);
    const lines = snapLines(screen.build, surface, things, thing);
    return { thing, placement, surface, lines, others: things, handle, picked: selection, step: useSession.getState().history.gesture };
  };

  /** The thing in the hand, as long as its step is open. */
  const inHand = (): Held | undefined => (held.current?.step === useSession.getState().history.gesture ? held.current : undefined);

  /** Writes what is still to be written of the thing in the hand. */
  const write = (): void => {
    const hand = inHand();
    if (hand === undefined || pending.current === undefined) return;
    const { thing, surface } = hand;
    const { rect } = pending.current;
    pending.current = undefined;
    written.current = performance.now();
    useSession.getState().edit("", (draft) => placeThing(draft, thing, rect, surface));
  };

  const put = (wanted: Rect, met: readonly SnapLine[]): void => {
    const hand = inHand();
    if (hand === undefined) return;
    const { thing, surface, placement, others, handle } = hand;
    const reach = handReach(thing, surface);
    const rect = handle === undefined ? movedWithin(wanted, reach) : cutTo(wanted, reach);
    pending.current = { rect };
    if (performance.now() - written.current >= WRITE_EVERY) write();
    setGuides({ id: thing.id, placement, rect, met, distances: distancesOf(rect, surface, others, thing.id) });
  };

  const move = (by: Vec2, free: boolean): void => {
    if (held.current === undefined) return;
    const { thing, placement, lines } = held.current;
    const step = stepOnFace(placement, { x: by.x / view.scale, y: by.y / view.scale });
    // What is moved along one axis keeps its place on the other: a trembling hand is not drawn to lines.
    const goes = { u: thing.moves.u && Math.abs(step.u) * view.scale >= TREMBLE, v: thing.moves.v && Math.abs(step.v) * view.scale >= TREMBLE };
    const { reach, round } = reaches(free, view);
    const { du, dv, met } = snapMove(thing.rect, thing.around, step, lines, reach, round);
    put(shifted(thing.rect, goes.u ? du : 0, goes.v ? dv : 0), met.filter(({ axis }) => goes[axis]));
  };

  const resize = (by: Vec2, free: boolean): void => {
    if (held.current?.handle === undefined) return;
    const { thing, placement, lines, handle } = held.current;
    const step = stepOnFace(placement, { x: by.x / view.scale, y: by.y / view.scale });
    const { reach, round } = reaches(free, view);
    const u = pulled("u", thing.rect.u0, thing.rect.u1, handle.u, step.u, lines, reach, round);
    const v = pulled("v", thing.rect.v0, thing.rect.v1, handle.v, step.v, lines, reach, round);
    put({ u0: u.low, u1: u.high, v0: v.low, v1: v.high }, [...u.met, ...v.met]);
  };

  const pick = (hit: Hit, at: Vec2): void => {
    const { select, light, screen, selection } = useSession.getState();
    if (screen === undefined) return;
    switch (hit.on) {
      case "nothing":
        select(undefined);
        light([]);
        return;
      case "handle":
        return;
      case "mark":
        select({ kind: "finding", id: hit.id });
        light(screen.findings.find(({ id }) => id === hit.id)?.about ?? []);
        return;
      case "thing": {
        const kind = thingsOf(useSession.getState().file, screen).find(({ id }) => id === hit.id)?.kind;
        if (kind !== undefined) select({ kind, id: hit.id });
        light([]);
        return;
      }
      case "face": {
        const placement = placements.find(({ key }) => key === hit.key);
        if (placement === undefined) return;
        const { layers } = useSettings.getState();
        const shown = new Set((Object.keys(layers) as LayerId[]).filter((layer) => layers[layer] && !UNPICKED.has(layer)));
        const faceIsPicked = selection?.id === placement.surface.id || selection?.kind === "part";
        const part = faceIsPicked ? partAt(screen.build.parts, placement, fromSheet(placement, fromScreen(view, at)), shown) : undefined;
        const kind = placement.surface.kind === "partition" ? "partition" : "face";
        select(part === undefined ? { kind, id: placement.surface.id } : { kind: "part", id: part.id });
        light(part === undefined ? [] : [part.id]);
        return;
      }
    }
  };

  const carryOut = (effect: Effect): void => {
    const session = useSession.getState();
    switch (effect.do) {
      case "pick":
        pick(effect.hit, effect.at);
        return;
      case "pan":
        onPan(effect.by);
        return;
      case "zoom":
        onZoom(effect.about, effect.times);
        return;
      case "begin move": {
        const first = grasp(`${effect.copy ? "Copy" : "Move"} ${effect.id}`, effect.id, effect.key, undefined);
        if (first === undefined) return;
        const copy = effect.copy ? copied(first.thing) : undefined;
        held.current = copy === undefined ? first : { ...first, thing: { ...first.thing, id: copy } };
        session.select({ kind: first.thing.kind, id: copy ?? effect.id });
        return;
      }
      case "begin resize":
        held.current = grasp(`Resize ${effect.id}`, effect.id, effect.key, effect.handle);
        return;
      case "move":
        move(effect.by, effect.free);
        return;
      case "resize":
        resize(effect.by, effect.free);
        return;
      case "finish":
      case "abandon": {
        if (effect.do === "finish") write();
        const own = inHand();
        if (own !== undefined && effect.do === "finish") session.endGesture();
        if (own !== undefined && effect.do === "abandon") session.cancelGesture();
        // A copy that is gone again is picked no longer.
        if (held.current !== undefined && (own === undefined || effect.do === "abandon")) session.select(held.current.picked);
        pending.current = undefined;
        held.current = undefined;
        setGuides(undefined);
      }
    }
  };

  return {
    take: (input) => {
      const { next, effects } = turn(gesture.current, input);
      gesture.current = next;
      effects.forEach(carryOut);
      return next.state !== "idle";
    },
    guides: step === undefined ? undefined : guides,
  };
}

/** Layers that cover a whole face and would hide it from being picked. */
const UNPICKED: ReadonlySet<LayerId> = new Set<LayerId>(["skin", "foam"]);

function copied(thing: Thing): string | undefined {
  const made: { id?: string | undefined } = {};
  useSession.getState().edit("", (draft) => {
    made.id = copyThing(draft, thing.kind, thing.id);
  });
  return made.id;
}

/** Copies the thing beside itself, as one step, and picks the copy. */
export function duplicateBeside(thing: Thing, surface: Surface): void {
  const session = useSession.getState();
  session.beginGesture(`Copy ${thing.id}`);
  const id = copied(thing);
  if (id === undefined) {
    session.cancelGesture();
    return;
  }
  session.edit("", (draft) => placeThing(draft, { ...thing, id }, besideRect(thing.rect, surface), surface));
  session.endGesture();
  session.select({ kind: thing.kind, id });
}

/** Moves a thing by a step on its face, within the gesture that is open. */
export function nudge(screen: Screen, thing: Thing, du: number, dv: number): void {
  const surface = screen.build.surfaces.find(({ id }) => id === thing.surface);
  if (surface === undefined) return;
  const rect = movedWithin(shifted(thing.rect, thing.moves.u ? du : 0, thing.moves.v ? dv : 0), handReach(thing, surface));
  useSession.getState().edit("", (draft) => placeThing(draft, thing, rect, surface));
}

function reaches(free: boolean, { scale }: View): { readonly reach: number; readonly round: number } {
  const units = unitsOf(useSession.getState().file);
  const reach = free ? 0 : REACH / scale;
  return { reach, round: roundFigure(units, reach / 2) };
}

function shifted({ u0, u1, v0, v1 }: Rect, du: number, dv: number): Rect {
  return { u0: u0 + du, u1: u1 + du, v0: v0 + dv, v1: v1 + dv };
}

/** Nothing is made smaller than this by hand. */
const SMALLEST = 0.02;

function pulled(
  axis: "u" | "v", low: number, high: number, edge: -1 | 0 | 1, by: number, lines: readonly SnapLine[], reach: number, round: number,
): { readonly low: number; readonly high: number; readonly met: readonly SnapLine[] } {
  if (edge === 0) return { low, high, met: [] };
  const { at, met } = edge === -1 ? snapEdge(axis, low + by, high, lines, reach, round) : snapEdge(axis, high + by, low, lines, reach, round);
  return edge === -1 ? { low: Math.min(at, high - SMALLEST), high, met } : { low, high: Math.max(at, low + SMALLEST), met };
}
