import type { ReactElement } from "react";
import { VerdictShape } from "../style/VerdictMark.tsx";
import type { Mark } from "./marks.ts";
import type { Box } from "./placeLabels.ts";
import { rectOnSheet, type Placement } from "./unfold.ts";
import { toScreen, type View } from "./view.ts";

interface Shown {
  readonly marks: readonly Mark[];
  readonly placements: readonly Placement[];
  readonly view: View;
}

/** Where a mark stands on the screen: at the upper right corner of what it is about. */
export function plateOf({ rect, findings }: Mark, placement: Placement, view: View): Box {
  const { x1, y0 } = rectOnSheet(placement, rect);
  const { x, y } = toScreen(view, { x: x1, y: y0 });
  return { x0: x - 7, x1: x + (findings.length > 1 ? 27 : 15), y0: y - 17, y1: y + 5 };
}

/** Problems where they are: shape of the worst verdict and how many; a press picks the first finding. */
export function Marks({ marks, placements, view }: Shown): ReactElement {
  return (
    <g role="list" aria-label="Problems on the faces">
      {marks.map((mark) => {
        const placement = placements.find(({ surface }) => surface.id === mark.surface);
        const [first] = mark.findings;
        if (placement === undefined || first === undefined) return null;
        const plate = plateOf(mark, placement, view);
        const count = mark.findings.length;
        return (
          <g key={mark.at} role="listitem">
            <g
              className={`u-mark is-${mark.verdict}`}
              transform={`translate(${String(plate.x0)} ${String(plate.y0)})`}
              role="button"
              tabIndex={0}
              aria-label={`${mark.verdict} at ${mark.at}: ${mark.findings.map(({ says }) => says).join(" ")}`}
              data-hit="mark"
              data-id={first.id}
            >
              <title>{mark.findings.map(({ says }) => says).join("\n")}</title>
              <rect className="u-grip" x="-7" y="-7" width="40" height="36" />
              <rect className="u-plate" width={plate.x1 - plate.x0} height={plate.y1 - plate.y0} />
              <g transform="translate(3 3)">
                <VerdictShape verdict={mark.verdict} />
              </g>
              {count > 1 && <text className="u-text is-count" x="22" y="15">{count}</text>}
            </g>
          </g>
        );
      })}
    </g>
  );
}
