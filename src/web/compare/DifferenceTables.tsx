import type { ReactElement } from "react";
import type { Headline } from "../../river/screen.ts";
import { formatQuantity } from "../../units/format.ts";
import { formatMoney } from "../../units/money.ts";
import { useSettings } from "../state/settings.ts";
import { VerdictMark } from "../style/VerdictMark.tsx";
import type { FindingDifference, LineDifference, PlanDifference } from "./differences.ts";
import { type PartDifference, partSummary } from "./parts.ts";

/** Findings that came, went or turned. */
export function FindingTable({ differences }: { readonly differences: readonly FindingDifference[] }): ReactElement {
  return (
    <ul className="plain-list">
      {differences.map((one) => (
        <li key={`${one.kind} ${one.finding.id}`} className="compare-finding">
          <span className={`is-${one.finding.verdict}`}>
            <VerdictMark verdict={one.finding.verdict} /> <strong>{kindWords(one)}</strong>
          </span>
          <span>{one.finding.says}</span>
          {"before" in one ? <span className="quiet">before: {one.before.says}</span> : null}
        </li>
      ))}
    </ul>
  );
}

function kindWords(one: FindingDifference): string {
  switch (one.kind) {
    case "new":
      return `New ${one.finding.verdict}`;
    case "gone":
      return `${one.finding.verdict}, gone`;
    case "other verdict":
      return `${one.before.verdict} → ${one.finding.verdict}`;
    case "other numbers":
      return `${one.finding.verdict}, other numbers`;
  }
}

/** More single parts than anyone reads; the summary counts them all. */
const MOST_PARTS = 200;

/** Parts by what they do, and then one by one. */
export function PartTable({ differences }: { readonly differences: readonly PartDifference[] }): ReactElement {
  const system = useSettings((settings) => settings.system);
  const mass = (kilograms: number): string => `${kilograms < 0 ? "−" : "+"}${formatQuantity("mass", Math.abs(kilograms), system)}`;
  return (
    <div className="working-wide">
      <table className="table">
        <caption>By what parts do</caption>
        <thead>
          <tr>
            {["Parts", "Added", "Removed", "Moved", "Changed", "Mass"].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {partSummary(differences).map(({ role, added, removed, moved, changed, mass: sum }) => (
            <tr key={role}>
              <th scope="row">{role}</th>
              {[added, removed, moved, changed].map((count, index) => (
                <td key={index} className="is-number figures">
                  {count === 0 ? "" : count}
                </td>
              ))}
              <td className="is-number figures">{mass(sum)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table className="table">
        <caption>One by one{differences.length > MOST_PARTS ? `, the first ${MOST_PARTS}` : ""}</caption>
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col">What</th>
            <th scope="col">Difference</th>
          </tr>
        </thead>
        <tbody>
          {differences.slice(0, MOST_PARTS).map(({ kind, part }) => (
            <tr key={`${kind} ${part.id}`}>
              <td>{part.id}</td>
              <td>{part.what}</td>
              <td>{kind}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface Money {
  readonly differences: readonly LineDifference[];
  readonly currency: Headline["currency"];
}

/** Lines of the quote that differ. */
export function MoneyTable({ differences, currency }: Money): ReactElement {
  const money = (cents: number | undefined): string => (cents === undefined ? "not there" : formatMoney(cents, currency));
  return (
    <div className="working-wide">
      <table className="table">
        <caption>Lines of direct cost; the four numbers above hold the whole price</caption>
        <thead>
          <tr>
            {["What", "Before", "After", "Difference"].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {differences.map(({ id, what, beforeCents, afterCents, cents }) => (
            <tr key={id}>
              <td>{what}</td>
              <td className="is-number figures">{money(beforeCents)}</td>
              <td className="is-number figures">{money(afterCents)}</td>
              <td className="is-number figures">{`${cents < 0 ? "−" : "+"}${formatMoney(Math.abs(cents), currency)}`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Work that ends on another day, or came or went. */
export function DayTable({ differences }: { readonly differences: readonly PlanDifference[] }): ReactElement {
  return (
    <div className="working-wide">
      <table className="table">
        <caption>Work by the day on which it ends</caption>
        <thead>
          <tr>
            {["Work", "Before", "After", "Difference"].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {differences.map(({ id, what, before, after, later }) => (
            <tr key={id}>
              <td>{what}</td>
              <td className="figures">{before ?? "not there"}</td>
              <td className="figures">{after ?? "not there"}</td>
              <td>{laterWords(later)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function laterWords(later: number | undefined): string {
  if (later === undefined) return "on one side only";
  const days = Math.abs(later) === 1 ? "1 day" : `${Math.abs(later)} days`;
  return later > 0 ? `${days} later` : `${days} earlier`;
}
