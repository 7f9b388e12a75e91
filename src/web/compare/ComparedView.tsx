import { type ReactElement, type ReactNode, useMemo } from "react";
import { Button, Disclosure, DisclosurePanel, Heading } from "react-aria-components";
import { changesBetween } from "../../job/merge.ts";
import type { Screen } from "../../river/screen.ts";
import { fourNumbers } from "../numbers/changes.ts";
import { ChangeTable } from "../saving/ChangeTable.tsx";
import { useSettings } from "../state/settings.ts";
import { compareFindings, comparePlans, compareQuotes, sameCurrency } from "./differences.ts";
import { DayTable, FindingTable, MoneyTable, PartTable } from "./DifferenceTables.tsx";
import { compareParts } from "./parts.ts";
import type { Version } from "./runBoth.ts";

/** Two versions worked out. */
export interface Compared {
  readonly before: Screen;
  readonly after: Screen;
  readonly versions: readonly [before: Version, after: Version];
}

/** What differs between two versions, from the four numbers down to single parts. */
export function ComparedView({ compared }: { readonly compared: Compared }): ReactElement {
  const { before, after, versions } = compared;
  const [from, to] = versions;
  const system = useSettings((settings) => settings.system);
  const differences = useMemo(
    () => ({
      input: changesBetween(from.file, to.file),
      findings: compareFindings(before.findings, after.findings),
      parts: compareParts(before.build.parts, after.build.parts),
      currency: sameCurrency(before, after),
      money: compareQuotes(before.quote, after.quote),
      days: comparePlans(before.plan, after.plan),
    }),
    [before, after, from, to],
  );
  const { input, findings, parts, currency, money, days } = differences;
  const old = fourNumbers(before.headline, undefined, system);
  return (
    <>
      <div className="working-wide">
        <table className="table">
          <caption>
            {from.name} → {to.name}
          </caption>
          <thead>
            <tr>
              <th scope="col">Number</th>
              <th scope="col">Before</th>
              <th scope="col">After</th>
              <th scope="col">Difference</th>
            </tr>
          </thead>
          <tbody>
            {fourNumbers(after.headline, before.headline, system).map(({ id, name, value, change, note }) => (
              <tr key={id}>
                <th scope="row">{name}</th>
                <td className="figures">{old.find((one) => one.id === id)?.value}</td>
                <td className="figures">
                  {value} <span className="quiet">{note}</span>
                </td>
                <td className="figures">{change === "" ? "none" : change}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <Section name="Input" count={input.length}>
        <ChangeTable title="Fields of the job file" changes={input} />
      </Section>
      <Section name="Findings" count={findings.length}>
        <FindingTable differences={findings} />
      </Section>
      <Section name="Parts" count={parts.length}>
        <PartTable differences={parts} />
      </Section>
      <Section name="Money" count={currency === undefined ? undefined : money.length}>
        {currency === undefined ? <p>The two are priced in different currencies, or one is not priced; no line can be compared.</p> : <MoneyTable differences={money} currency={currency} />}
      </Section>
      <Section name="Days" count={days.length}>
        <DayTable differences={days} />
      </Section>
    </>
  );
}

interface Sectioned {
  readonly name: string;
  /** Undefined where nothing can be counted. */
  readonly count: number | undefined;
  readonly children: ReactNode;
}

function Section({ name, count, children }: Sectioned): ReactElement {
  return (
    <Disclosure className="compare-section" defaultExpanded={count === undefined || (count > 0 && count <= SHORT)}>
      <Heading level={3}>
        <Button slot="trigger" className="outline-trigger">
          <span className="outline-fold" aria-hidden="true" />
          {name}
          <span className="quiet">{count === undefined ? "" : count === 0 ? "no difference" : count === 1 ? "1 difference" : `${count} differences`}</span>
        </Button>
      </Heading>
      <DisclosurePanel>{children}</DisclosurePanel>
    </Disclosure>
  );
}

/** Longer lists start folded, so that all heads can be seen. */
const SHORT = 25;
