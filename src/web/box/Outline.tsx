import type { ReactElement } from "react";
import { Button, Disclosure, DisclosurePanel, Heading, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { useSession } from "../state/session.ts";
import { VerdictMark } from "../style/VerdictMark.tsx";
import type { Draft } from "./edits.ts";
import { useUnits } from "./FieldTree.tsx";
import { outlineOf, type OutlineEntry, type OutlineSection, type Place } from "./outline.ts";
import { OPENING_STARTERS } from "./starters.ts";
import { addBuildUp, addItem, addOpening, addPartition, type System } from "./things.ts";
import { useEdit } from "./useField.ts";

interface Going {
  readonly onGo: (place: Place) => void;
}

/** Everything in the job, section by section, each entry a way to its form. */
export function Outline({ onGo }: Going): ReactElement {
  const file = useSession((session) => session.file);
  const issues = useSession((session) => session.issues);
  const findings = useSession((session) => session.screen?.findings) ?? [];
  return (
    <nav className="outline" aria-label="In the box">
      {outlineOf(file, issues, findings).map((section) => (
        <Section key={section.name} section={section} onGo={onGo} />
      ))}
    </nav>
  );
}

function Section({ section, onGo }: Going & { readonly section: OutlineSection }): ReactElement {
  const { name, entries, adds } = section;
  const issues = entries.reduce((sum, entry) => sum + entry.issues, 0);
  return (
    <Disclosure className="outline-section" defaultExpanded>
      <div className="outline-head">
        <Heading level={3}>
          <Button slot="trigger" className="outline-trigger">
            <span className="outline-fold" aria-hidden="true" />
            {name}
            <span className="quiet figures"> {entries.length}</span>
            {issues === 0 ? null : <IssueCount count={issues} />}
          </Button>
        </Heading>
        {adds === undefined ? null : <AddMenu adds={adds} onGo={onGo} />}
      </div>
      <DisclosurePanel>
        <ul className="plain-list">
          {entries.map((entry) => (
            <li key={`${entry.place.kind} ${entry.name}`}>
              <EntryButton entry={entry} onGo={onGo} />
            </li>
          ))}
        </ul>
      </DisclosurePanel>
    </Disclosure>
  );
}

function EntryButton({ entry, onGo }: Going & { readonly entry: OutlineEntry }): ReactElement {
  const { place, name, more, issues, verdict } = entry;
  return (
    <Button className="outline-entry" onPress={() => onGo(place)}>
      <span className="outline-name">{name}</span>
      <span className="outline-more">{more}</span>
      {verdict === undefined ? null : (
        <span className={`outline-verdict is-${verdict}`}>
          <VerdictMark verdict={verdict} />
          <span>{verdict}</span>
        </span>
      )}
      {issues === 0 ? null : <IssueCount count={issues} />}
    </Button>
  );
}

function IssueCount({ count }: { readonly count: number }): ReactElement {
  return <span className="issue-count">{count === 1 ? "1 issue" : `${count} issues`}</span>;
}

/** Adds a thing and goes to its form. */
function AddMenu({ adds, onGo }: Going & { readonly adds: NonNullable<OutlineSection["adds"]> }): ReactElement {
  const edit = useEdit();
  const units = useUnits();
  if (adds === "opening" || adds === "air") {
    const kinds = OPENING_STARTERS.filter(({ kind }) => adds === "opening" || AIR.includes(kind));
    return (
      <MenuTrigger>
        <Button className="button" aria-label={adds === "air" ? "Add a fan or intake" : "Add an opening"}>
          Add
        </Button>
        <Popover className="choose-list">
          <Menu
            className="choose-options"
            aria-label="Kinds of opening"
            onAction={(kind) => {
              edit(`Add ${String(kind)}`, (draft) => onGo({ kind: "opening", id: addOpening(draft, String(kind), "left", units) }));
            }}
          >
            {kinds.map(({ kind }) => (
              <MenuItem key={kind} id={kind} className="choose-option">
                {kind}
              </MenuItem>
            ))}
          </Menu>
        </Popover>
      </MenuTrigger>
    );
  }
  const add = (): void => edit(`Add ${adds}`, (draft) => onGo({ kind: adds, id: added(draft, adds, units) }));
  return (
    <Button className="button" aria-label={`Add ${adds === "item" ? "an item" : `a ${adds}`}`} onPress={add}>
      Add
    </Button>
  );
}

function added(draft: Draft, kind: "item" | "partition" | "build-up", units: System): string {
  switch (kind) {
    case "item":
      return addItem(draft, units);
    case "partition":
      return addPartition(draft, units === "metric" ? "3000 mm" : "10 ft");
    case "build-up":
      return addBuildUp(draft);
  }
}

const AIR: readonly string[] = ["fan", "intake", "split-unit lines"];
