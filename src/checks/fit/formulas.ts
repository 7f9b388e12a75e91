import { defineFormula } from "../../working/formula.ts";
import { source } from "../../working/source.ts";

const GEOMETRY = source("geometry", "derived");

/** Distance from one line to another along an axis, m; negative where the second lies before the first. */
export const clearDistance = defineFormula({
  id: "fit.clearDistance",
  symbol: "c_clear",
  means: "clear distance",
  unit: "m",
  text: "x_2 - x_1",
  takes: { x_1: "m", x_2: "m" },
  source: GEOMETRY,
  compute: ({ x_1, x_2 }) => x_2 - x_1,
});

/** Room between two stretches of one axis, m; negative by how much they overlap. */
export const stretchGap = defineFormula({
  id: "fit.stretchGap",
  symbol: "g",
  means: "room between two stretches",
  unit: "m",
  text: "max(a_1 - b_2, b_1 - a_2)",
  takes: { a_1: "m", a_2: "m", b_1: "m", b_2: "m" },
  source: GEOMETRY,
  compute: ({ a_1, a_2, b_1, b_2 }) => Math.max(a_1 - b_2, b_1 - a_2),
});

/** Room between two rectangles or blocks from the room along each axis, m; negative by the least overlap where they share space. */
export const blockGap = defineFormula({
  id: "fit.blockGap",
  symbol: "g_block",
  means: "room between two blocks",
  unit: "m",
  text: "max(g)",
  takes: { g: "m[]" },
  source: GEOMETRY,
  compute: ({ g }) => g.reduce((most, one) => Math.max(most, one), -Infinity),
});

/** How far a block reaches into another, m: the least that it would have to move to come clear. Takes the rooms along each axis. */
export const reachInto = defineFormula({
  id: "fit.reachInto",
  symbol: "d_into",
  means: "reach of one block into another",
  unit: "m",
  text: "-max(g)",
  takes: { g: "m[]" },
  source: GEOMETRY,
  compute: ({ g }) => -g.reduce((most, one) => Math.max(most, one), -Infinity),
});

/** Least distance between two rectangles from the room along both axes, m; 0 where they touch or overlap. */
export const rectangleDistance = defineFormula({
  id: "fit.rectangleDistance",
  symbol: "d_rect",
  means: "least distance between two rectangles",
  unit: "m",
  text: "sqrt(max(0, g_x)^2 + max(0, g_y)^2)",
  takes: { g_x: "m", g_y: "m" },
  source: GEOMETRY,
  compute: ({ g_x, g_y }) => Math.sqrt(Math.max(0, g_x) ** 2 + Math.max(0, g_y) ** 2),
});

/** Thickness of layers that lie on each other, m. */
export const layersThickness = defineFormula({
  id: "fit.layersThickness",
  symbol: "d_layers",
  means: "thickness of all layers",
  unit: "m",
  text: "sum(d)",
  takes: { d: "m[]" },
  source: GEOMETRY,
  compute: ({ d }) => d.reduce((sum, one) => sum + one, 0),
});

/** What is left of a leaf's radius beyond the nearest point of a thing in its way, m; negative where it passes clear. */
export const reachPast = defineFormula({
  id: "fit.reachPast",
  symbol: "c_leaf",
  means: "room between a leaf's edge and the thing nearest its hinge",
  unit: "m",
  text: "r_near - r_leaf",
  takes: { r_near: "m", r_leaf: "m" },
  source: GEOMETRY,
  compute: ({ r_near, r_leaf }) => r_near - r_leaf,
});

/** The smaller of what an opening w_1 by w_2 leaves around a block's two smaller sizes b_1 and b_2, m; negative where it does not go through. */
export const smallerSpare = defineFormula({
  id: "fit.smallerSpare",
  symbol: "c_pass",
  means: "room left around a block in an opening",
  unit: "m",
  text: "min(w_1 - b_1, w_2 - b_2)",
  takes: { w_1: "m", w_2: "m", b_1: "m", b_2: "m" },
  source: GEOMETRY,
  compute: ({ w_1, w_2, b_1, b_2 }) => Math.min(w_1 - b_1, w_2 - b_2),
});
