import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import { LAYER_NAMES } from "../state/settings.ts";
import { nextToPeel, nextToPutBack, type SolidLayer } from "./layers.ts";
import type { Solid } from "./solids.ts";
import { useSolid } from "./useSolid.ts";

interface Shown {
  readonly solids: readonly Solid[];
  readonly present: readonly SolidLayer[];
  readonly onPeel: () => void;
  readonly onPutBack: () => void;
}

/** The layers from the outside in, each with its number of parts: peeled one at a time, or switched one by one. */
export function LayerList({ solids, present, onPeel, onPutBack }: Shown): ReactElement {
  const { hidden, show } = useSolid();
  const off = nextToPeel(present, hidden);
  const on = nextToPutBack(present, hidden);
  return (
    <div className="s-layers" role="group" aria-label="Layers from the outside in">
      <div className="s-peel">
        <Button className="button" isDisabled={off === undefined} onPress={onPeel} aria-label={off === undefined ? "Peel" : `Peel ${LAYER_NAMES[off]}`}>
          Peel
        </Button>
        <Button className="button" isDisabled={on === undefined} onPress={onPutBack} aria-label={on === undefined ? "Put back" : `Put back ${LAYER_NAMES[on]}`}>
          Put back
        </Button>
      </div>
      <ol className="plain-list">
        {present.map((layer) => {
          const shown = !hidden.includes(layer);
          const count = solids.filter((solid) => solid.layer === layer).length;
          return (
            <li key={layer}>
              <label className={`s-layer${shown ? "" : " is-off"}`}>
                <input type="checkbox" className="only-heard" checked={shown} onChange={({ target }) => show(layer, target.checked)} />
                <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
                  <rect className={`s-key is-${layer.startsWith("board") ? "board" : layer}`} x="1" y="1" width="14" height="14" />
                  {shown && <path className="s-tick" d="M3.5 8.5 7 12l5.5-8" />}
                </svg>
                <span>{LAYER_NAMES[layer]}</span>
                <span className="s-count figures">{count === 1 ? "1 part" : `${String(count)} parts`}</span>
              </label>
            </li>
          );
        })}
      </ol>
      <p className="s-note quiet">Bars are drawn as the block that their section takes. Coats have no thickness here, and what comes off before delivery is left out.</p>
    </div>
  );
}
