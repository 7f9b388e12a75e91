import { readdirSync, readFileSync } from "node:fs";
import { assemble } from "../src/build/assemble.ts";
import type { Build } from "../src/build/build.ts";
import type { PriceBook } from "../src/job/priceBook.ts";
import { readPriceBook } from "../src/job/readPriceBook.ts";
import { readJob } from "../src/job/read.ts";

/** The demo jobs, assembled, by the name of their file. */
export function demoBuilds(): readonly { readonly name: string; readonly build: Build }[] {
  return readdirSync("examples")
    .filter((file) => file.endsWith(".job.json"))
    .sort()
    .map((file) => {
      const read = readJob(readFileSync(`examples/${file}`, "utf8"));
      if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2));
      return { name: file.replace(".job.json", ""), build: assemble(read.job) };
    });
}

/** The demo price book; every figure in it is invented. */
export function demoBook(): PriceBook {
  const read = readPriceBook(readFileSync("examples/price-books/demo-shop.price-book.json", "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 2));
  return read.book;
}
