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
          <g key={`${String(handle.u)} ${String(handle.v)}`} data-hit="handle" data-id={thing.id} data-key={placement.key} data-u={handle.u} data-v={handle.v} className="u-handle" transform={`translate(${String(x)} ${String(y)})`}>
            <rect className="u-grip" transform={outward(placement, handle)} />
            <rect className="u-grip-seen" />
          </g>
        );
      })}
    </g>
  );
}

/** Pixels by which a grip reaches farther out than in, so that a low thing can still be taken by its middle. */
const OUT = 6;

function outward({ u, v }: Placement, handle: Handle): string {
  return `translate(${String(OUT * (u.x * handle.u + v.x * handle.v))} ${String(OUT * (u.y * handle.u + v.y * handle.v))})`;
}

function pointOf({ u0, u1, v0, v1 }: Rect, { u, v }: Handle): { readonly u: number; readonly v: number } {
  return { u: between(u0, u1, u), v: between(v0, v1, v) };
}

function between(low: number, high: number, side: -1 | 0 | 1): number {
  return side === 0 ? (low + high) / 2 : side < 0 ? low : high;
}
