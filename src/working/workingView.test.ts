import { describe, expect, it } from "vitest";
import { workingView } from "./workingView.ts";

const style = { system: "metric" } as const;

describe("a working set out for reading", () => {
  it("shows symbol, formula, numbers put in, value and source, by hand", () => {
    const view = workingView(
      {
        results: ["R"],
        steps: [
          { kind: "given", label: "d", symbol: "d", means: "thickness of the foam", value: 0.05, unit: "m", source: "job, foam" },
          { kind: "given", label: "lambda", symbol: "lambda", means: "conductivity", value: 0.025, unit: "W/(m K)", source: "a table" },
          {
            kind: "formula", label: "R", symbol: "R", means: "resistance of the foam", value: 2, unit: "m2K/W", source: "ISO 6946",
            formula: "layer", text: "thick / cond",
            inputs: [
              { name: "thick", isList: false, unit: "m", labels: ["d"], values: [0.05] },
              { name: "cond", isList: false, unit: "W/(m K)", labels: ["lambda"], values: [0.025] },
            ],
          },
          {
            kind: "comparison", left: { label: "R", means: "", value: 2 }, relation: ">=", right: { label: "R_min", means: "", value: 2.5 },
            unit: "m2K/W", holds: false, margin: -0.5, tolerance: 0,
          },
        ],
      },
      style,
    );
    expect(view.worked).toEqual([
      {
        symbol: "R", means: "resistance of the foam", formula: "d / lambda", numbers: "0.05 / 0.025", lists: [],
        value: "2 m²·K/W", source: "ISO 6946",
      },
    ]);
    expect(view.given[0]).toMatchObject({ symbol: "d", value: "0.05 m (50 mm)", source: "job, foam" });
    expect(view.results).toEqual([{ symbol: "R", means: "resistance of the foam", value: "2 m²·K/W" }]);
    expect(view.compared).toEqual([{ text: "R ≥ R_min: 2 m²·K/W ≥ 2.5 m²·K/W: does not hold, by 0.5 m²·K/W", holds: false }]);
  });
});
