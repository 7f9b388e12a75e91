import type { JsonValue } from "../job/file.ts";
import type { Job } from "../job/job.ts";
import type { Section, TypstSource } from "./paper.ts";
import { shownValue } from "./shownText.ts";
import { STYLE_TYP } from "./style.ts";
import type { Results } from "./results.ts";
import { dayText } from "./write.ts";
import { wholeJson } from "./wholeJson.ts";

/** A section with the id and title of its paper. */
export interface BoundSection {
  readonly id: string;
  readonly title: string;
  readonly section: Section;
}

/** Binds the sections into one document: title block, then each section in order under its own heading. */
export function bind(results: Results, sections: readonly BoundSection[]): TypstSource {
  const files: Record<string, string> = {
    "main.typ": mainTyp(sections),
    "style.typ": STYLE_TYP,
    "head.json": wholeJson(shownValue(headOf(results))),
  };
  for (const { id, section } of sections) {
    files[`${id}.typ`] = section.template;
    files[`${id}.json`] = wholeJson(shownValue(section.data));
    Object.assign(files, section.files);
  }
  return { files, day: results.job.job.date };
}

function mainTyp(sections: readonly BoundSection[]): string {
  return [
    '#import "style.typ": pack-style, part',
    ...sections.map(({ id }) => `#import "${id}.typ" as ${id}`),
    '#show: pack-style.with(json("head.json"))',
    ...sections.map(({ id, title }, index) => `#part(${JSON.stringify(title)}, ${String(index === 0)}, ${id}.body(json("${id}.json")))`),
    "",
  ].join("\n");
}

function headOf({ job, build }: Results): JsonValue {
  const { id, title, revision, date, drawnBy, customer } = job.job;
  const [year, month, day] = date.split("-").map(Number);
  if (year === undefined || month === undefined || day === undefined) throw new RangeError(`${date} is not a day`);
  return {
    title, id, revision, date: dayText(date), year, month, day,
    customer: customer.name,
    place: job.site.place,
    paper: paperOf(job),
    facts: [
      ["Job number", id], ["Revision", revision], ["Date", dayText(date)], ["Drawn by", drawnBy],
      ["Box", build.box.what], ["Use", job.codes.use], ["Code basis", job.codes.basis], ["Contact", customer.contact ?? "none given"],
    ],
  };
}

/** The paper beside the sheets that drawings stand on: letter to 11 × 17 in, A4 to A3. */
function paperOf(job: Job): "us-letter" | "a4" {
  return job.units === "imperial" && job.codes.basis === "US" ? "us-letter" : "a4";
}
