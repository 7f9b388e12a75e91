import { useEffect, useRef, type ReactElement } from "react";
import { Header, ListBox, ListBoxItem, ListBoxSection, Text } from "react-aria-components";
import { formatSi } from "../../units/format.ts";
import type { SectionRow } from "../../river/sections.ts";
import { VERDICT_WORDS } from "../findings/groups.ts";
import { useSettings } from "../state/settings.ts";
import { VerdictMark } from "../style/VerdictMark.tsx";
import { useHeat, wantedOf, WHOLE } from "./useHeat.ts";
import { capital, degrees, KINDS } from "./words.ts";

export interface Listed {
  readonly sections: readonly SectionRow[];
  /** Of the whole box, W/K. */
  readonly loss: number | undefined;
  /** The id of the section that is shown, or WHOLE. */
  readonly shown: string;
}

/** All sections by what they cut, each with its verdict and its coldest surface at the winter design hour. */
export function SectionList({ sections, loss, shown }: Listed): ReactElement {
  const system = useSettings((settings) => settings.system);
  const want = useHeat((heat) => heat.want);
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The list lays its entries out after this.
    const frame = requestAnimationFrame(() => list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: "nearest" }));
    return () => cancelAnimationFrame(frame);
  }, [shown]);
  return (
    <ListBox
      ref={list}
      className="h-list"
      aria-label="Sections"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[shown]}
      onSelectionChange={(keys) => {
        const [key] = keys === "all" ? [] : keys;
        if (key !== undefined) want(wantedOf(String(key)));
      }}
    >
      <ListBoxSection id="all" aria-label="All of it">
        <ListBoxItem className="h-entry" id={WHOLE} textValue="The whole box">
          <Text slot="label">The whole box</Text>
          <Text slot="description" className="h-entry-figure figures">
            {loss === undefined ? "" : formatSi("W/K", loss, 3)}
          </Text>
        </ListBoxItem>
      </ListBoxSection>
      {KINDS.map(({ kind, name }) => ({ kind, name, rows: sections.filter((row) => row.kind === kind) }))
        .filter(({ rows }) => rows.length > 0)
        .map(({ kind, name, rows }) => (
          <ListBoxSection key={kind} id={kind}>
            <Header className="h-list-head">{name}</Header>
            {rows.map((row) => (
              <ListBoxItem className="h-entry" key={row.id} id={row.id} textValue={capital(row.name)}>
                <Text slot="label" className="h-entry-name">
                  {row.verdict === undefined ? <span className="h-no-mark" /> : <VerdictMark verdict={row.verdict} />}
                  <span>
                    {row.verdict === undefined ? null : <span className="only-heard">{VERDICT_WORDS[row.verdict].one}: </span>}
                    {capital(row.name)}
                  </span>
                </Text>
                <Text slot="description" className="h-entry-figure figures">
                  {row.coldest === undefined ? "" : degrees(row.coldest.temperature, system)}
                </Text>
              </ListBoxItem>
            ))}
          </ListBoxSection>
        ))}
    </ListBox>
  );
}
