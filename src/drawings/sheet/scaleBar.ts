import type { Vec2 } from "../../geometry/vector.ts";
import type { System } from "../../units/display.ts";
import { formatLength } from "../../units/format.ts";
import type { DrawnShape } from "../drawing.ts";
import { TEXT } from "../style.ts";
import { textWidth } from "./text.ts";

const MM = 0.001;
const FOOT = 0.3048;
const STEPS: Readonly<Record<System, readonly number[]>> = {
  metric: [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2],
  imperial: [FOOT / 12, FOOT / 6, FOOT / 4, FOOT / 2, FOOT, 2 * FOOT, 4 * FOOT],
};
const FIELDS = 4;
const BAR = 1.2 * MM;

/** A bar of four fields that stays true when the sheet is copied smaller; at most `width` wide with its text. */
export function scaleBar(at: Vec2, ratio: number, units: System, width: number): readonly DrawnShape[] {
  const textRoom = 15 * MM;
  const step = STEPS[units].filter((each) => (each * FIELDS) / ratio <= width - textRoom).at(-1);
  if (step === undefined) throw new RangeError(`no scale bar for 1:${ratio} fits ${width} m`);
  const field = step / ratio;
  const shapes = Array.from({ length: FIELDS }, (_, index): DrawnShape => {
    const [x0, x1] = [at.x + index * field, at.x + (index + 1) * field];
    const points = [{ x: x0, y: at.y }, { x: x1, y: at.y }, { x: x1, y: at.y + BAR }, { x: x0, y: at.y + BAR }];
    return { kind: "polyline", layer: index % 2 === 0 ? "text" : "sheet", points, closed: true, filled: true };
  });
  const end = at.x + FIELDS * field;
  const text = units === "metric" ? metres(step * FIELDS) : formatLength(step * FIELDS, units);
  const y = at.y + BAR + 0.9 * MM;
  return [
    ...shapes,
    { kind: "text", layer: "text", at: { x: at.x - textWidth("0", TEXT.small) / 2, y }, text: "0", height: TEXT.small, align: "left" },
    { kind: "text", layer: "text", at: { x: end, y }, text, height: TEXT.small, align: "middle" },
  ];
}

function metres(length: number): string {
  return length < 1 ? formatLength(length, "metric") : `${Number(length.toFixed(3))} m`;
}
