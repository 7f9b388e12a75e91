import type { Job } from "../job/job.ts";
import type { LabourWork } from "../takeoff/labour.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { commonPractice } from "../working/source.ts";

/** Who does an item. `resource` is kept busy, one item at a time; `note` says what is not as the shop stated it. */
export interface CrewForItem {
  readonly id: string | undefined;
  readonly resource: string;
  readonly people: Quantity<"1">;
  readonly note: string | undefined;
}

/** Gives each item the crew of its trade that has the fewest hours so far. */
export interface Crews {
  readonly take: (trade: string, work: readonly LabourWork[]) => CrewForItem;
}

/**
 * Crews of a job's shop. Trades are compared without capitals. Where no crew has the trade, the item is planned with one
 * hired person of that trade, and says so.
 */
export function crewsOf({ shop }: Job): Crews {
  const loads = shop.crews.map((crew, at) => ({ crew, at, trades: new Set(crew.trades.map(plain)), hours: 0 }));
  return {
    take: (trade, work) => {
      const able = loads.filter(({ trades }) => trades.has(plain(trade)));
      const [first] = able;
      if (first === undefined) return hired(trade);
      const free = able.reduce((least, one) => (one.hours < least.hours ? one : least), first);
      const { crew, at } = free;
      free.hours += work.reduce((sum, { hours }) => sum + hours.value, 0) / crew.people;
      const from = { kind: "job", path: `shop.crews[${at}].people` } as const;
      const people = given(crew.people, "1", "n_people", `people of crew ${crew.id}`, from);
      return { id: crew.id, resource: `crew ${crew.id}`, people, note: undefined };
    },
  };
}

function hired(trade: string): CrewForItem {
  const note = `no crew of the shop has the trade "${trade}"; planned with one hired person`;
  const people = given(1, "1", "n_people", `hired people: ${trade}`, { kind: "constant", source: commonPractice });
  return { id: undefined, resource: `hired ${plain(trade)}`, people, note };
}

function plain(trade: string): string {
  return trade.trim().toLowerCase();
}
