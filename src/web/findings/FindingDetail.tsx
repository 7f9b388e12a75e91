import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import type { ScreenFinding } from "../../river/screen.ts";
import { useFrame } from "../frame/useFrame.ts";
import { useHeat } from "../heat/useHeat.ts";
import { useSession } from "../state/session.ts";
import { litBy, nameOf, selectionOf } from "./about.ts";
import { WorkingOfNumber } from "./WorkingPanel.tsx";

/** A finding opened: what it is about, its working, its sources, what it leaves out and who decides. */
export function FindingDetail({ finding }: { readonly finding: ScreenFinding }): ReactElement {
  const { id, check, about, sources, leavesOut, decides } = finding;
  return (
    <div className="finding-detail">
      {about.length === 0 ? null : <About ids={about} />}
      {check === HEAT_CHECK ? <ShowSection finding={id} /> : null}
      <WorkingOfNumber of={{ kind: "finding", id }} level={6} />
      {sources.length === 0 ? null : (
        <section aria-label="Sources">
          <h6>Sources</h6>
          <ul>
            {sources.map((source) => (
              <li key={source}>{source}</li>
            ))}
          </ul>
        </section>
      )}
      <dl className="finding-limits">
        <dt>Leaves out</dt>
        <dd>{leavesOut}</dd>
        <dt>Decides</dt>
        <dd>{decides}</dd>
      </dl>
    </div>
  );
}

/** The check whose findings are about sections of the box. */
const HEAT_CHECK = "envelope";

function ShowSection({ finding }: { readonly finding: string }): ReactElement {
  const want = useHeat((heat) => heat.want);
  const show = useFrame((frame) => frame.show);
  return (
    <div className="actions">
      <Button
        className="button"
        onPress={() => {
          want({ kind: "finding", id: finding });
          show("heat");
        }}
      >
        Show the section
      </Button>
    </div>
  );
}

/** Longer lists are cut: the drawing shows them all. */
const MOST_NAMED = 12;

function About({ ids }: { readonly ids: readonly string[] }): ReactElement | null {
  const build = useSession((session) => session.screen?.build);
  const select = useSession((session) => session.select);
  const light = useSession((session) => session.light);
  if (build === undefined) return null;
  return (
    <section aria-label="About">
      <h6>About</h6>
      <div className="actions">
        {ids.slice(0, MOST_NAMED).map((id) => {
          const selection = selectionOf(build, id);
          return selection === undefined ? (
            <span key={id}>{id}</span>
          ) : (
            <Button key={id} className="button" onPress={() => select(selection)}>
              {nameOf(build, id)}
            </Button>
          );
        })}
        {ids.length > MOST_NAMED ? <span className="quiet">and {ids.length - MOST_NAMED} more</span> : null}
        <Button className="button" onPress={() => light(litBy(build, ids))}>
          Show on the drawing
        </Button>
      </div>
    </section>
  );
}
