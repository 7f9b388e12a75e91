import type { ReactElement } from "react";
import { useMedia } from "../frame/useMedia.ts";
import { useSession } from "../state/session.ts";
import { sectionShown } from "./sectionShown.ts";
import { LossTables } from "./LossTables.tsx";
import { SectionChoice } from "./SectionChoice.tsx";
import { SectionList } from "./SectionList.tsx";
import { SectionView } from "./SectionView.tsx";
import { useHeat, WHOLE } from "./useHeat.ts";
import { useSections } from "./useSections.ts";
import "../controls/controls.css";
import "./heat.css";

/** Heat through the box: its sections with their temperatures, and what it loses in all. */
export function Heat(): ReactElement {
  const asked = useSections();
  const stale = useSession((session) => session.slowStale);
  const failed = useSession((session) => session.slowFailed);
  const findings = useSession((session) => session.screen?.findings) ?? [];
  const narrow = useMedia("(width < 700px)");
  const wanted = useHeat((heat) => heat.wanted);
  if (asked.kind !== "sections") {
    const problem = asked.kind === "failed" ? asked.message : failed;
    return (
      <div className="h-wait">
        {problem === undefined ? <p role="status">Cutting the box into sections and solving them.</p> : <p className="alert">Heat and moisture could not be computed: {problem}</p>}
      </div>
    );
  }
  const { sections, heat } = asked;
  const row = sectionShown(wanted, sections, findings);
  const List = narrow ? SectionChoice : SectionList;
  return (
    <section className="heat" aria-label="Heat" aria-busy={stale}>
      <List sections={sections} loss={heat.loss} shown={row?.id ?? WHOLE} />
      <div className={stale ? "h-detail is-stale" : "h-detail"}>{row === undefined ? <LossTables heat={heat} sections={sections} /> : <SectionView key={row.id} row={row} />}</div>
    </section>
  );
}
