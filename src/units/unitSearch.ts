import { KINDS } from "./kinds.ts";
import type { Kind } from "./kinds.ts";
import { unitKey } from "./text.ts";
import { UNITS } from "./unitTable.ts";
import type { UnitRow } from "./unitTable.ts";

/** A unit, or why the text is none: "case" when capitals decide which of two units it is, "unknown" otherwise. */
export type FoundUnit = UnitRow | "case" | "unknown";

/** The unit of `kind` that `text` names. Capitals are forgiven where they cannot change the meaning. */
export function findUnit(kind: Kind, text: string): FoundUnit {
  const key = unitKey(text);
  const spellings = SPELLINGS[kind];
  const asTyped = spellings.exact.get(key);
  if (asTyped !== undefined) return asTyped;
  const candidates = spellings.folded.get(key.toLowerCase());
  if (candidates === undefined) return "unknown";
  const [only, ...others] = candidates;
  return only === undefined || others.length > 0 ? "case" : only;
}

/** The first kind, other than `kind`, that knows the unit `text`; undefined where none does. */
export function kindOfUnit(text: string, kind: Kind): Kind | undefined {
  return KINDS.find((other) => other !== kind && typeof findUnit(other, text) !== "string");
}

interface Spellings {
  readonly exact: ReadonlyMap<string, UnitRow>;
  readonly folded: ReadonlyMap<string, ReadonlySet<UnitRow>>;
}

const SPELLINGS: Readonly<Record<Kind, Spellings>> = mapKinds((kind) => spellingsOf(UNITS[kind]));

function spellingsOf(rows: readonly UnitRow[]): Spellings {
  const exact = new Map<string, UnitRow>();
  const folded = new Map<string, Set<UnitRow>>();
  for (const unit of rows) {
    for (const spelling of [unit.print, ...unit.also]) {
      const key = unitKey(spelling);
      for (const form of new Set([key, key.replaceAll(" ", "")])) {
        exact.set(form, unit);
        const lower = form.toLowerCase();
        folded.set(lower, (folded.get(lower) ?? new Set<UnitRow>()).add(unit));
      }
    }
  }
  return { exact, folded };
}

function mapKinds<Value>(make: (kind: Kind) => Value): Record<Kind, Value> {
  return Object.fromEntries(KINDS.map((kind) => [kind, make(kind)])) as Record<Kind, Value>;
}
