import { depthAt, wavePoints } from "../../../river/shapes.ts";
import type { Part, Surface } from "../../../river/screen.ts";
import type { Form } from "./form.ts";
import { blockForm, prismForm } from "./prism.ts";
import { reliefForm } from "./relief.ts";

/**
 * The form of a part: sheets with their real profile, foam with the troughs that it fills, boards with their true outline,
 * bars and bought things as the block that they take. Undefined for what has no form: coats, the rest of the box, and
 * what comes off again before delivery.
 */
export function partForm(part: Part, surface: Surface): Form | undefined {
  const { shape, rect, depth } = part;
  if (part.temporary || part.role === "rest of the box") return undefined;
  switch (shape.kind) {
    case "film":
      return undefined;
    case "bar":
    case "block":
      return blockForm(surface, rect, depth);
    case "panel":
      return prismForm(surface, shape.outline, depth);
    case "sheet": {
      const wave = waveOf(surface);
      if (wave === undefined) throw new RangeError(`the sheet ${part.id} lies on a surface without a profile`);
      const { thickness, ...relief } = wave;
      return reliefForm(surface, { ...relief, outline: shape.outline, front: wave.at, back: (u) => wave.at(u) - thickness });
    }
    case "fill": {
      const wave = waveOf(surface);
      if (wave === undefined) return prismForm(surface, shape.outline, depth);
      const { bends, zone, at } = wave;
      return reliefForm(surface, { bends, zone, outline: shape.outline, front: () => depth.to, back: (u, inZone) => (inZone ? at(u) : 0) });
    }
  }
}

/** The sheet's inner side on a surface: where it bends, and its w at u. */
function waveOf({ profile, panel }: Surface) {
  if (profile === undefined) return undefined;
  const points = wavePoints(profile, 0, panel.u1 - panel.u0);
  return {
    bends: points.map(({ x }) => panel.u0 + x),
    zone: panel,
    thickness: profile.thickness,
    at: (u: number): number => -depthAt(profile, u - panel.u0),
  };
}
