import type { Screen, ScreenFinding, ScreenQuoteLine, ScreenWorkItem } from "../../river/screen.ts";
import type { Currency } from "../../units/money.ts";
import { daysBetween } from "../numbers/changes.ts";

export type FindingDifference =
  | { readonly kind: "new" | "gone"; readonly finding: ScreenFinding }
  | { readonly kind: "other verdict" | "other numbers"; readonly finding: ScreenFinding; readonly before: ScreenFinding };

/** What differs between findings, by their ids; a change of verdict first. */
export function compareFindings(before: readonly ScreenFinding[], after: readonly ScreenFinding[]): readonly FindingDifference[] {
  const old = byId(before);
  const now = byId(after);
  const changed = after.flatMap((finding): readonly FindingDifference[] => {
    const was = old.get(finding.id);
    if (was === undefined) return [{ kind: "new", finding }];
    if (was.verdict !== finding.verdict) return [{ kind: "other verdict", finding, before: was }];
    return was.says === finding.says ? [] : [{ kind: "other numbers", finding, before: was }];
  });
  const gone = before.filter(({ id }) => !now.has(id)).map((finding): FindingDifference => ({ kind: "gone", finding }));
  return ORDER.flatMap((kind) => [...changed, ...gone].filter((one) => one.kind === kind));
}

const ORDER: readonly FindingDifference["kind"][] = ["other verdict", "new", "gone", "other numbers"];

export interface LineDifference {
  readonly id: string;
  readonly what: string;
  readonly group: string;
  /** Undefined where the line is not on that side. */
  readonly beforeCents: number | undefined;
  readonly afterCents: number | undefined;
  readonly cents: number;
}

/** Lines of the quote that differ, the largest difference first. Both sides have to be in one currency. */
export function compareQuotes(before: readonly ScreenQuoteLine[], after: readonly ScreenQuoteLine[]): readonly LineDifference[] {
  const old = byId(before);
  const now = byId(after);
  const ids = [...new Set([...after, ...before].map(({ id }) => id))];
  return ids
    .flatMap((id): readonly LineDifference[] => {
      const [was, is] = [old.get(id), now.get(id)];
      const line = is ?? was;
      if (line === undefined) return [];
      const cents = (is?.amountCents ?? NOTHING) - (was?.amountCents ?? NOTHING);
      if (cents === NOTHING && was !== undefined && is !== undefined) return [];
      return [{ id, what: line.what, group: line.group, beforeCents: was?.amountCents, afterCents: is?.amountCents, cents }];
    })
    .toSorted((a, b) => Math.abs(b.cents) - Math.abs(a.cents));
}

/** A line that is not there costs nothing. */
const NOTHING = 0;

export interface PlanDifference {
  readonly id: string;
  readonly what: string;
  readonly before: string | undefined;
  readonly after: string | undefined;
  /** Calendar days that it ends later; undefined where it is on one side only. */
  readonly later: number | undefined;
}

/** Work that ends on another day, or is on one side only, in the order of the later plan. */
export function comparePlans(before: readonly ScreenWorkItem[], after: readonly ScreenWorkItem[]): readonly PlanDifference[] {
  const old = byId(before);
  const now = byId(after);
  const kept = after.flatMap((item): readonly PlanDifference[] => {
    const was = old.get(item.id)?.finish.day;
    const later = was === undefined ? undefined : daysBetween(was, item.finish.day);
    return later === NOTHING ? [] : [{ id: item.id, what: item.what, before: was, after: item.finish.day, later }];
  });
  const gone = before
    .filter(({ id }) => !now.has(id))
    .map(({ id, what, finish }): PlanDifference => ({ id, what, before: finish.day, after: undefined, later: undefined }));
  return [...kept, ...gone];
}

/** The currency in which money can be compared line by line; undefined where the two differ or one is not priced. */
export function sameCurrency(before: Screen, after: Screen): Currency | undefined {
  const { currency } = before.headline;
  return currency === after.headline.currency ? currency : undefined;
}

function byId<T extends { readonly id: string }>(things: readonly T[]): ReadonlyMap<string, T> {
  return new Map(things.map((thing) => [thing.id, thing]));
}
