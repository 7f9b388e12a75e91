import { valueAt, type JobFile, type JsonValue } from "../../job/file.ts";
import type { JobIssue } from "../../job/issue.ts";
import { pathText } from "../../job/path.ts";
import { DISPLAY } from "../../units/display.ts";
import { formatQuantity, type System } from "../../units/format.ts";
import { type Kind, kindInWords } from "../../units/kinds.ts";
import { parseQuantity } from "../../units/parse.ts";
import type { Steps } from "./edits.ts";
import type { Field, LeafNode } from "./jobFields.ts";

/** A leaf of the file as the text in its field; "" where nothing stands there. */
export function textAt(file: JobFile, steps: Steps): string {
  const value = valueAt(file, steps);
  if (value === undefined || value === null) return "";
  return typeof value === "object" ? JSON.stringify(value) : String(value);
}

/** What a text becomes in the file: undefined takes an optional field away, whole numbers become numbers, the rest stays as typed. */
export function valueOfText(node: LeafNode, required: boolean, text: string): JsonValue | undefined {
  if (text.trim() === "" && !required) return undefined;
  if (node.kind === "whole" && /^-?\d{1,9}$/.test(text.trim())) return Number(text.trim());
  return text;
}

/** What the reader of the file says of a place: what is wanted, and a form that would do. "" where nothing is wrong. */
export function issueWords(issues: readonly JobIssue[], steps: Steps): string {
  const path = pathText(steps);
  const issue = issues.find((one) => one.path === path);
  if (issue === undefined) return "";
  return `${path} wants ${issue.wants}${issue.example === "" ? "" : `, for example ${issue.example}`}.`;
}

/** Issues at a place or anywhere below it. */
export function issuesBelow(issues: readonly JobIssue[], steps: Steps): number {
  const path = pathText(steps);
  return issues.filter((issue) => issue.path === path || issue.path.startsWith(`${path}.`) || issue.path.startsWith(`${path}[`)).length;
}

/** Why a text is no quantity of the kind, with a form that would do; "" where it is one, or is empty. */
export function problemOfQuantity(kind: Kind, text: string): string {
  if (text === "") return "";
  const read = parseQuantity(kind, text);
  return read.ok ? "" : `${read.reason}; for example ${read.example}.`;
}

/** How a quantity was read, in the screen's units; "" where that is what was typed, or it cannot be read. */
export function readBack(kind: Kind, text: string, system: System): string {
  const read = parseQuantity(kind, text);
  if (!read.ok) return "";
  const shown = formatQuantity(kind, read.value, system);
  return shown.replaceAll(",", "") === text.trim().replaceAll(",", "") ? "" : `= ${shown}`;
}

/** What a field takes: its kind of quantity with the system's own units, or nothing where the name says it. */
export function takes(node: LeafNode, system: System): string {
  if (node.kind !== "quantity") return "";
  const units = node.of === "length" && system === "imperial" ? "ft, in" : DISPLAY[node.of][system].join(", ");
  return `${kindInWords(node.of)}: ${units}`;
}

/** What stands in for a field left out, and why; "" where the field has to be there. */
export function defaultWords({ required, preset, node }: Pick<Field, "required" | "preset" | "node">, why: string | undefined): string {
  if (required) return "";
  const value = preset === undefined ? "" : node.kind === "yes or no" ? (preset === true ? "yes" : "no") : String(preset);
  const reason = why ?? "";
  return [value, reason].filter((part) => part !== "").join(": ");
}
