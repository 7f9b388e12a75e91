import type { ReactElement } from "react";
import type { System } from "../../units/format.ts";
import { shownLength } from "../state/lengthText.ts";
import { useSettings } from "../state/settings.ts";
import { placementName } from "./FaceThings.tsx";
import { placeLabels, type Box, type Label, type PlacedLabel } from "./placeLabels.ts";
import type { Thing } from "./things.ts";
import { outline, rectOnSheet, type Placement } from "./unfold.ts";
import { toScreen, type View } from "./view.ts";

interface Shown {
  readonly placements: readonly Placement[];
  readonly things: readonly Thing[];
  readonly view: View;
  /** What is drawn over the labels, on which none may stand. */
  readonly taken: readonly Box[];
}

/** Names of faces and ids of things, upright whichever way a face is turned. The names are read from the things themselves. */
export function Labels({ placements, things: all, view, taken }: Shown): ReactElement {
  // Partitions first: they have the fewest places to go.
  const things = [...all.filter(({ kind }) => kind === "partition"), ...all.filter(({ kind }) => kind !== "partition")];
  const system = useSettings((settings) => settings.system);
  const names = [...placements].sort((a, b) => NAMED_FIRST.indexOf(a.surface.id) - NAMED_FIRST.indexOf(b.surface.id)).map((placement) => nameOf(placement, view));
  const ids = placements.flatMap((placement) => {
    const outlines = things.filter(({ surface }) => surface === placement.surface.id).map((thing) => ({ thing, box: boxOf(thing, placement, view) }));
    return outlines.map(({ thing, box }) => labelOf(thing, box, outlines.filter((one) => one.thing !== thing).map((one) => one.box), placement, view));
  });
  const placed = placeLabels([...names, ...ids], taken);
  return (
    <g aria-hidden="true">
      {placed.map((label) => {
        const placement = placements.find(({ key }) => key === label.key);
        return placement === undefined ? (
          <text key={label.key} className="u-text is-id" x={label.x} y={label.y} textAnchor="middle">
            {label.text}
          </text>
        ) : (
          <FaceName key={label.key} placement={placement} at={label} size={isSized(placement, view, placements.length > BOX_FACES) ? sizeOf(placement, system) : ""} />
        );
      })}
    </g>
  );
}

/** More placements than these are those of a partition, which stand where the left wall's size would be written. */
const BOX_FACES = 6;
/** The ends come last, for they have most places to go; partitions, which are not in the list, come first. */
const NAMED_FIRST: readonly string[] = ["roof", "right", "left", "floor", "doorEnd", "blindEnd"];
/** About what a letter of a name takes, pixels. */
const NAME_LETTER = 7;

/** Long walls and the roof have their name in the free corner to their left, the others above or under them. */
function nameOf(placement: Placement, view: View): Label {
  const { x0, x1, y0, y1 } = outline(placement);
  const [a, b] = [toScreen(view, { x: x0, y: y0 }), toScreen(view, { x: x1, y: y1 })];
  const text = placement.side === "inside" ? capital(placementName(placement)) : `${placement.surface.id}, ${placement.side}`;
  const half = (text.length * NAME_LETTER) / 2;
  const label = { key: placement.key, text, half };
  if (isAside(placement)) return { ...label, spots: [{ x: a.x - 8 - half, y: a.y + 11 }, { x: a.x - 8 - half, y: b.y - 2 }] };
  const [above, under] = [a.y - 6, b.y + 13];
  const beside = { x: placement.surface.id === "doorEnd" ? b.x + 4 + half : a.x - 4 - half, y: (a.y + b.y) / 2 + 4 };
  return { ...label, spots: [{ x: a.x + half, y: above }, { x: b.x - half, y: above }, { x: a.x + half, y: under }, { x: b.x - half, y: under }, beside] };
}

function isAside({ surface: { id } }: Placement): boolean {
  return id === "left" || id === "right" || id === "roof";
}

/** Whether there is room for the face's size too. */
function isSized(placement: Placement, { scale }: View, crowded: boolean): boolean {
  return scale > (isAside(placement) ? 38 : 50) && !(crowded && placement.surface.id === "left");
}

function sizeOf({ surface: { inside } }: Placement, system: System): string {
  return `${shownLength(inside.u1 - inside.u0, system)} × ${shownLength(inside.v1 - inside.v0, system)}`;
}

interface Name {
  readonly placement: Placement;
  readonly at: PlacedLabel;
  readonly size: string;
}

function FaceName({ placement, at: { x, y, text }, size }: Name): ReactElement {
  const half = (text.length * NAME_LETTER) / 2;
  if (!isAside(placement)) {
    return (
      <text className="u-text is-face" x={x - half} y={y}>
        <tspan className="is-name">{text}</tspan>
        {size !== "" && <tspan dx="8">{size}</tspan>}
      </text>
    );
  }
  return (
    <text className="u-text is-face" textAnchor="end" x={x + half} y={y}>
      <tspan className="is-name">{text}</tspan>
      {size !== "" && (
        <tspan x={x + half} dy="15">
          {size}
        </tspan>
      )}
    </text>
  );
}

/** Things smaller than this on the screen get no name beside them: there would be no room to tell whose it is. */
const NAMED_FROM = 28;

function boxOf(thing: Thing, placement: Placement, view: View): Box {
  const { x0, x1, y0, y1 } = rectOnSheet(placement, thing.rect);
  const [a, b] = [toScreen(view, { x: x0, y: y0 }), toScreen(view, { x: x1, y: y1 })];
  return { x0: a.x, x1: b.x, y0: a.y, y1: b.y };
}

/**
 * The id within the thing where there is room, beside it or over it else; never on the outline of another, whose it would
 * seem to be, but for one that the thing stands on as a whole.
 */
function labelOf(thing: Thing, box: Box, others: readonly Box[], placement: Placement, view: View): Label {
  const { x0, x1, y0, y1 } = box;
  const middle = { x: (x0 + x1) / 2, y: (y0 + y1) / 2 + 4 };
  const half = thing.id.length * 3.6 + 4;
  const label = { key: `${placement.key} ${thing.id}`, text: thing.id, half };
  const over = { x: middle.x, y: y0 - 4 };
  if (thing.kind === "partition") return { ...label, spots: [over, { x: middle.x, y: y1 + 12 }] };
  if (x1 - x0 >= 2 * half && y1 - y0 >= 14) {
    const spots = [middle, { x: x0 + half, y: middle.y }, { x: x1 - half, y: middle.y }, { x: middle.x, y: y0 + 12 }, { x: middle.x, y: y1 - 4 }];
    return { ...label, spots, not: others.filter((other) => !isWithin(box, other)) };
  }
  const beside = view.scale < NAMED_FROM ? [] : [{ x: x1 + half, y: middle.y }, over, { x: middle.x, y: y1 + 12 }, { x: x0 - half, y: middle.y }];
  return { ...label, spots: beside, not: others };
}

function isWithin(inner: Box, outer: Box): boolean {
  return inner.x0 >= outer.x0 && inner.x1 <= outer.x1 && inner.y0 >= outer.y0 && inner.y1 <= outer.y1;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
