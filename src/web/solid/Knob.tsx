import type { PointerEvent, ReactElement } from "react";
import type { Bounds } from "./geometry/measure.ts";
import { pictured, placeOnAxis, rayThrough, type Pose, type Triple } from "./pose.ts";
import { holdOf } from "./sectionFrame.ts";
import { useSolid } from "./useSolid.ts";
import type { Size } from "./useStage.ts";

interface Shown {
  readonly bounds: Bounds;
  readonly size: Size;
}

/** The hold by which the section is dragged in the picture; the slider does the same by key, so this is for the pointer alone. */
export function Knob({ bounds, size }: Shown): ReactElement | null {
  const { pose, plane, cut } = useSolid();
  if (pose === undefined || plane === undefined) return null;
  const aspect = size.width / size.height;
  const hold = holdOf(bounds, plane);
  const at = pictured(pose, aspect, hold);
  if (at === undefined) return null;
  const drag = (event: PointerEvent<HTMLDivElement>): void => {
    const picture = event.currentTarget.parentElement?.getBoundingClientRect();
    if (picture === undefined || !event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const x = (2 * (event.clientX - picture.left)) / size.width - 1;
    const y = 1 - (2 * (event.clientY - picture.top)) / size.height;
    const place = placeOnAxis(rayThrough(pose, aspect, x, y), hold, plane.axis);
    if (place === undefined) return;
    cut({ ...plane, at: Math.min(Math.max(place, bounds.from[plane.axis]), bounds.to[plane.axis]) });
  };
  const left = ((at.x + 1) / 2) * size.width;
  const top = ((1 - at.y) / 2) * size.height;
  return (
    <div
      className="s-knob"
      aria-hidden="true"
      style={{ transform: `translate(${left.toFixed(1)}px, ${top.toFixed(1)}px)` }}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={drag}
    >
      <svg viewBox="-20 -20 40 40" width="40" height="40">
        <circle r="13" />
        <path d="M-3 -5 -8 0 -3 5M3 -5 8 0 3 5" transform={`rotate(${leaning(pose, aspect, hold, plane.axis).toFixed(1)})`} />
      </svg>
    </div>
  );
}

/** Degrees by which an axis through a point leans in the picture. */
function leaning(pose: Pose, aspect: number, point: Triple, axis: 0 | 1 | 2): number {
  const [x, y, z] = point;
  const beside: Triple = [x + (axis === 0 ? 0.1 : 0), y + (axis === 1 ? 0.1 : 0), z + (axis === 2 ? 0.1 : 0)];
  const a = pictured(pose, aspect, point);
  const b = pictured(pose, aspect, beside);
  return a === undefined || b === undefined ? 0 : (Math.atan2(a.y - b.y, (b.x - a.x) * aspect) * 180) / Math.PI;
}
