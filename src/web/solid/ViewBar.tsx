import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import { VIEWS, type ViewName } from "./pose.ts";

interface Shown {
  readonly onView: (view: ViewName) => void;
  /** Multiplies the distance. */
  readonly onZoom: (by: number) => void;
}

const NAMES = Object.keys(VIEWS) as readonly ViewName[];
const ZOOM = 1.3;

/** Where to look from, and how near. */
export function ViewBar({ onView, onZoom }: Shown): ReactElement {
  return (
    <div className="s-acts" role="group" aria-label="View">
      <select className="field-input s-from" aria-label="Look from" value="" onChange={({ target }) => onView(target.value as ViewName)}>
        <option value="" disabled>
          Look from
        </option>
        {NAMES.map((name) => (
          <option key={name} value={name}>
            {VIEWS[name].name}
          </option>
        ))}
      </select>
      <Button className="button" aria-label="Zoom out" onPress={() => onZoom(ZOOM)}>
        −
      </Button>
      <Button className="button" aria-label="Zoom in" onPress={() => onZoom(1 / ZOOM)}>
        +
      </Button>
      <Button className="button" onPress={() => onView("corner")}>
        Whole box
      </Button>
    </div>
  );
}
