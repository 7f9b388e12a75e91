import type { Part } from "../../build/part.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { source, type Source } from "../../working/source.ts";
import { netPieces } from "../formulas.ts";

/** Length of a bar, from its part. Throws RangeError where the part is no bar. */
export function lengthOf(part: Part): Quantity<"m"> {
  if (part.shape.kind !== "bar") throw new RangeError(`part ${part.id} is no bar`);
  return given(part.shape.length, "m", "L", `length of ${part.what}`, { kind: "part", id: part.id, field: "length" });
}

/** Area of a panel or film, from its part. Throws RangeError for other shapes. */
export function areaOf(part: Part): Quantity<"m2"> {
  if (part.shape.kind !== "panel" && part.shape.kind !== "film") throw new RangeError(`part ${part.id} has no area to buy`);
  return given(part.shape.area, "m2", "A", `area of ${part.what}`, { kind: "part", id: part.id, field: "area" });
}

/** How many pieces parts are, one each. */
export function piecesOf(parts: readonly Part[], means: string): Quantity<"1"> {
  const n = parts.map((part) => given(1, "1", "n", `piece: ${part.what}`, { kind: "part", id: part.id, field: "pieces" }));
  return apply(netPieces, { n }, { means });
}

/** A figure of common practice, which a shop's own may replace. */
export function practice<U extends string>(value: number, unit: U, symbol: string, means: string): Quantity<U> {
  return constant(value, unit, symbol, means, source("common practice", "practice"));
}

/** A figure of common practice or definition, with its source. */
export function constant<U extends string>(value: number, unit: U, symbol: string, means: string, from: Source): Quantity<U> {
  return given(value, unit, symbol, means, { kind: "constant", source: from });
}

/** A field of a catalogue row. */
export function rowField<U extends string>(
  table: string,
  row: { readonly id: string; readonly source: Source },
  field: string,
  value: number,
  as: { readonly unit: U; readonly symbol: string; readonly means: string },
): Quantity<U> {
  return given(value, as.unit, as.symbol, as.means, { kind: "catalogue", row: `${table} ${row.id}`, field, source: row.source });
}

/** Parts by what `keyOf` says, in the order met; parts without a key are left out. */
export function byKey(parts: readonly Part[], keyOf: (part: Part) => string | undefined): ReadonlyMap<string, readonly Part[]> {
  const groups = new Map<string, Part[]>();
  for (const part of parts) {
    const key = keyOf(part);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [part]);
    else group.push(part);
  }
  return groups;
}

/** The first of a group, which has one by the way that it was made. */
export function firstOf<T>(list: readonly T[]): T {
  const first = list[0];
  if (first === undefined) throw new RangeError("an empty group has no first");
  return first;
}
