import { type Choice, choicesOf, type ChoiceTable } from "../../job/choices.ts";
import type { OptionGroup } from "../controls/Choose.tsx";

/**
 * The rows of a table as a list to choose from, in groups; the groups that usually stand at this place come first. A row
 * that the file names and the catalogue does not hold stands at the top, so that it can be seen.
 */
export function rowGroups(table: ChoiceTable, pattern: string, kind: string | undefined, chosen: string | undefined): readonly OptionGroup[] {
  const rows = choicesOf(table);
  const groups = [...new Set(rows.map(({ group }) => group))];
  const usual = usualGroups(pattern, kind);
  const ordered = [...usual.filter((one) => groups.includes(one)), ...groups.filter((one) => !usual.includes(one))];
  const unknown = chosen !== undefined && !rows.some(({ id }) => id === chosen);
  return [
    ...(unknown ? [{ name: "Not in the catalogue", options: [{ id: chosen, name: chosen }] }] : []),
    ...ordered.map((group) => ({ name: group, options: rows.filter((row) => row.group === group).map(option) })),
  ];
}

function option({ id, what, source }: Choice) {
  return { id, name: what, more: source };
}

/** Groups that usually stand at a place. */
function usualGroups(pattern: string, kind: string | undefined): readonly string[] {
  if (pattern === "openings[].article") return kind === undefined ? [] : (ARTICLES[kind] ?? []);
  return USUAL[pattern] ?? [];
}

const ARTICLES: Readonly<Record<string, readonly string[]>> = {
  "personnel door": ["door"],
  window: ["window"],
  fan: ["fan"],
  intake: ["damper", "louvre", "screen"],
  "cable entry": ["cable entry"],
  "pipe sleeve": ["sleeve"],
  "split-unit lines": ["sleeve", "cable entry"],
  hatch: ["hatch"],
};

const USUAL: Readonly<Record<string, readonly string[]>> = {
  "buildUps{}.studs.row": ["stud"],
  "buildUps{}.studs.track": ["track"],
  "buildUps{}.furring.row": ["hat"],
  "openings[].frame.row": ["hollow", "angle"],
  "openings[].trim": ["angle", "flat"],
  "openings[].fittings[]": ["damper", "screen", "louvre"],
  "items[].article": ["split unit", "heater"],
  "supplied[].article": ["split unit"],
  "floor.layers[].row": ["wood panel", "floor covering", "steel plate"],
};
