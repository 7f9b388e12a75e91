import type { ReactElement } from "react";
import type { Screen } from "../../river/screen.ts";
import { shownLength } from "../state/lengthText.ts";
import type { Selection } from "../state/selection.ts";
import { useSettings, type LayerId } from "../state/settings.ts";
import type { TypedFile } from "../state/typedFile.ts";
import { clearPath, frontLine, openingLines, sweepPaths } from "./glyphs.ts";
import { rectPath } from "./partPaths.ts";
import type { Thing } from "./things.ts";
import { matrixText, type Placement } from "./unfold.ts";

interface Shown {
  readonly placement: Placement;
  readonly things: readonly Thing[];
  readonly file: TypedFile;
  readonly screen: Screen;
  readonly layers: Readonly<Record<LayerId, boolean>>;
  readonly selection: Selection | undefined;
  readonly lit: readonly string[];
}

/** The face itself and what can be moved on it, each to be picked by hand, by key or by a screen reader. */
export function FaceThings({ placement, things, file, screen, layers, selection, lit }: Shown): ReactElement {
  const { surface, key } = placement;
  const on = things.filter((thing) => thing.surface === surface.id && layers[thing.kind === "item" ? "items" : "openings"]);
  const isFloor = surface.id === "floor";
  return (
    <g transform={matrixText(placement)} role="group" aria-label={placementName(placement)}>
      <path
        className="u-face"
        d={rectPath(surface.inside)}
        role="button"
        tabIndex={0}
        aria-label={`${placementName(placement)}, ${String(on.length)} on it`}
        aria-pressed={selection?.kind === "face" && selection.id === surface.id}
        data-hit="face"
        data-key={key}
      />
      {layers.clearSpaces && isFloor && (
        <g aria-hidden="true">
          <path className="u-sweep" d={sweepPaths(screen, surface)} />
          <path className="u-clear" d={on.map((thing) => clearPath(file, thing)).join("")} />
        </g>
      )}
      <g role="list" aria-label={`On ${placementName(placement)}`}>
        {on.map((thing) => (
          <g key={thing.id} role="listitem">
            <ThingShape thing={thing} placement={placement} file={file} picked={isPicked(thing, selection)} lit={lit.includes(thing.id)} />
          </g>
        ))}
      </g>
    </g>
  );
}

interface OneThing {
  readonly thing: Thing;
  readonly placement: Placement;
  readonly file: TypedFile;
  readonly picked: boolean;
  readonly lit: boolean;
}

function ThingShape({ thing, placement, file, picked, lit }: OneThing): ReactElement {
  const system = useSettings((settings) => settings.system);
  const { id, kind, what, rect, around } = thing;
  const opening = kind === "opening" ? file.openings?.find((one) => one.id === id) : undefined;
  const item = kind === "item" && thing.surface === "floor" ? file.items?.find((one) => one.id === id) : undefined;
  const length = (metres: number): string => shownLength(metres, system);
  const size = `${length(rect.u1 - rect.u0)} by ${length(rect.v1 - rect.v0)}`;
  const place = kind === "partition" ? `at ${length(thing.middle)}` : `along ${length(rect.u0)}, ${placeWord(placement)} ${length(rect.v0)}, ${size}`;
  return (
    <g
      className={`u-thing is-${kind}${picked ? " is-picked" : ""}${lit ? " is-lit" : ""}`}
      role="button"
      tabIndex={0}
      aria-label={`${id}, ${what}, ${place}`}
      aria-pressed={picked}
      data-hit="thing"
      data-id={id}
      data-key={placement.key}
    >
      {around !== rect && <path className="u-around" d={rectPath(around)} />}
      <path className="u-body" d={rectPath(rect)} />
      {opening !== undefined && <path className="u-glyph" d={openingLines(opening.kind, rect, opening.swing?.hinge)} />}
      {item !== undefined && <path className="u-front" d={frontLine(item.front ?? "right", rect)} />}
    </g>
  );
}

/** "left wall"; "partition P1, door side". */
export function placementName({ surface, side }: Placement): string {
  return side === "inside" ? surface.name : `${surface.name}, ${side}`;
}

function placeWord({ surface }: Placement): "up" | "across" {
  return surface.inward.z === 0 ? "up" : "across";
}

function isPicked(thing: Thing, selection: Selection | undefined): boolean {
  return selection !== undefined && selection.kind === thing.kind && selection.id === thing.id;
}
