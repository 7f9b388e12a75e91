import type { ReactElement } from "react";
import type { Rect } from "../../river/screen.ts";
import type { Handle } from "./gestures/states.ts";
import type { Thing } from "./things.ts";
import { toSheet, type Placement } from "./unfold.ts";
import { toScreen, type View } from "./view.ts";

const ALL: readonly Handle[] = ([-1, 0, 1] as const)
  .flatMap((u) => ([-1, 0, 1] as const).map((v) => ({ u, v })))
  .filter(({ u, v }) => u !== 0 || v !== 0);

interface Shown {
  readonly thing: Thing;
  readonly placement: Placement;
  readonly view: View;
}

/** Grips on the edges and corners of the picked thing, as large as a finger needs whatever the zoom. */
export function Handles({ thing, placement, view }: Shown): ReactElement {
  const { pulls, rect } = thing;
  const handles = ALL.filter(({ u, v }) => (u === 0 || pulls.u) && (v === 0 || pulls.v));
  return (
    <g aria-hidden="true">
      {handles.map((handle) => {
        const { x, y } = toScreen(view, toSheet(placement, pointOf(rect, handle)));
        return (
          <g key={`${String(handle.u)} ${String(handle.v)}`} data-hit="handle" data-id={thing.id} data-key={placement.key} data-u={handle.u} data-v={handle.v} className="u-handle">
            <rect className="u-grip" x={x - 10} y={y - 10} width="20" height="20" />
            <rect x={x - 4} y={y - 4} width="8" height="8" />
          </g>
        );
      })}
    </g>
  );
}

function pointOf({ u0, u1, v0, v1 }: Rect, { u, v }: Handle): { readonly u: number; readonly v: number } {
  return { u: between(u0, u1, u), v: between(v0, v1, v) };
}

function between(low: number, high: number, side: -1 | 0 | 1): number {
  return side === 0 ? (low + high) / 2 : side < 0 ? low : high;
}
