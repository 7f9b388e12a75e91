import type { Build } from "../build/build.ts";
import type { HoldPoint, LabourWork } from "../takeoff/labour.ts";
import type { After, Draft } from "./draft.ts";
import { floorItems } from "./liningItems.ts";
import { coatItems, CURE, type ShellDone } from "./shellItems.ts";

const IN_OPENINGS = ["door", "window", "hatch", "louvre", "screen", "damper", "cable entry"];

/** Doors and windows, floor, trim, paint, equipment and items, the last hold points, delivery. */
export function fitOutItems(
  build: Build,
  plan: Draft,
  holds: readonly HoldPoint[],
  labour: readonly LabourWork[],
  { coated }: ShellDone,
  lined: After,
): void {
  const fit = (kind: string, after: After): After =>
    plan.work(`fit/${kind.replaceAll(" ", "-")}`, `fit: ${kind}`, ({ task }) => task === `fit ${kind}`, after);
  const closed = IN_OPENINGS.flatMap((kind) => fit(kind, [...lined, ...coated]));
  const floored = build.job.floor.laid === "after walls" ? floorItems(plan, labour, [...lined, ...closed]) : [...lined, ...closed];
  const trimmed = plan.work("trim", "trim around openings", ({ task }) => task === "trim", floored);
  const painted = coatItems(build, plan, ["inside"], trimmed);
  const cooling = fit("split unit", painted);
  if (holds.includes("refrigerant")) refrigerantItems(plan, cooling);
  const fitted = ["fan", "heater"].flatMap((kind) => fit(kind, painted));
  plan.work("items", "place fit-out items", ({ task }) => task === "place item", [...cooling, ...fitted]);
  const inspected = plan.hold(
    "hold/final",
    "hold point: final inspection",
    "licensed electrician, engineer in charge and local authority: the finished box against the papers",
    ({ task, place }) => task === "inspect" && place === "final",
    plan.open().filter((id) => !id.startsWith(CURE)),
  );
  const cures = plan.open().filter((id) => id.startsWith(CURE));
  plan.work("deliver", "weigh, load and deliver", ({ task }) => task === "weigh and load", [...inspected, ...cures]);
}

function refrigerantItems(plan: Draft, after: After): void {
  const charged = plan.work("refrigerant", "join, test, evacuate and charge refrigerant lines", ({ task }) => task === "refrigerant work", after);
  plan.hold(
    "hold/refrigerant",
    "hold point: refrigerant",
    "licensed refrigeration mechanic: pressure test, evacuation and charge",
    ({ task, place }) => task === "inspect" && place === "refrigerant",
    charged,
  );
}
