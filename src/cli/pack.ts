import { join } from "node:path";
import { readJob } from "../job/read.ts";
import { writePack } from "../river/pack.ts";
import { formatQuantity } from "../units/format.ts";
import { formatMoney } from "../units/money.ts";
import { issueLines } from "./issues.ts";
import { bookBeside } from "./bookBeside.ts";
import { orUserError, readText } from "./readText.ts";
import type { Terminal } from "./terminal.ts";

export interface PackArguments {
  readonly jobPath: string;
  readonly folder: string;
  readonly bookPath: string | undefined;
}

/** `cornerpost pack`: writes the pack and prints the numbers that decide the job. */
export function pack({ jobPath, folder, bookPath }: PackArguments, { out, error }: Terminal): number {
  const jobText = readText(jobPath, "job file");
  const reading = readJob(jobText);
  if (!reading.ok) {
    issueLines(jobPath, reading.issues).forEach(error);
    return 1;
  }
  const { prices, units } = reading.job;
  const usedBook = bookPath ?? bookBeside(jobPath, prices.book);
  const bookText = readText(usedBook, "price book");
  const result = orUserError(() => writePack(jobText, bookText, folder, out), `the pack could not be written into ${folder}`);
  if (!result.ok) {
    [...issueLines(jobPath, result.jobIssues), ...issueLines(usedBook, result.bookIssues)].forEach(error);
    return 1;
  }
  const { headline, written, strangers, book } = result;
  if (book !== prices.book) out(`priced from the book ${book}; the job names ${prices.book}`);
  out(`stops ${headline.stops}, watches ${headline.watches}, notes ${headline.notes}, passes ${headline.passes}`);
  out(`mass ${formatQuantity("mass", headline.mass, units, { digits: 1 })}`);
  out(`price with tax ${formatMoney(headline.priceCents, headline.currency)}${missingText(headline.missingPrices)}`);
  out(`delivery ${headline.deliveryDay}${spareText(headline.daysToSpare)}`);
  out(`files ${written.length}; start with ${join(folder, "pack.pdf")}`);
  if (strangers.length > 0) out(`not of this pack, perhaps of an earlier revision: ${strangers.join(", ")}`);
  return 0;
}

function missingText(missing: number): string {
  return missing === 0 ? "" : `, not complete, prices missing: ${missing}`;
}

function spareText(days: number | undefined): string {
  if (days === undefined) return "";
  return days < 0 ? `, days late: ${-days}` : `, days to spare: ${days}`;
}
