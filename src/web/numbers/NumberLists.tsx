import type { ReactElement, ReactNode } from "react";
import { Button } from "react-aria-components";
import { formatQuantity } from "../../units/format.ts";
import { formatMoney } from "../../units/money.ts";
import { WorkingButton, WorkingOfNumber } from "../findings/WorkingPanel.tsx";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import { VerdictMark } from "../style/VerdictMark.tsx";
import { amountWords, byStart, heaviest, massByRole, momentText, quoteGroups } from "./lists.ts";

/** The stops and watches, each a way to the finding. */
export function StopList({ onClose }: { readonly onClose: () => void }): ReactElement {
  const findings = useSession((session) => session.screen?.findings) ?? [];
  const select = useSession((session) => session.select);
  const grave = (["stop", "watch"] as const).flatMap((verdict) => findings.filter((one) => one.verdict === verdict));
  if (grave.length === 0) return <p>No check stops the build, and none asks for a second look.</p>;
  return (
    <ul className="plain-list">
      {grave.map(({ id, verdict, says }) => (
        <li key={id}>
          <Button
            className="number-entry"
            onPress={() => {
              select({ kind: "finding", id });
              onClose();
            }}
          >
            <span className={`is-${verdict}`}>
              <VerdictMark verdict={verdict} /> {verdict}
            </span>
            <span>{says}</span>
          </Button>
        </li>
      ))}
    </ul>
  );
}

/** The finding whose working adds up the whole mass. */
const TOTAL_MASS = "mass/total";
const HEAVIEST = 40;

/** What the mass is made of, by what parts do and part by part. */
export function MassList(): ReactElement | null {
  const screen = useSession((session) => session.screen);
  const system = useSettings((settings) => settings.system);
  if (screen === undefined) return null;
  const { parts } = screen.build;
  const mass = (kilograms: number): string => formatQuantity("mass", kilograms, system);
  return (
    <>
      <WorkingOfNumber of={{ kind: "finding", id: TOTAL_MASS }} />
      <Table caption="By what parts do" heads={["Parts", "Count", "Mass"]}>
        {massByRole(parts).map(({ role, count, mass: sum }) => (
          <tr key={role}>
            <td>{role}</td>
            <td className="is-number figures">{count}</td>
            <td className="is-number">
              <WorkingButton of={{ kind: "mass of role", id: role }} title={`the mass of ${role}`}>
                {mass(sum)}
              </WorkingButton>
            </td>
          </tr>
        ))}
      </Table>
      <Table caption={`The ${HEAVIEST} heaviest parts`} heads={["Part", "What", "Mass"]}>
        {heaviest(parts, HEAVIEST).map((part) => (
          <tr key={part.id}>
            <td>{part.id}</td>
            <td>{part.what}</td>
            <td className="is-number">
              <WorkingButton of={{ kind: "mass of part", id: part.id }} title={`the mass of ${part.id}`}>
                {mass(part.mass)}
              </WorkingButton>
            </td>
          </tr>
        ))}
      </Table>
    </>
  );
}

/** The groups of the quote as their headings. */
const GROUPS: Readonly<Record<string, string>> = { box: "Box", material: "Material", labour: "Labour", article: "Articles", delivery: "Delivery" };

/** The quote line by line, and the working of the whole. */
export function PriceList(): ReactElement | null {
  const screen = useSession((session) => session.screen);
  const system = useSettings((settings) => settings.system);
  if (screen === undefined) return null;
  const { headline } = screen;
  if ("unpriced" in headline) return <p>{headline.mend}</p>;
  const { currency } = headline;
  const money = (cents: number): string => formatMoney(cents, currency);
  return (
    <>
      {quoteGroups(screen.quote).map(({ group, amountCents, lines }) => (
        <Table
          key={group}
          caption={
            <>
              {GROUPS[group] ?? group}:{" "}
              <WorkingButton of={{ kind: "quote group", id: group }} title={`the lines of ${group}`}>
                {money(amountCents)}
              </WorkingButton>
            </>
          }
          heads={["What", "Amount", "Cost"]}
        >
          {lines.map(({ id, what, count, per, amountCents: cents }) => (
            <tr key={id}>
              <td>{what}</td>
              <td className="is-number">
                <WorkingButton of={{ kind: "quote count", id }} title={`the amount of ${what}`}>
                  {amountWords(count, per, system)}
                </WorkingButton>
              </td>
              <td className="is-number">
                <WorkingButton of={{ kind: "quote line", id }} title={what}>
                  {money(cents)}
                </WorkingButton>
              </td>
            </tr>
          ))}
        </Table>
      ))}
    </>
  );
}

/** The plan in the order of work; what moves delivery when it slips says so. */
export function DayList(): ReactElement | null {
  const screen = useSession((session) => session.screen);
  if (screen === undefined) return null;
  const { headline, plan } = screen;
  if ("unpriced" in headline) return <p>{`${headline.unpriced} ${headline.mend}`}</p>;
  return (
    <Table caption="Work in the order in which it starts" heads={["What", "Who", "Start", "Finish", "Slips"]}>
      {byStart(plan).map(({ id, what, kind, crew, start, finish, critical }) => (
        <tr key={id} className={critical ? "is-critical" : ""}>
          <td>{what}</td>
          <td>{crew ?? kind}</td>
          <td className="is-when">
            <WorkingButton of={{ kind: "plan item", id }} title={`the start of ${what}`}>
              {momentText(start)}
            </WorkingButton>
          </td>
          <td className="is-when">
            <WorkingButton of={{ kind: "plan item", id }} title={`the finish of ${what}`}>
              {momentText(finish)}
            </WorkingButton>
          </td>
          <td>{critical ? "moves delivery" : "has slack"}</td>
        </tr>
      ))}
    </Table>
  );
}

/** Heads of columns that hold numbers. */
const NUMBERS: readonly string[] = ["Count", "Mass", "Amount", "Cost"];

interface Tabled {
  readonly caption: ReactNode;
  readonly heads: readonly string[];
  readonly children: ReactElement | readonly ReactElement[];
}

function Table({ caption, heads, children }: Tabled): ReactElement {
  return (
    <div className="working-wide">
      <table className="table">
        <caption>{caption}</caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col" className={NUMBERS.includes(head) ? "is-number" : ""}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </div>
  );
}
