import { type ReactElement, useEffect, useMemo, useState } from "react";
import { Disclosure, Button, DisclosurePanel, Heading } from "react-aria-components";
import type { ScreenFinding } from "../../river/screen.ts";
import { useSession } from "../state/session.ts";
import { VerdictMark } from "../style/VerdictMark.tsx";
import { litBy } from "./about.ts";
import { FindingDetail } from "./FindingDetail.tsx";
import { checkName, countWords, groupFindings, VERDICT_WORDS, type VerdictGroup } from "./groups.ts";
import { SearchBox } from "./SearchBox.tsx";
import "../controls/controls.css";
import "./findings.css";

/** All findings by verdict and check, each a way to its working and to its parts, with a search over everything. */
export function Findings(): ReactElement {
  const screen = useSession((session) => session.screen);
  const stale = useSession((session) => session.stale);
  const slow = useSession((session) => session.slow);
  const slowFailed = useSession((session) => session.slowFailed);
  const findings = screen?.findings;
  const groups = useMemo(() => groupFindings(findings ?? []), [findings]);
  const [open, setOpen] = useOpenFinding();
  return (
    <div className="findings">
      <h2>Findings</h2>
      <SearchBox />
      {screen === undefined ? <p className="quiet">Nothing is worked out yet.</p> : null}
      {screen !== undefined && slow === undefined && slowFailed === undefined ? (
        <p className="quiet" role="status">
          Heat and moisture are still being worked out.
        </p>
      ) : null}
      <div className={stale ? "finding-groups is-stale" : "finding-groups"} aria-busy={stale}>
        {groups.map((group) => (
          <OfVerdict key={group.verdict} group={group} open={open} onOpen={setOpen} />
        ))}
      </div>
      <p className="quiet">Cornerpost computes. Licensed people and local authorities decide.</p>
    </div>
  );
}

/** The finding that is open: the one selected, here or elsewhere. */
function useOpenFinding(): readonly [string | undefined, (id: string | undefined) => void] {
  const selection = useSession((session) => session.selection);
  const select = useSession((session) => session.select);
  const light = useSession((session) => session.light);
  const [open, setOpen] = useState<string>();
  const selected = selection?.kind === "finding" ? selection.id : undefined;
  const shown = selected ?? open;
  return [
    shown,
    (id) => {
      setOpen(id);
      if (id === undefined) light([]);
      if (id !== undefined) select({ kind: "finding", id });
      else if (selected !== undefined) select(undefined);
    },
  ];
}

interface Opening {
  readonly open: string | undefined;
  readonly onOpen: (id: string | undefined) => void;
}

function OfVerdict({ group, open, onOpen }: Opening & { readonly group: VerdictGroup }): ReactElement {
  const { verdict, count, checks } = group;
  const holdsOpen = checks.some(({ findings }) => findings.some(({ id }) => id === open));
  const [isExpanded, setIsExpanded] = useState(verdict !== "pass");
  return (
    <Disclosure className="finding-verdict" isExpanded={isExpanded || holdsOpen} onExpandedChange={setIsExpanded}>
      <Heading level={3}>
        <Button slot="trigger" className={`finding-verdict-head is-${verdict}`}>
          <VerdictMark verdict={verdict} />
          <span>{countWords(verdict, count)}</span>
          <span className="finding-verdict-says">{VERDICT_WORDS[verdict].says}</span>
        </Button>
      </Heading>
      <DisclosurePanel>
        {checks.map(({ check, findings }) => (
          <section key={check} aria-label={`${checkName(check)}: ${countWords(verdict, findings.length)}`}>
            <h4 className="finding-check">{checkName(check)}</h4>
            <ul className="plain-list">
              {findings.map((finding) => (
                <li key={finding.id}>
                  <OneFinding finding={finding} isOpen={finding.id === open} onOpen={onOpen} />
                </li>
              ))}
            </ul>
          </section>
        ))}
      </DisclosurePanel>
    </Disclosure>
  );
}

interface One {
  readonly finding: ScreenFinding;
  readonly isOpen: boolean;
  readonly onOpen: (id: string | undefined) => void;
}

function OneFinding({ finding, isOpen, onOpen }: One): ReactElement {
  const { id, check, verdict, says, about } = finding;
  const build = useSession((session) => session.screen?.build);
  const stale = useSession(({ slow, slowStale }) => slowStale && slow?.checks.includes(check) === true);
  const light = useSession((session) => session.light);
  useEffect(() => {
    if (isOpen && build !== undefined) light(litBy(build, about));
  }, [isOpen, build, about, light]);
  return (
    <Disclosure className={`finding${isOpen ? " is-open" : ""}${stale ? " is-stale" : ""}`} isExpanded={isOpen} onExpandedChange={(expanded) => onOpen(expanded ? id : undefined)}>
      <Heading level={5} className="finding-heading">
        <Button slot="trigger" className="finding-head">
          <span className={`is-${verdict}`}>
            <VerdictMark verdict={verdict} />
          </span>
          <span>
            <span className="only-heard">{VERDICT_WORDS[verdict].one}: </span>
            {says}
          </span>
        </Button>
      </Heading>
      <DisclosurePanel>{isOpen ? <FindingDetail finding={finding} /> : null}</DisclosurePanel>
    </Disclosure>
  );
}
