import type { ReactElement } from "react";
import type { System } from "../../units/format.ts";
import { shownLength } from "../state/lengthText.ts";
import { useSettings } from "../state/settings.ts";
import { placementName } from "./FaceThings.tsx";
import { placeLabels, type Label } from "./placeLabels.ts";
import type { Thing } from "./things.ts";
import { outline, rectOnSheet, type Placement } from "./unfold.ts";
import { toScreen, type View } from "./view.ts";

interface Shown {
  readonly placements: readonly Placement[];
  readonly things: readonly Thing[];
  readonly view: View;
}

/** Names of faces and ids of things, upright whichever way a face is turned. The names are read from the things themselves. */
export function Labels({ placements, things, view }: Shown): ReactElement {
  const system = useSettings((settings) => settings.system);
  const wanted = placements.flatMap((placement) =>
    things.filter(({ surface }) => surface === placement.surface.id).map((thing) => labelOf(thing, placement, view)),
  );
  return (
    <g aria-hidden="true">
      {placements.map((placement) => (
        <FaceName key={placement.key} placement={placement} view={view} system={system} crowded={placements.length > BOX_FACES} />
      ))}
      {placeLabels(wanted).map(({ key, text, x, y }) => (
        <text key={key} className="u-text is-id" x={x} y={y} textAnchor="middle">
          {text}
        </text>
      ))}
    </g>
  );
}

/** More placements than these are those of a partition, which stand where the left wall's size would be written. */
const BOX_FACES = 6;

interface Name {
  readonly placement: Placement;
  readonly view: View;
  readonly system: System;
  readonly crowded: boolean;
}

/** Long walls and the roof have their name in the free corner to their left, the others above them. */
function FaceName({ placement, view, system, crowded }: Name): ReactElement {
  const { x0, y0, y1 } = outline(placement);
  const at = toScreen(view, { x: x0, y: y0 });
  const foot = toScreen(view, { x: x0, y: y1 });
  const { inside, id } = placement.surface;
  const name = placement.side === "inside" ? capital(placementName(placement)) : `${id}, ${placement.side}`;
  const size = `${shownLength(inside.u1 - inside.u0, system)} × ${shownLength(inside.v1 - inside.v0, system)}`;
  const aside = id === "left" || id === "right" || id === "roof";
  const sized = view.scale > (aside ? 38 : 50) && !(crowded && id === "left");
  const under = (id === "blindEnd" || id === "doorEnd") && view.scale < SMALL;
  if (!aside) {
    return (
      <text className="u-text is-face" x={at.x} y={under ? foot.y + 13 : at.y - 6}>
        <tspan className="is-name">{name}</tspan>
        {sized && <tspan dx="8">{size}</tspan>}
      </text>
    );
  }
  return (
    <text className="u-text is-face" textAnchor="end" x={at.x - 8} y={at.y + 11}>
      <tspan className="is-name">{name}</tspan>
      {sized && (
        <tspan x={at.x - 8} dy="15">
          {size}
        </tspan>
      )}
    </text>
  );
}

/** Below this scale the ends are narrower than their names, which then go where nothing is: under them. */
const SMALL = 30;

/** Things smaller than this on the screen get no name beside them: there would be no room to tell whose it is. */
const NAMED_FROM = 28;

/** The id within the thing where there is room, beside it or over it else. */
function labelOf(thing: Thing, placement: Placement, view: View): Label {
  const { x0, x1, y0, y1 } = rectOnSheet(placement, thing.rect);
  const a = toScreen(view, { x: x0, y: y0 });
  const b = toScreen(view, { x: x1, y: y1 });
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 + 4 };
  const half = thing.id.length * 3.6 + 4;
  const within = b.x - a.x >= 2 * half && b.y - a.y >= 14;
  const over = { x: middle.x, y: a.y - 4 };
  const spots = thing.kind === "partition" ? [over] : within ? [middle] : view.scale < NAMED_FROM ? [] : [{ x: b.x + half, y: middle.y }, over, { x: middle.x, y: b.y + 12 }];
  return { key: `${placement.key} ${thing.id}`, text: thing.id, half, spots };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
