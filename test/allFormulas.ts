import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { PURE_ROOMS } from "../layers.mjs";
import type { AnyFormula } from "../src/working/anyFormula.ts";

/** A formula with the file that exports it. */
export interface FoundFormula {
  readonly file: string;
  readonly formula: AnyFormula;
}

/** What a walk through the source found: the formulas, and how many each file defines in its text. */
export interface FormulaWalk {
  readonly found: readonly FoundFormula[];
  readonly defined: ReadonlyMap<string, number>;
}

/** Files of pure rooms that load a native program. */
const NOT_WALKED = ["src/river/pack.ts", "src/papers/pdf.ts"];

/**
 * Imports every module of the pure rooms (tests apart; the others start programs and compute nothing) and collects the
 * exported formulas, each once. `defined` counts the calls of defineFormula in the text, so that a formula that is not
 * exported shows as a difference.
 */
export async function allFormulas(folders = PURE_ROOMS.map((room) => `src/${room}`)): Promise<FormulaWalk> {
  const seen = new Set<unknown>();
  const found: FoundFormula[] = [];
  const defined = new Map<string, number>();
  for (const file of folders.flatMap(modulesIn)) {
    const calls = readFileSync(file, "utf8").match(/(?<!function )\bdefineFormula\s*[<(]/g);
    if (calls !== null) defined.set(file, calls.length);
    const exported = (await import(pathToFileURL(file).href)) as Record<string, unknown>;
    for (const value of Object.values(exported).flatMap(valuesOf)) {
      if (!isFormula(value) || seen.has(value)) continue;
      seen.add(value);
      found.push({ file, formula: value });
    }
  }
  return { found, defined };
}

/** Files deep in a room come before the front door that passes their formulas on. */
function modulesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((path) => join(folder, path).replaceAll("\\", "/"))
    .filter((path) => path.endsWith(".ts") && !path.endsWith(".test.ts") && !path.endsWith(".d.ts"))
    .filter((path) => !NOT_WALKED.some((start) => path.startsWith(start)))
    .sort()
    .sort((a, b) => depth(b) - depth(a));
}

function depth(path: string): number {
  return path.split("/").length;
}

/** An exported value; of a list or a record, what lies directly in it. */
function valuesOf(value: unknown): readonly unknown[] {
  if (typeof value !== "object" || value === null || isFormula(value)) return [value];
  return Object.values<unknown>(value as Record<string, unknown>);
}

function isFormula(value: unknown): value is AnyFormula {
  return (
    typeof value === "object" &&
    value !== null &&
    ["id", "text", "takes", "compute"].every((key) => Object.hasOwn(value, key))
  );
}
