import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import type { System } from "../../units/format.ts";
import { shownLength } from "../state/lengthText.ts";
import { useSettings } from "../state/settings.ts";
import type { Bounds } from "./geometry/measure.ts";
import { useSolid } from "./useSolid.ts";

/** Which way a section may lie, and from where its place is told. */
const CUTS = [
  { name: "Across the length", from: "from the blind end" },
  { name: "Along the length", from: "from the left side" },
  { name: "Level", from: "above the bare floor" },
] as const;

/** Whether and where the build is cut open. */
export function SectionBar({ bounds }: { readonly bounds: Bounds }): ReactElement {
  const { plane, cut } = useSolid();
  const system = useSettings((settings) => settings.system);
  const choose = (value: string): void => {
    const axis = AXIS_OF[value];
    cut(axis === undefined ? undefined : { axis, at: (bounds.from[axis] + bounds.to[axis]) / 2, takes: axis === 1 ? -1 : 1 });
  };
  return (
    <div className="s-bar" role="group" aria-label="Section">
      <label className="s-field">
        <span>Section</span>
        <select className="field-input" value={plane === undefined ? "none" : String(plane.axis)} onChange={({ target }) => choose(target.value)}>
          <option value="none">None</option>
          {CUTS.map(({ name }, axis) => (
            <option key={name} value={axis}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {plane === undefined ? (
        <p className="quiet s-hint">Cut the build open and drag the cut through it.</p>
      ) : (
        <>
          <label className="s-field is-wide">
            <span>
              Cut at <output className="figures">{shownLength(plane.at, system)}</output> {CUTS[plane.axis].from}
            </span>
            <input
              type="range"
              className="s-slider"
              min={bounds.from[plane.axis]}
              max={bounds.to[plane.axis]}
              step={STEP[system]}
              value={plane.at}
              aria-label={`Cut at, ${CUTS[plane.axis].from}`}
              aria-valuetext={shownLength(plane.at, system)}
              onChange={({ target }) => cut({ ...plane, at: target.valueAsNumber })}
            />
          </label>
          <Button className="button" onPress={() => cut({ ...plane, takes: plane.takes === 1 ? -1 : 1 })}>
            Take away {TAKEN[plane.axis][plane.takes === 1 ? 0 : 1]}
          </Button>
        </>
      )}
    </div>
  );
}

const AXIS_OF: Readonly<Record<string, 0 | 1 | 2>> = { "0": 0, "1": 1, "2": 2 };

/** What a section can take away: the side of smaller coordinates, then of greater ones. */
const TAKEN = [["the blind end", "the door end"], ["the left", "the right"], ["what is below", "what is above"]] as const;

/** 5 mm, or 1/4 in. */
const STEP: Readonly<Record<System, number>> = { metric: 0.005, imperial: 0.00635 };
