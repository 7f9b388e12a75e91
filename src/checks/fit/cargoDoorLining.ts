import { catalogue } from "../../catalogue/catalogue.ts";
import type { BuildUp } from "../../job/job.ts";
import { pathText } from "../../job/path.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import { compare } from "../../working/comparison.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { fromRow } from "../fromRow.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { atLeast, distance, type Fit, line, type Rule } from "./context.ts";
import { layersThickness } from "./formulas.ts";
import { sidesOf } from "./sides.ts";

/** The cargo doors close over their lining, and no foam glues them shut. */
export const cargoDoorLining: Rule = (fit) => {
  const { buildUps, faces } = fit.build.job;
  const { cargoDoors, leafLining, buildUp } = faces.doorEnd;
  const working = cargoDoors === "working";
  const lining = leafLining === undefined ? undefined : buildUps[leafLining];
  const wall = buildUp === undefined ? undefined : buildUps[buildUp];
  const out: Finding[] = [];
  if (working && wall?.foam !== undefined) {
    out.push(fit.make("foam locks doors", {}, { verdict: "stop", at: "cargo-door-lining/foam", about: ["doorEnd"] }));
  }
  if (lining === undefined || leafLining === undefined) return out;
  if (working && lining.foam !== undefined) {
    out.push(fit.make("foam on leaf", {}, { verdict: "watch", at: "cargo-door-lining/leaf-foam", about: ["doorEnd"] }));
  }
  return [...out, thickness(fit, leafLining, lining), ...margins(fit)];
};

function thickness({ build, make }: Fit, name: string, lining: BuildUp): Finding {
  const { cargoDoors } = build.box;
  const d = layersOf(name, lining);
  const has = apply(layersThickness, { d }, { means: "thickness of the cargo doors' lining" });
  const most = given(
    cargoDoors.liningDepth,
    "m",
    "d_leaf",
    "greatest thickness behind which the cargo doors close",
    fromRow(`boxes/${build.box.id}`, "cargoDoors.liningDepth", cargoDoors.source),
  );
  const comparison = compare(has, "<=", most, SAME_LENGTH);
  const body = { at: "cargo-door-lining/thickness", about: ["doorEnd"], comparison };
  const facts = { has: has.value, most: most.value };
  if (comparison.holds) return make("leaf lining fits", { ...facts, margin: comparison.margin }, { ...body, verdict: "pass" });
  // Doors that never move again need only clear the wall; the figure still tells how far the lining reaches into the room.
  const verdict = build.job.faces.doorEnd.cargoDoors === "working" ? "stop" : "note";
  return make("leaf lining too thick", { ...facts, over: -comparison.margin }, { ...body, verdict });
}

/** Thickness of each layer: the foam from the job, furring and boards from their rows. */
function layersOf(name: string, { foam, studs, furring, boards }: BuildUp): readonly Quantity<"m">[] {
  const section = (row: string) => {
    const found = catalogue.sections.get(row);
    return given(found.depth, "m", "d", `depth of ${found.what}`, fromRow(`sections/${row}`, "depth", found.source));
  };
  const typed = (value: number, means: string, ...field: readonly string[]) =>
    given(value, "m", "d", means, { kind: "job", path: pathText(["buildUps", name, ...field]) });
  // Studs right against the leaf are the default, which nobody typed.
  const standOff =
    studs === undefined || studs.standOff === 0 ? [] : [typed(studs.standOff, "stand-off of the studs", "studs", "standOff")];
  return [
    ...(foam === undefined || studs !== undefined ? [] : [typed(foam.thickness, "thickness of foam", "foam", "thickness")]),
    ...standOff,
    ...(studs === undefined ? [] : [section(studs.row)]),
    ...(furring === undefined || furring.temporary ? [] : [section(furring.row)]),
    ...boards.map(({ row }) => {
      const board = catalogue.boards.get(row);
      return given(board.thickness, "m", "d", `thickness of ${board.what}`, fromRow(`boards/${row}`, "thickness", board.source));
    }),
  ];
}

/** Lining boards keep clear of the edges of their leaf. */
function margins(fit: Fit): readonly Finding[] {
  const { build, make } = fit;
  const { cargoDoors } = build.box;
  const doorEnd = build.surfaces.find(({ id }) => id === "doorEnd");
  const reach = doorEnd?.leafStack?.finished;
  if (doorEnd === undefined || reach === undefined) return [];
  const least = given(
    cargoDoors.liningMargin,
    "m",
    "c_leaf_edge",
    "margin that the lining keeps from a leaf's edge",
    fromRow(`boxes/${build.box.id}`, "cargoDoors.liningMargin", cargoDoors.source),
  );
  const leaves = fit.parts("doorEnd", "cargo door");
  const boards = fit.parts("doorEnd", "board").filter(({ depth }) => depth.to <= reach + SAME_LENGTH);
  const sides = sidesOf(doorEnd);
  const cases = boards.flatMap((board) => {
    const middle = (board.rect.u0 + board.rect.u1) / 2;
    const leaf = leaves.find(({ rect }) => rect.u0 <= middle && middle <= rect.u1);
    if (leaf === undefined) return [];
    const ends = [
      [leaf.rect.u0, board.rect.u0],
      [board.rect.u1, leaf.rect.u1],
      [leaf.rect.v0, board.rect.v0],
      [board.rect.v1, leaf.rect.v1],
    ] as const;
    return ends.map(([from, to], index) => {
      const side = sides[index] ?? "";
      const margin = distance(
        line(from, index % 2 === 0 ? leaf.id : board.id, `edge ${side}`),
        line(to, index % 2 === 0 ? board.id : leaf.id, `edge ${side}`),
        `margin at the leaf's edge ${side}`,
      );
      return { board: board.id, side, comparison: atLeast(margin, least) };
    });
  });
  const tight = tightest(cases);
  if (tight === undefined) return [];
  const { board, side, comparison } = tight;
  const body = { at: "cargo-door-lining/margins", about: [board], comparison };
  const facts = { board, side, has: comparison.left.value };
  if (comparison.holds) return [make("leaf margin kept", facts, { ...body, verdict: "pass" })];
  const verdict = build.job.faces.doorEnd.cargoDoors === "working" ? "stop" : "note";
  return [make("leaf lining too wide", { ...facts, least: least.value }, { ...body, verdict })];
}
