import { defineFormula } from "../working/formula.ts";
import { source } from "../working/source.ts";

const rate = source("hours of one unit from the price book times the units", "derived");
const total = (list: readonly number[]): number => list.reduce((sum, one) => sum + one, 0);

export const hoursByPiece = defineFormula({
  id: "labour-hours-by-piece",
  symbol: "H_lab",
  means: "person-hours of a task",
  unit: "h",
  text: "n * H_each",
  takes: { n: "1", H_each: "h" },
  source: rate,
  compute: ({ n, H_each }) => n * H_each,
});

export const hoursByLength = defineFormula({
  id: "labour-hours-by-length",
  symbol: "H_lab",
  means: "person-hours of a task",
  unit: "h",
  text: "L * H_metre",
  takes: { L: "m", H_metre: "h/m" },
  source: rate,
  compute: ({ L, H_metre }) => L * H_metre,
});

export const hoursByArea = defineFormula({
  id: "labour-hours-by-area",
  symbol: "H_lab",
  means: "person-hours of a task",
  unit: "h",
  text: "A * H_square",
  takes: { A: "m2", H_square: "h/m2" },
  source: rate,
  compute: ({ A, H_square }) => A * H_square,
});

export const hoursTogether = defineFormula({
  id: "labour-hours-together",
  symbol: "H_sum",
  means: "person-hours together",
  unit: "h",
  text: "sum(H_lab)",
  takes: { H_lab: "h[]" },
  source: source("sum", "derived"),
  compute: ({ H_lab }) => total(H_lab),
});
