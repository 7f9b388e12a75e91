import type { LabourWork } from "../takeoff/labour.ts";
import { hoursTogether } from "../takeoff/labourFormulas.ts";
import { apply } from "../working/formula.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { commonPractice } from "../working/source.ts";
import type { Crews } from "./crews.ts";
import type { DraftItem } from "./draftItem.ts";
import { crewHours } from "./formulas.ts";
import type { Leads } from "./leads.ts";
import type { WorkItem } from "./shopPlan.ts";

/** What a step follows, and what the steps after it follow. */
export type After = readonly string[];

/** Collects the items of a plan in building order. Each method gives what the next step follows; a step with nothing to do is left out and passes on what it followed. */
export interface Draft {
  /** Work by the tasks that `wanted` picks, one item a trade, one trade after another; `caution` is noted on each. */
  readonly work: (id: string, what: string, wanted: (work: LabourWork) => boolean, after: After, caution?: string) => After;
  readonly wait: (id: string, what: string, hours: Quantity<"h">, after: After) => After;
  readonly hold: (id: string, what: string, signs: string, inspection: (work: LabourWork) => boolean, after: After) => After;
  /** Ids that nothing follows yet. */
  readonly open: () => After;
  readonly items: readonly DraftItem[];
}

export function draft(labour: readonly LabourWork[], crews: Crews, leads: Leads): Draft {
  const items: DraftItem[] = [...leads.items];
  const sumOf = (work: readonly LabourWork[], means: string): Quantity<"h"> =>
    apply(hoursTogether, { H_lab: work.map(({ hours }) => hours) }, { means });

  return {
    items,
    work: (id, what, wanted, after, caution) => {
      let before = after;
      for (const [trade, work] of byTrade(labour.filter(wanted))) {
        const needed = leads.neededBy(work.flatMap(({ parts }) => parts));
        const own = before === after ? id : `${id}/${trade.replaceAll(" ", "-")}`;
        const crew = crews.take(trade, work);
        const notes = [crew.note, caution].filter((note) => note !== undefined);
        const hours = apply(crewHours, { H_sum: sumOf(work, `person-hours: ${what}`), n_people: crew.people }, { means: `crew hours: ${what}` });
        items.push({
          item: {
            id: own,
            what,
            kind: "work",
            crew: crew.id,
            hours,
            after: unique([...before, ...needed]),
            ...(notes.length === 0 ? {} : { note: notes.join("; ") }),
          },
          resource: crew.resource,
        });
        before = [own];
      }
      return before;
    },
    wait: (id, what, hours, after) => {
      items.push({ item: { id, what, kind: "wait", crew: undefined, hours, after: unique(after) }, resource: undefined });
      return [id];
    },
    hold: (id, what, signs, inspection, after) => {
      const hours = sumOf(labour.filter(inspection), `hours of inspection: ${what}`);
      const item: WorkItem = { id, what, kind: "hold point", crew: undefined, hours, after: unique(after), signs };
      items.push({ item, resource: undefined });
      return [id];
    },
    open: () => {
      const followed = new Set(items.flatMap(({ item }) => item.after));
      return items.map(({ item }) => item.id).filter((id) => !followed.has(id));
    },
  };
}

/** Hours of the clock that common practice waits. */
export function usualWait(hours: number, means: string): Quantity<"h"> {
  return given(hours, "h", "H_wait", means, { kind: "constant", source: commonPractice });
}

function byTrade(work: readonly LabourWork[]): ReadonlyMap<string, readonly LabourWork[]> {
  const trades = new Map<string, LabourWork[]>();
  for (const one of work) {
    const same = trades.get(one.trade);
    if (same === undefined) trades.set(one.trade, [one]);
    else same.push(one);
  }
  return trades;
}

function unique(ids: After): After {
  return [...new Set(ids)];
}
