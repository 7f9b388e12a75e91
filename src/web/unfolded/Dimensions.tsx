import type { ReactElement } from "react";
import type { Surface } from "../../river/screen.ts";
import { shownLength } from "../state/lengthText.ts";
import { useSettings } from "../state/settings.ts";
import type { Thing } from "./things.ts";
import { GAP, toSheet, type Placement } from "./unfold.ts";
import { toScreen, type View } from "./view.ts";

interface Shown {
  readonly placements: readonly Placement[];
  readonly things: readonly Thing[];
  readonly view: View;
}

/** Pixels from a face's edge to its row of running dimensions. */
const OFF = 11;
/** Pixels between faces without which there is no room for figures. */
const ROOM = 20;
/** About what a figure's letter takes, pixels. */
const LETTER = 5.6;
const BETWEEN = 8;

/** Running dimensions along each face, from its origin to the edges of its openings and to its far end; metric ones in mm, as on papers. */
export function Dimensions({ placements, things, view }: Shown): ReactElement | null {
  if (view.scale * GAP < ROOM) return null;
  return (
    <g className="u-dimensions" aria-hidden="true">
      {placements.map((placement) => (
        <Running key={placement.key} placement={placement} view={view} marks={marksOn(placement.surface, things)} />
      ))}
    </g>
  );
}

function Running({ placement, view, marks }: { readonly placement: Placement; readonly view: View; readonly marks: readonly number[] }): ReactElement {
  const system = useSettings((settings) => settings.system);
  const { outside } = placement.surface;
  const low = placement.surface.inward.z !== 0 || placement.side !== "inside";
  const v = low ? outside.v0 : outside.v1;
  const away = low ? -1 : 1;
  const at = (u: number): { readonly x: number; readonly y: number } => {
    const { x, y } = toScreen(view, toSheet(placement, { u, v }));
    return { x: x + placement.v.x * away * OFF, y: y + placement.v.y * away * OFF };
  };
  const upright = placement.u.x === 0;
  const first = at(marks[0] ?? outside.u0);
  const last = at(marks.at(-1) ?? outside.u1);
  return (
    <g>
      <line x1={first.x} y1={first.y} x2={last.x} y2={last.y} />
      {spread(marks.map((u) => ({ u, text: shownLength(u, system).replace(" mm", "") })), view.scale).map(({ u, text, named }) => {
        const { x, y } = at(u);
        return (
          <g key={u}>
            <line x1={x - (upright ? 3 : 0)} y1={y - (upright ? 0 : 3)} x2={x + (upright ? 3 : 0)} y2={y + (upright ? 0 : 3)} />
            {named && (
              <text
                className="u-text is-dimension"
                textAnchor="middle"
                {...(upright ? { transform: `translate(${String(x + placement.v.x * away * 6 + 3)} ${String(y)}) rotate(-90)` } : { x, y: y + placement.v.y * away * 8 + 3.5 })}
              >
                {text}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

/** Places along a face that are measured: its origin, its openings' clear edges, partitions on floor and roof, its far end. */
function marksOn(surface: Surface, things: readonly Thing[]): readonly number[] {
  const ends = surface.inward.z === 0 ? [surface.panel.u0, surface.panel.u1] : [surface.inside.u0, surface.inside.u1];
  const edges = things
    .filter((thing) => thing.surface === surface.id && thing.kind !== "item")
    .flatMap((thing) => (thing.kind === "partition" ? [thing.middle] : [thing.rect.u0, thing.rect.u1]));
  return [...new Set([...ends, ...edges])].sort((a, b) => a - b);
}

interface Figure {
  readonly u: number;
  readonly text: string;
}

/** All marks, with figures where they do not run into each other; the ends always have theirs. */
function spread(marks: readonly Figure[], scale: number): readonly (Figure & { readonly named: boolean })[] {
  const end = marks.at(-1);
  let last: Figure | undefined;
  return marks.map((mark) => {
    const named = mark === end || ((last === undefined || apart(last, mark, scale)) && (end === undefined || apart(mark, end, scale)));
    if (named) last = mark;
    return { ...mark, named };
  });
}

function apart(a: Figure, b: Figure, scale: number): boolean {
  return (b.u - a.u) * scale >= ((a.text.length + b.text.length) / 2) * LETTER + BETWEEN;
}
