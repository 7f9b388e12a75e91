import type { Rect, Screen, Surface, Sweep } from "../../river/screen.ts";
import type { TypedFile } from "../state/typedFile.ts";
import { rectPath } from "./partPaths.ts";
import { lengthAt, type Thing } from "./things.ts";

/** Lines within an opening that tell its kind, as the trade draws them in elevation, in the face's u and v. */
export function openingLines(kind: string, { u0, u1, v0, v1 }: Rect, hinge: "left" | "right" | undefined): string {
  const [w, h] = [u1 - u0, v1 - v0];
  const [mu, mv] = [(u0 + u1) / 2, (v0 + v1) / 2];
  switch (kind) {
    // Hinged leaves: lines that meet at the middle of the side with the handle start from the hinge's corners.
    case "personnel door":
    case "hatch": {
      const [from, to] = hinge === "right" ? [u1, u0] : [u0, u1];
      return `M${from} ${v0}L${to} ${mv}L${from} ${v1}`;
    }
    case "window": {
      const by = Math.min(w, h) * 0.08;
      return rectPath({ u0: u0 + by, u1: u1 - by, v0: v0 + by, v1: v1 - by });
    }
    case "fan": {
      const r = Math.min(w, h) * 0.38;
      return `M${mu - r} ${mv}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0M${mu} ${mv - r}V${mv + r}M${mu - r} ${mv}H${mu + r}`;
    }
    case "intake":
      return [0.2, 0.4, 0.6, 0.8].map((share) => `M${u0 + w * 0.1} ${v0 + h * share}H${u1 - w * 0.1}`).join("");
    default:
      return `M${u0} ${v0}L${u1} ${v1}M${u0} ${v1}L${u1} ${v0}`;
  }
}

/** The line of an item's front, which people work at, on the floor. */
export function frontLine(front: string, { u0, u1, v0, v1 }: Rect): string {
  switch (front) {
    case "blindEnd":
      return `M${u0} ${v0}V${v1}`;
    case "doorEnd":
      return `M${u1} ${v0}V${v1}`;
    case "left":
      return `M${u0} ${v0}H${u1}`;
    default:
      return `M${u0} ${v1}H${u1}`;
  }
}

/** The clear space around an item on the floor, as the file has it now. */
export function clearPath(file: TypedFile, thing: Thing): string {
  const item = file.items?.find(({ id }) => id === thing.id);
  if (item?.clear === undefined) return "";
  const { front: frontText = NO_LENGTH, back: backText = NO_LENGTH, sides: sidesText = NO_LENGTH } = item.clear;
  const [front, back, sides] = [lengthAt(frontText), lengthAt(backText), lengthAt(sidesText)];
  if (front === undefined || back === undefined || sides === undefined || front + back + sides === 0) return "";
  const { u0, u1, v0, v1 } = thing.rect;
  switch (item.front ?? "right") {
    case "blindEnd":
      return rectPath({ u0: u0 - front, u1: u1 + back, v0: v0 - sides, v1: v1 + sides });
    case "doorEnd":
      return rectPath({ u0: u0 - back, u1: u1 + front, v0: v0 - sides, v1: v1 + sides });
    case "left":
      return rectPath({ u0: u0 - sides, u1: u1 + sides, v0: v0 - front, v1: v1 + back });
    case "right":
      return rectPath({ u0: u0 - sides, u1: u1 + sides, v0: v0 - back, v1: v1 + front });
  }
}

/** What a clear space that is not asked for reads as in the job file. */
const NO_LENGTH = "0 mm";

/** What the leaves sweep, on the floor's u and v. */
export function sweepPaths({ build }: Screen, floor: Surface): string {
  return build.openings.flatMap(({ sweeps }) => sweeps.map((sweep) => sweepPath(sweep, floor))).join("");
}

function sweepPath({ hinge, radius, from, to }: Sweep, { origin }: Surface): string {
  const [u, v] = [hinge.x - origin.x, hinge.y - origin.y];
  const at = (angle: number): string => `${u + radius * Math.cos(angle)} ${v + radius * Math.sin(angle)}`;
  const large = to - from > Math.PI ? 1 : 0;
  return `M${u} ${v}L${at(from)}A${radius} ${radius} 0 ${large} 1 ${at(to)}Z`;
}
