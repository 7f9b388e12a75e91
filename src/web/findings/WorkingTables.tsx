import type { ReactElement } from "react";
import { Heading } from "react-aria-components";
import type { Working } from "../../river/screen.ts";
import type { System } from "../../units/format.ts";
import { type WorkingRow, workingView } from "../../working/workingView.ts";
import "./working.css";

interface Shown {
  readonly working: Working;
  readonly system: System;
  /** Level of the headings, below those of what holds the working. */
  readonly level: 3 | 6;
}

/** A working set out: the result, what was compared, what was given, and every step with its numbers and source. */
export function WorkingTables({ working, system, level }: Shown): ReactElement {
  const { results, compared, given, worked } = workingView(working, { system });
  return (
    <div className="working">
      <ul className="plain-list">
        {results.map(({ symbol, means, value }) => (
          <li key={symbol}>
            <span className="working-result figures">
              {symbol} = {value}
            </span>
            <span className="quiet"> {means}</span>
          </li>
        ))}
        {compared.map(({ text, holds }) => (
          <li key={text} className={`working-compared figures ${holds ? "is-pass" : "is-stop"}`}>
            {text}
          </li>
        ))}
      </ul>
      {worked.length === 0 ? null : (
        <section aria-label="Worked out">
          <Heading level={level}>Worked out</Heading>
          <ol className="plain-list">
            {worked.map((row) => (
              <li key={row.symbol} className="working-step">
                <WorkedStep row={row} />
              </li>
            ))}
          </ol>
        </section>
      )}
      {given.length === 0 ? null : (
        <section aria-label="Given">
          <Heading level={level}>Given</Heading>
          <ul className="plain-list">
            {given.map((row) => (
              <li key={row.symbol} className="working-step">
                <p className="figures working-formula">
                  {row.symbol} = <span className="working-value">{row.value}</span>
                </p>
                <p>{row.means}</p>
                <p className="quiet">From: {row.source}</p>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

function WorkedStep({ row }: { readonly row: WorkingRow }): ReactElement {
  return (
    <>
      <p>{row.means}</p>
      <p className="figures working-formula">
        {row.symbol} = {row.formula}
        {row.lists.length === 0 ? "" : ` with ${row.lists.join(", ")}`}
      </p>
      <p className="figures working-formula">= {row.numbers}</p>
      <p className="figures working-formula working-value">= {row.value}</p>
      <p className="quiet">Source: {row.source}</p>
    </>
  );
}
