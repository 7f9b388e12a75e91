import { describe, expect, it } from "vitest";
import { placeLabels } from "./placeLabels.ts";

describe("labels of things", () => {
  it("take the next spot where the best is taken, and are left out where none is free", () => {
    const spots = [{ x: 0, y: 0 }, { x: 50, y: 0 }];
    const labels = ["a", "b", "c"].map((key) => ({ key, text: key, half: 10, spots }));
    expect(placeLabels(labels)).toEqual([
      { key: "a", text: "a", x: 0, y: 0 },
      { key: "b", text: "b", x: 50, y: 0 },
    ]);
  });

  it("do not stand on what is taken, nor where they would be read as another's", () => {
    const spots = [{ x: 0, y: 10 }, { x: 50, y: 10 }];
    const box = { x0: -5, x1: 5, y0: 0, y1: 20 };
    const label = { key: "a", text: "a", half: 10, spots };
    expect(placeLabels([label], [box])).toEqual([{ key: "a", text: "a", x: 50, y: 10 }]);
    expect(placeLabels([{ ...label, not: [box] }, { ...label, key: "b" }]).map(({ key, x }) => [key, x])).toEqual([["a", 50], ["b", 0]]);
    expect(placeLabels([{ ...label, spots: [spots[0]!], not: [box] }])).toEqual([]);
  });

  it("may stand side by side and above each other", () => {
    const at = (key: string, x: number, y: number) => ({ key, text: key, half: 10, spots: [{ x, y }] });
    expect(placeLabels([at("a", 0, 0), at("b", 20, 0), at("c", 0, 12), at("d", 19, 1)]).map(({ key }) => key)).toEqual(["a", "b", "c"]);
  });
});
