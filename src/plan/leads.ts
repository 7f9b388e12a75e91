import type { Build } from "../build/build.ts";
import type { PriceBook } from "../job/priceBook.ts";
import { suppliedBy } from "../takeoff/supply.ts";
import type { Takeoff } from "../takeoff/takeoff.ts";
import { apply } from "../working/formula.ts";
import { given } from "../working/quantity.ts";
import type { DraftItem } from "./draftItem.ts";
import { leadHours } from "./formulas.ts";
import type { UnknownLead } from "./shopPlan.ts";

/** Lead times, one item for each group of supplier, ordered on the first day. */
export interface Leads {
  readonly items: readonly DraftItem[];
  readonly unknown: readonly UnknownLead[];
  /** The leads that bring the box. */
  readonly ofBox: readonly string[];
  /** The leads that bring what the parts are made from or held with. */
  readonly neededBy: (parts: readonly string[]) => readonly string[];
}

/** Lead times of a takeoff: a group comes complete with the slowest of its lines. */
export function leadsOf(build: Build, takeoff: Takeoff, book: PriceBook): Leads {
  const slowest = new Map<string, { readonly days: number; readonly path: string }>();
  const byPart = new Map<string, Set<string>>();
  const ofBox: string[] = [];
  const unknown: UnknownLead[] = [];
  for (const line of takeoff.lines) {
    const { entry, path } = suppliedBy(build, line, book);
    if (entry === undefined) {
      unknown.push({ id: line.id, what: line.what, wanted: `a lead time for ${path} in price book ${book.id}` });
      continue;
    }
    if (entry.leadDays === 0) continue;
    const { supplierGroup, leadDays } = entry;
    const known = slowest.get(supplierGroup);
    if (known === undefined || leadDays > known.days) slowest.set(supplierGroup, { days: leadDays, path: `${path}.leadDays` });
    const id = leadId(supplierGroup);
    if (line.group === "box") ofBox.push(id);
    else for (const part of line.parts) addTo(byPart, part, id);
  }
  const items = [...slowest].map(([group, { days, path }]): DraftItem => {
    const n_days = given(days, "1", "n_days", `lead time of ${group}, calendar days`, { kind: "priceBook", path });
    const hours = apply(leadHours, { n_days }, { means: `lead time of ${group}` });
    const what = `order and delivery: ${group}`;
    return { item: { id: leadId(group), what, kind: "lead", crew: undefined, hours, after: [] }, resource: undefined };
  });
  return {
    items,
    unknown,
    ofBox,
    neededBy: (parts) => [...new Set(parts.flatMap((part) => [...(byPart.get(part) ?? [])]))],
  };
}

function leadId(group: string): string {
  return `lead/${group}`;
}

function addTo(map: Map<string, Set<string>>, key: string, value: string): void {
  const known = map.get(key);
  if (known === undefined) map.set(key, new Set([value]));
  else known.add(value);
}
