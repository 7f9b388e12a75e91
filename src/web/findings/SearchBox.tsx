import { type ReactElement, useMemo, useState } from "react";
import { Button, Input, Label, SearchField } from "react-aria-components";
import { useSession } from "../state/session.ts";
import { type Entry, entriesOf, search, SEARCH_NAMES, type SearchGroup } from "./search.ts";
import { selectionOf } from "./about.ts";
import { WorkingPanel } from "./WorkingPanel.tsx";

/** A search over findings, openings, items, partitions, parts, quote lines and plan items. */
export function SearchBox(): ReactElement {
  const screen = useSession((session) => session.screen);
  const [asked, setAsked] = useState("");
  const entries = useMemo(() => (screen === undefined ? [] : entriesOf(screen)), [screen]);
  const groups = useMemo(() => search(entries, asked), [entries, asked]);
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  return (
    <div className="search">
      <SearchField className="field" value={asked} onChange={setAsked}>
        <Label className="field-name">Search everything</Label>
        <Input className="field-input" placeholder="D1, plywood, welder …" />
      </SearchField>
      <p role="status" className="quiet">
        {asked.trim() === "" ? "" : count === 0 ? "Nothing found." : `${count} found.`}
      </p>
      {groups.map((group) => (
        <Found key={group.kind} group={group} />
      ))}
    </div>
  );
}

function Found({ group }: { readonly group: SearchGroup }): ReactElement {
  const { kind, count, entries } = group;
  return (
    <section aria-label={`${SEARCH_NAMES[kind]} found`}>
      <h3 className="finding-check">
        {SEARCH_NAMES[kind]} <span className="figures">{count}</span>
      </h3>
      <ul className="plain-list">
        {entries.map((entry) => (
          <li key={entry.id}>
            <FoundEntry entry={entry} />
          </li>
        ))}
        {count > entries.length ? <li className="quiet">and {count - entries.length} more; another word narrows it down</li> : null}
      </ul>
    </section>
  );
}

function FoundEntry({ entry }: { readonly entry: Entry }): ReactElement {
  const { kind, id, what } = entry;
  const build = useSession((session) => session.screen?.build);
  const select = useSession((session) => session.select);
  const light = useSession((session) => session.light);
  const [shown, setShown] = useState(false);
  const go = (): void => {
    const selection = build === undefined ? undefined : selectionOf(build, id);
    if (kind === "quote line" || kind === "plan item") setShown(true);
    else if (kind === "finding") select({ kind: "finding", id });
    else if (selection !== undefined) {
      select(selection);
      light([id]);
    }
  };
  return (
    <>
      <Button className="search-entry" onPress={go}>
        {kind === "finding" ? null : kind === "plan item" ? <PlanDates id={id} /> : <span className="search-id">{id}</span>}
        <span>{what}</span>
      </Button>
      {shown && (kind === "quote line" || kind === "plan item") ? <WorkingPanel of={{ kind, id }} title={what} onClose={() => setShown(false)} /> : null}
    </>
  );
}

function PlanDates({ id }: { readonly id: string }): ReactElement {
  const item = useSession((session) => session.screen?.plan.find((one) => one.id === id));
  return <span className="figures quiet">{item === undefined ? "" : `${item.start.day} to ${item.finish.day}`}</span>;
}
