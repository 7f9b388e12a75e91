import { readdirSync, readFileSync } from "node:fs";
import Papa from "papaparse";
import { describe, expect, it, test } from "vitest";
import { readJob } from "../src/job/read.ts";
import { sheets } from "../src/drawings/sheet.ts";
import { packFiles } from "../src/papers/pack.ts";
import type { PackFile, TypstSource } from "../src/papers/paper.ts";
import { PAPERS } from "../src/papers/papers.ts";
import { compilePdf } from "../src/papers/pdf.ts";
import { dayText, groupedMoney } from "../src/papers/write.ts";
import { runRiver } from "../src/river/river.ts";
import { DEMO_JOBS } from "./demoJobs.ts";
import { readPdf } from "./readPdf.ts";

interface Entry {
  readonly number: string;
  readonly id: string;
  readonly rows: readonly { readonly source: string }[];
  readonly further: readonly string[];
}

type Row = Readonly<Record<string, string>>;

describe.each(DEMO_JOBS)("the pack of $name", ({ job, book, text, file }) => {
  const river = runRiver(job, book);
  const files = packFiles(river, { text, file });

  it("prints title, findings, price and every sheet, read back by another library", async () => {
    const { title, pages } = await readPdf(compilePdf(typstOf(files)));
    const all = pages.map((page) => page.text).join(" ");
    expect(title).toBe(job.job.title);
    for (const { says } of river.findings) expect(bare(all)).toContain(bare(says));
    expect(all).toContain(groupedMoney(river.quote.total.value));
    expect(all).toContain(dayText(river.plan.finish.day));
    const drawn = sheets(river.build, river.drawings);
    expect(drawn.length).toBeGreaterThan(5);
    const onSheets = pages.slice(-drawn.length).map(({ width, height }) => [Math.round(width), Math.round(height)]);
    expect(onSheets).toEqual(drawn.map(({ width, height }) => [Math.round((width / 0.0254) * 72), Math.round((height / 0.0254) * 72)]));
    for (const page of pages.slice(0, -drawn.length)) expect(page.text).toContain(`revision ${job.job.revision}`);
  });

  it("prints the complete working of every finding under its number, and each source once", () => {
    const { entries, sources } = dataOf(files, "workings.json") as { entries: readonly Entry[]; sources: readonly string[] };
    const { groups } = dataOf(files, "findings.json") as { groups: readonly { findings: readonly { id: string; number: string }[] }[] };
    const numbered = groups.flatMap(({ findings }) => findings).filter(({ number }) => number !== "");
    expect(entries.map(({ number, id }) => ({ number, id }))).toEqual(numbered.map(({ number, id }) => ({ number, id })));
    expect(numbered.map(({ id }) => id).sort()).toEqual(river.findings.filter(({ working }) => working.length > 0).map(({ id }) => id).sort());
    expect(new Set(sources).size).toBe(sources.length);
    for (const { rows, further } of entries) {
      expect(rows.length).toBeGreaterThan(0);
      for (const named of [...rows.map(({ source }) => source), ...further].filter((source) => /^[0-9]+$/.test(source))) {
        expect(Number(named)).toBeLessThanOrEqual(sources.length);
      }
    }
  });

  it("prints quantities in the job's units alone", () => {
    const groups = dataOf(files, "quantities.json") as readonly { rows: readonly (readonly string[])[] }[];
    const amounts = groups.flatMap(({ rows }) => rows.flatMap(([, net = "", also = "", buy = "", one = ""]) => [net, also, buy, one])).join(" | ");
    const strange = job.units === "metric" ? /[0-9] ?(ft|lb|in|US gal)\b|[0-9]["']/ : /[0-9] ?(mm|m|m²|m³|kg|L|mL)(?![A-Za-z0-9])/;
    expect(amounts).not.toMatch(strange);
  });

  it("lists in CSV what the takeoff counts, number by number", () => {
    const rows = csvOf(files, "quantities.csv");
    const numbers = rows.map((row) => [row["id"], Number(row["net"]), row["net unit"], Number(row["buy"])]);
    expect(numbers).toEqual(river.takeoff.lines.map(({ id, net, buy }) => [id, net.value, net.unit, buy.count.value]));
  });

  it("lists every piece to be cut, in whole length", () => {
    const rows = csvOf(files, "cut-list.csv");
    expect(rows.map((row) => [row["label"], Number(row["length m"])])).toEqual(river.takeoff.cutList.map(({ label, length }) => [label, length]));
  });

  it("adds up to the quote's totals to the cent", () => {
    const rows = csvOf(files, "price.csv");
    const cents = (row: Row): number => Math.round(Number(row["amount"]) * 100);
    const lines = rows.filter((row) => row["group"] !== "total" && row["group"] !== "missing");
    const total = (id: string): number => cents(rows.find((row) => row["group"] === "total" && row["id"] === id)!);
    expect(lines.reduce((sum, row) => sum + cents(row), 0)).toBe(river.quote.direct.value);
    expect(total("direct cost")).toBe(river.quote.direct.value);
    expect(total("price")).toBe(river.quote.price.value);
    expect(total("total")).toBe(river.quote.total.value);
    expect(rows.every((row) => row["currency"] === book.currency)).toBe(true);
  });

  it("adds up to the heat that the box loses, and lists every surface that is asked for", () => {
    const { tables } = river.heat;
    const rows = csvOf(files, "heat.csv");
    const parts = rows.filter((row) => row["kind"] !== "total");
    expect(parts).toHaveLength(tables.faces.length + tables.junctions.length + tables.openings.length);
    const total = Number(rows.find((row) => row["kind"] === "total")!["loss W/K"]);
    expect(parts.reduce((sum, row) => sum + Number(row["loss W/K"]), 0)).toBeCloseTo(total, 9);
    expect(total).toBe(river.findings.find(({ code }) => code === "heat loss")!.facts["loss"]);
    const surfaces = csvOf(files, "surfaces.csv");
    expect(surfaces.map((row) => Number(row["factor"]))).toEqual(tables.surfaces.map(({ factor }) => factor));
    for (const row of surfaces) expect(Number(row["margin"]) < 0).toBe(row["verdict"] !== "pass");
  });

  it("prints a picture of every section that decides, each with its name", async () => {
    const { pages } = await readPdf(compilePdf(typstOf(files)));
    const all = bare(pages.map((page) => page.text).join(" ")).toLowerCase();
    expect(river.heat.pictures.length).toBeGreaterThan(8);
    for (const { name, coldest } of river.heat.pictures) {
      expect(all).toContain(bare(name).toLowerCase());
      expect(all).toContain(bare(coldest!.words).toLowerCase());
    }
  });

  it("dates every work item", () => {
    const rows = csvOf(files, "plan.csv");
    expect(rows.map((row) => [row["id"], row["start day"], row["finish day"]])).toEqual(
      river.plan.items.map(({ id, start, finish }) => [id, start.day, finish.day]),
    );
  });

  it("holds everything as JSON, unrounded, and the job file as typed", () => {
    const pack = JSON.parse(textOf(files, "pack.json")) as {
      readonly build: { readonly parts: readonly { readonly temporary: boolean; readonly mass: number }[] };
      readonly findings: readonly { readonly id: string; readonly working: { readonly steps: readonly unknown[] } }[];
      readonly quote: { readonly total: { readonly value: number } };
      readonly job: unknown;
    };
    const mass = pack.build.parts.filter(({ temporary }) => !temporary).reduce((sum, part) => sum + part.mass, 0);
    expect(mass).toBe(river.headline.mass);
    expect(pack.findings.map(({ id }) => id)).toEqual(river.findings.map(({ id }) => id));
    expect(pack.findings.some(({ working }) => working.steps.length > 2)).toBe(true);
    expect(pack.quote.total.value).toBe(river.quote.total.value);
    expect(pack.job).toEqual(JSON.parse(text));
    expect(textOf(files, "job.json")).toBe(text);
  });

  it("is the same to the last letter when it is made again", () => {
    expect(packFiles(runRiver(job, book), { text, file })).toEqual(files);
  });

  it("names each file once, in letters that every file system can hold", () => {
    const paths = files.map(({ path }) => path);
    expect(new Set(paths.map((path) => path.toLowerCase())).size).toBe(paths.length);
    expect(paths.filter((path) => !/^([a-z]+\/)?[A-Za-z0-9-][A-Za-z0-9.-]*$/.test(path))).toEqual([]);
  });
});

const HOSTILE = [
  '#panic("x")', "#import \"@preview/x:1.0.0\": *", "*bold* _it_ $x$ `raw` <label> @ref", "= Heading", "\\ #{ 1 } /* */ //",
  "</text><script>alert(1)</script>", "=HYPERLINK(\"x\")", "safe \u202Eevil", "a\u0000b", "[ ] ( ) { } ~ ' \"",
].join(" ");

test("text of the job is shown as text, whatever it looks like", async () => {
  const { file, book } = DEMO_JOBS[0]!;
  const job = file["job"] as Readonly<Record<string, unknown>>;
  const hostile = { ...file, job: { ...job, title: HOSTILE.slice(0, 199).trim() }, notes: [HOSTILE, "=1+1"] };
  const text = JSON.stringify(hostile);
  const read = readJob(text);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const files = packFiles(runRiver(read.job, book), { text, file: read.file });
  const { pages } = await readPdf(compilePdf(typstOf(files)));
  const first = bare(pages.map((page) => page.text).join(" "));
  for (const part of ['#panic("x")', "*bold* _it_ $x$ `raw` <label> @ref", "= Heading", "/* */ //", "</text><script>alert(1)</script>"]) {
    expect(first).toContain(bare(part));
  }
  expect(first).toContain(bare("safe evil"));
});

test("no paper is forgotten: every file in papers/ is in the list, and every file of a pack on the page about packs", () => {
  const page = readFileSync("docs/pack.md", "utf8");
  expect(PAPERS.length).toBe(readdirSync("src/papers/papers").filter((file) => !file.endsWith(".test.ts")).length);
  expect(new Set(PAPERS.map(({ id }) => id)).size).toBe(PAPERS.length);
  for (const { title } of PAPERS) expect(page).toContain(title);
  const { job, book, text, file } = DEMO_JOBS[0]!;
  const paths = packFiles(runRiver(job, book), { text, file }).map(({ path }) => path.replace(/drawings\/.*\./, "drawings/*."));
  for (const path of new Set(paths)) expect(page).toContain(`\`${path}\``);
});

test("the printed pack is set from its own files alone", () => {
  const { job, book, text, file } = DEMO_JOBS[0]!;
  const { files } = typstOf(packFiles(runRiver(job, book), { text, file }));
  for (const [name, source] of Object.entries(files).filter(([name]) => name.endsWith(".typ"))) {
    expect(source, name).not.toContain("@preview");
    const imported = [...source.matchAll(/#import "([^"]+)"/g)].map((match) => match[1]!);
    expect(imported.filter((path) => !Object.hasOwn(files, path)), name).toEqual([]);
  }
});

/** Letters and digits alone: a line break or a hyphen of the setter is no difference. */
function bare(text: string): string {
  return text.normalize("NFKC").replace(/[\s\u00AD\u2010\u2011-]+/g, "").replace(/[\u2018\u2019]/g, "'").replace(/[\u201C\u201D]/g, '"');
}

function typstOf(files: readonly PackFile[]): TypstSource {
  const found = files.find(({ path }) => path === "pack.pdf");
  if (found === undefined || !("typst" in found)) throw new Error("no pack.pdf in the pack");
  return found.typst;
}

function dataOf(files: readonly PackFile[], name: string): unknown {
  return JSON.parse(typstOf(files).files[name] ?? "null") as unknown;
}

function textOf(files: readonly PackFile[], path: string): string {
  const found = files.find((file) => file.path === path);
  if (found === undefined || !("text" in found)) throw new Error(`no ${path} in the pack`);
  return found.text;
}

function csvOf(files: readonly PackFile[], path: string): readonly Row[] {
  const { data, errors } = Papa.parse<Row>(textOf(files, path), { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
}
