import type { Kind } from "../../units/kinds.ts";
import { parseQuantity } from "../../units/parse.ts";
import { valueAt as valueIn } from "../file.ts";
import { issueAt, listAt, textAt } from "./draft.ts";
import type { CrossCheck, Draft } from "./draft.ts";

/** Pairs of fields that cannot both hold. */
export const contradictions: CrossCheck = (draft) => [
  ...notAbove(draft, "temperature", ["site", "summerDesign", "wetBulb"], ["site", "summerDesign", "dryBulb"], "the dry bulb"),
  ...notAbove(draft, "temperature", ["site", "winterDesign"], ["site", "summerDesign", "dryBulb"], "the summer's dry bulb"),
  ...notAbove(draft, "mass", ["box", "tare"], ["box", "greatestGross"], "the greatest gross mass"),
  ...listAt(draft.raw, ["rooms"]).flatMap((_, index) =>
    notAbove(draft, "temperature", ["rooms", index, "heatTo"], ["rooms", index, "coolTo"], "what the room is cooled to"),
  ),
  ...listAt(draft.raw, ["rooms"]).flatMap((_, index) => humidityTwice(draft, index)),
  ...dueBeforeStart(draft),
];

type Steps = readonly (string | number)[];

function notAbove(draft: Draft, kind: Kind, low: Steps, high: Steps, what: string) {
  const [below, above] = [valueAt(draft, kind, low), valueAt(draft, kind, high)];
  if (below === undefined || above === undefined || below <= above) return [];
  return [issueAt(draft, low, "contradiction", `not above ${what}`, textAt(draft.raw, high))];
}

function valueAt(draft: Draft, kind: Kind, steps: Steps): number | undefined {
  const typed = textAt(draft.raw, steps);
  const read = typed === undefined ? undefined : parseQuantity(kind, typed);
  return read?.ok === true ? read.value : undefined;
}

/** A room's humidity is either held at a value or follows from its class and the weather. */
function humidityTwice(draft: Draft, room: number) {
  const steps = ["rooms", room, "humidityClass"];
  if (valueIn(draft.raw, steps) === undefined || valueIn(draft.raw, ["rooms", room, "humidity"]) === undefined) return [];
  return [issueAt(draft, steps, "contradiction", "either a humidity or a humidity class, not both", undefined)];
}

function dueBeforeStart(draft: Draft) {
  const [start, due] = [textAt(draft.raw, ["shop", "start"]), textAt(draft.raw, ["shop", "due"])];
  if (start === undefined || due === undefined || !DAY.test(start) || !DAY.test(due) || due >= start) return [];
  return [issueAt(draft, ["shop", "due"], "contradiction", "a day not before the start", start)];
}

const DAY = /^\d{4}-\d{2}-\d{2}$/;
