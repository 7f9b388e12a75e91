import type { Build } from "../build/build.ts";
import type { PriceBook } from "../job/priceBook.ts";
import type { TakeoffLine } from "./takeoff.ts";

/** What a supplier asks for one thing, and when it comes. */
export interface SupplyEntry {
  readonly per: string;
  /** Whole cents. */
  readonly price: number;
  readonly leadDays: number;
  readonly supplierGroup: string;
}

/** Where the price book speaks of a line, and what it says; no entry where it says nothing. */
export interface Supply {
  readonly path: string;
  readonly entry: SupplyEntry | undefined;
}

/** Finds the price book's entry for a line of the takeoff: one way for prices and for lead times. */
export function suppliedBy(build: Build, line: TakeoffLine, book: PriceBook): Supply {
  const { row } = line;
  if (row === undefined) {
    const wanted = line.what.toLowerCase();
    const found = Object.entries(book.materials.items).find(([what]) => what.toLowerCase() === wanted);
    return { path: `materials.items[${JSON.stringify(line.what)}]`, entry: found?.[1] };
  }
  if (row.table === "boxes") {
    const { condition } = build.job.box;
    const entry = own(book.boxes, row.id)?.[condition];
    return { path: `boxes["${row.id}"]["${condition}"]`, entry };
  }
  if (row.table === "profiles") return { path: `profiles["${row.id}"]`, entry: undefined };
  return { path: `materials.${row.table}["${row.id}"]`, entry: own<SupplyEntry>(book.materials[row.table], row.id) };
}

function own<T>(record: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}
