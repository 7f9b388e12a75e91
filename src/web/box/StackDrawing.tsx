import type { ReactElement } from "react";
import type { Layer, LayerStack } from "./layerStack.ts";
import { drawStack, type SheetProfile } from "./stackShapes.ts";

interface Drawn {
  readonly stack: LayerStack;
  readonly profile: SheetProfile | undefined;
  /** What the drawing is called for those who cannot see it. */
  readonly name: string;
  readonly chosen?: Layer | undefined;
  /** Left out where the drawing is only looked at. */
  readonly onChoose?: (layer: Layer) => void;
}

/** A build-up cut through, to scale: outside below, inside above. Choosing a layer here does what its row in the list does. */
export function StackDrawing({ stack, profile, name, chosen, onChoose }: Drawn): ReactElement | null {
  const drawn = drawStack(stack, profile);
  if (drawn === undefined) return null;
  const { box, sheet, layers } = drawn;
  return (
    <svg className="stack-drawing" viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`} role="img" aria-label={name}>
      {layers.map(({ layer, kind, path }) => (
        <path
          key={`${kind} ${layer.steps.join(" ")}`}
          className={`stack-${kind}${layer === chosen ? " is-chosen" : ""}`}
          d={path}
          vectorEffect="non-scaling-stroke"
          onClick={() => onChoose?.(layer)}
        />
      ))}
      <path className="stack-sheet" d={sheet} vectorEffect="non-scaling-stroke" />
    </svg>
  );
}
