import { describe, expect, test } from "vitest";
import { demoBuilds } from "../../test/demoBuilds.ts";
import { catalogue } from "../catalogue/catalogue.ts";
import { rectHeight, rectWidth } from "../geometry/rect.ts";
import { LABOUR_TASK_IDS, type LabourTask } from "../job/labourTasks.ts";
import { labourOf } from "./labour.ts";

const demos = demoBuilds();
const rough = new Set(["fan", "cable entry", "pipe sleeve", "split-unit lines"]);

/** How much there is of each task, tallied from the build by other means than the takeoff's. */
describe.each(demos)("$name", ({ build, book }) => {
  const labour = labourOf(build, book);
  const hoursOf = (task: LabourTask): number =>
    labour.filter((work) => work.task === task).reduce((sum, { hours }) => sum + hours.value, 0);
  const skin = build.openings.filter(({ surface }) => surface.kind === "face");
  const sum = (amounts: readonly number[]): number => amounts.reduce((total, one) => total + one, 0);
  const bars = (role: string): readonly number[] =>
    build.parts.flatMap(({ role: own, shape }) => (own === role && shape.kind === "bar" ? [shape.length] : []));
  const films = (outside: boolean): readonly number[] =>
    build.parts.flatMap(({ id, shape }) => (shape.kind === "film" && id.includes("/outside/") === outside ? [shape.area] : []));
  const boards = (kind: string): readonly number[] =>
    build.parts.flatMap(({ row, shape }) =>
      shape.kind === "panel" && row?.table === "boards" && catalogue.boards.get(row.id).kind === kind ? [shape.area] : [],
    );

  test.each<readonly [LabourTask, number]>([
    ["mobilise", 1],
    ["mark opening", skin.length],
    ["cut opening", skin.length],
    ["repair coat", skin.length],
    ["cut along hole", sum(skin.map(({ hole }) => 2 * (rectWidth(hole) + rectHeight(hole))))],
    ["weld frame", sum(bars("opening frame"))],
    ["trim", sum(bars("trim"))],
    ["coat outside", sum(films(true))],
    ["coat inside", sum(films(false))],
    ["rough-in room", build.rooms.length],
    ["rough-in penetration", build.openings.filter(({ opening }) => rough.has(opening.kind)).length],
    ["set furring", build.parts.filter(({ role }) => role === "furring").length],
    ["board gypsum", sum(boards("gypsum"))],
    ["board wood panel", sum(boards("wood panel"))],
    ["board floor covering", sum(boards("floor covering"))],
    ["place item", build.job.items.filter(({ article }) => article === undefined).length],
  ])("%s", (task, amount) => {
    expect(hoursOf(task)).toBeCloseTo((amount * book.labour.tasks[task].hours) / 3600, 6);
  });

  test("articles are fitted, each once", () => {
    const articles = build.parts.filter(({ row }) => row?.table === "articles");
    const fitting = LABOUR_TASK_IDS.filter((task) => task.startsWith("fit "));
    const fitted = fitting.map((task) => (hoursOf(task) * 3600) / book.labour.tasks[task].hours);
    expect(sum(fitted)).toBeCloseTo(articles.length, 6);
  });
});
