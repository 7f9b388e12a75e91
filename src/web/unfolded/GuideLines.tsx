import type { ReactElement } from "react";
import type { Vec2 } from "../../river/screen.ts";
import { shownLength } from "../state/lengthText.ts";
import { useSettings } from "../state/settings.ts";
import type { Distance } from "./distances.ts";
import { toSheet, type Placement } from "./unfold.ts";
import type { Guides } from "./useConductor.ts";
import { toScreen, type View } from "./view.ts";

/** Distances from the thing in the hand, and the lines that its edges met. */
export function GuideLines({ guides, view }: { readonly guides: Guides; readonly view: View }): ReactElement {
  const system = useSettings((settings) => settings.system);
  const { placement, met, distances } = guides;
  const { outside } = placement.surface;
  const at = (u: number, v: number): Vec2 => toScreen(view, toSheet(placement, { u, v }));
  return (
    <g className="u-guides" aria-hidden="true">
      {met.map(({ axis, at: place, what }) => {
        const from = axis === "u" ? at(place, outside.v0) : at(outside.u0, place);
        const to = axis === "u" ? at(place, outside.v1) : at(outside.u1, place);
        return (
          <g key={`${axis} ${String(place)}`}>
            <line className="u-met" x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
            <text className="u-text is-met" x={from.x + 4} y={from.y + (axis === "u" ? 12 : -4)}>{what}</text>
          </g>
        );
      })}
      {distances.map((distance) => (
        <DistanceLine key={`${distance.axis} ${distance.toWhat} ${String(distance.to)}`} distance={distance} placement={placement} view={view} text={shownLength(distance.length, system)} />
      ))}
    </g>
  );
}

interface OneDistance {
  readonly distance: Distance;
  readonly placement: Placement;
  readonly view: View;
  readonly text: string;
}

function DistanceLine({ distance, placement, view, text }: OneDistance): ReactElement {
  const { axis, across, from, to, near } = distance;
  const point = (place: number): Vec2 => toScreen(view, toSheet(placement, axis === "u" ? { u: place, v: across } : { u: across, v: place }));
  const a = point(from);
  const b = point(to);
  const flat = Math.abs(a.x - b.x) > Math.abs(a.y - b.y);
  const tick = flat ? { x: 0, y: 4 } : { x: 4, y: 0 };
  return (
    <g>
      <path
        className="u-distance"
        d={`M${a.x} ${a.y}L${b.x} ${b.y}M${a.x - tick.x} ${a.y - tick.y}l${2 * tick.x} ${2 * tick.y}M${b.x - tick.x} ${b.y - tick.y}l${2 * tick.x} ${2 * tick.y}`}
      />
      <text className="u-text is-distance" x={(a.x + b.x) / 2 + (flat ? 0 : near ? -6 : 6)} y={(a.y + b.y) / 2 + (flat ? -5 : 4)} textAnchor={flat ? "middle" : near ? "end" : "start"}>
        {text}
      </text>
    </g>
  );
}
