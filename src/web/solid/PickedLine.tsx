import type { ReactElement } from "react";
import { useSession } from "../state/session.ts";
import { LAYER_NAMES } from "../state/settings.ts";
import type { SolidLayer } from "./layers.ts";
import type { Solid } from "./solids.ts";

interface Shown {
  readonly picked: readonly Solid[];
  readonly lit: readonly Solid[];
  readonly hidden: readonly SolidLayer[];
}

/** In words what stands out in the picture, and whether a peeled layer keeps it from being seen. */
export function PickedLine({ picked, lit, hidden }: Shown): ReactElement {
  const selection = useSession((session) => session.selection);
  const [first] = picked;
  const peeled = [...new Set(picked.filter(({ layer }) => hidden.includes(layer)).map(({ layer }) => LAYER_NAMES[layer]))];
  return (
    <p className="s-picked" role="status">
      {selection === undefined || first === undefined ? (
        "Press a part to pick it; drag to turn the build."
      ) : (
        <>
          <strong>{selection.id}</strong> {selection.kind === "part" ? first.part.what : `${selection.kind}, ${countOf(picked)}`}
          {peeled.length > 0 && `; peeled: ${peeled.join(", ")}`}
        </>
      )}
      {lit.length > 0 && <span className="s-lit"> Lit up by a finding: {countOf(lit)}.</span>}
    </p>
  );
}

function countOf({ length }: readonly Solid[]): string {
  return length === 1 ? "1 part" : `${String(length)} parts`;
}
