import type { ReactElement } from "react";
import { VerdictShape } from "../style/VerdictMark.tsx";
import type { Mark } from "./marks.ts";
import { rectOnSheet, type Placement } from "./unfold.ts";
import { toScreen, type View } from "./view.ts";

interface Shown {
  readonly marks: readonly Mark[];
  readonly placements: readonly Placement[];
  readonly view: View;
}

/** Problems where they are: shape of the worst verdict and how many; a press picks the first finding. */
export function Marks({ marks, placements, view }: Shown): ReactElement {
  return (
    <g role="list" aria-label="Problems on the faces">
      {marks.map((mark) => {
        const placement = placements.find(({ surface }) => surface.id === mark.surface);
        const [first] = mark.findings;
        if (placement === undefined || first === undefined) return null;
        const { x1, y0 } = rectOnSheet(placement, mark.rect);
        const { x, y } = toScreen(view, { x: x1, y: y0 });
        const count = mark.findings.length;
        return (
          <g key={mark.at} role="listitem">
            <g
              className={`u-mark is-${mark.verdict}`}
              transform={`translate(${String(x - 4)} ${String(y - 14)})`}
              role="button"
              tabIndex={0}
              aria-label={`${mark.verdict} at ${mark.at}: ${mark.findings.map(({ says }) => says).join(" ")}`}
              data-hit="mark"
              data-id={first.id}
            >
              <title>{mark.findings.map(({ says }) => says).join("\n")}</title>
              <rect className="u-grip" x="-10" y="-10" width="40" height="36" />
              <rect className="u-plate" x="-3" y="-3" width={count > 1 ? 34 : 22} height="22" />
              <VerdictShape verdict={mark.verdict} />
              {count > 1 && <text className="u-text is-count" x="19" y="12">{count}</text>}
            </g>
          </g>
        );
      })}
    </g>
  );
}
