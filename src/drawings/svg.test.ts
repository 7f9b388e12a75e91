import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { expect, test } from "vitest";
import laboratory from "../../examples/snow-laboratory.job.json" with { type: "json" };
import { assemble } from "../build/assemble.ts";
import { readJobValue } from "../job/read.ts";
import { draw } from "./draw.ts";
import { sheets } from "./sheet.ts";
import type { Sheet } from "./sheet.ts";

const HOSTILE = `<script>alert("1")</script> & 'quoted' %% \\ end`;

test("a sheet is a page of its size in millimetres, with a group for each layer", () => {
  const [plan] = sheetsOf(laboratory);
  expect(plan?.svg).toContain('width="420mm" height="297mm" viewBox="0 0 420 297"');
  for (const layer of ["outline", "frame", "skin", "foam", "studs", "boards", "openings", "swing", "items", "clear-space", "dimensions", "origin"]) {
    expect(plan?.svg).toContain(`<g id="${layer}"`);
  }
});

test("every sheet is well-formed: a typesetter's strict reader takes each as a page", () => {
  const all = sheetsOf(laboratory);
  expect(pdfOf(all).byteLength).toBeGreaterThan(10_000);
});

test("hostile text shows as text", async () => {
  const file = {
    ...laboratory,
    job: { ...laboratory.job, title: HOSTILE },
    notes: [HOSTILE, "two\nlines"],
  };
  const [plan] = sheetsOf(file);
  expect(plan?.svg).not.toContain("<script");
  const shown = await textOf(pdfOf(plan === undefined ? [] : [plan]));
  expect(shown.replace(/\s+/g, "")).toContain(HOSTILE.replace(/\s+/g, ""));
  expect(shown.replace(/\s+/g, " ")).toContain("two lines");
});

function sheetsOf(file: unknown): readonly Sheet[] {
  const reading = readJobValue(file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  const build = assemble(reading.job);
  return sheets(build, draw(build));
}

function pdfOf(pages: readonly Sheet[]): Uint8Array {
  const compiler = NodeCompiler.create({ workspace: "/" });
  for (const [index, page] of pages.entries()) compiler.mapShadow(`/sheet-${index}.svg`, new TextEncoder().encode(page.svg) as never);
  const content = pages.map((page, index) => `#page(width: ${page.width * 1000}mm, height: ${page.height * 1000}mm, margin: 0mm, image("/sheet-${index}.svg", width: 100%))`);
  return compiler.pdf({ mainFileContent: content.join("\n") });
}

async function textOf(pdf: Uint8Array): Promise<string> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const content = await (await document.getPage(1)).getTextContent();
  return content.items.map((item) => ("str" in item ? item.str : "")).join(" ");
}
