import type { Vec2 } from "../../geometry/vector.ts";
import type { DrawnShape } from "../drawing.ts";

/** Ends of an arc and its utmost points between them. */
export function arcReach(arc: Extract<DrawnShape, { kind: "arc" }>): readonly Vec2[] {
  const quarter = Math.PI / 2;
  const turns = [arc.from, arc.to];
  for (let k = Math.ceil(arc.from / quarter); k * quarter < arc.to; k += 1) turns.push(k * quarter);
  return turns.map((turn) => ({
    x: arc.centre.x + arc.radius * Math.cos(turn),
    y: arc.centre.y + arc.radius * Math.sin(turn),
  }));
}
