import { describe, expect, it } from "vitest";
import { roundFigure, snapEdge, snapMove, type SnapLine } from "./snap.ts";

const RECT = { u0: 1, u1: 2, v0: 0.5, v1: 1.5 };
const AROUND = { u0: 0.95, u1: 2.05, v0: 0.45, v1: 1.55 };
const LINE: SnapLine = { axis: "u", at: 3, what: "stud" };

describe("snapping", () => {
  it("draws the nearest edge to a line within reach", () => {
    expect(snapMove(RECT, AROUND, { u: 0.99, v: 0 }, [LINE], 0.02, 0.001)).toMatchObject({ du: 1, met: [LINE] });
    // The frame's outer edge, at 2.05, is nearer than the clear edge at 2.
    expect(snapMove(RECT, AROUND, { u: 0.955, v: 0 }, [LINE], 0.02, 0.001).du).toBeCloseTo(0.95, 12);
  });

  it("goes to round figures where no line is near", () => {
    const { du, dv, met } = snapMove({ ...RECT, u0: 1.003 }, AROUND, { u: 0.2, v: 0.013 }, [LINE], 0.02, 0.01);
    expect(1.003 + du).toBeCloseTo(1.2, 12);
    expect(RECT.v0 + dv).toBeCloseTo(0.51, 12);
    expect(met).toEqual([]);
  });

  it("draws middles, not edges, to middle lines", () => {
    const middle: SnapLine = { axis: "u", at: 3.5, what: "middle of the face", middle: true };
    expect(snapMove(RECT, RECT, { u: 1.99, v: 0 }, [middle], 0.02, 0.001).du).toBeCloseTo(2, 12);
    expect(snapMove(RECT, RECT, { u: 1.5, v: 0 }, [middle], 0.02, 0.5).met).toEqual([]);
  });

  it("pulls one edge to a line, or to a round size", () => {
    expect(snapEdge("u", 2.99, 1, [LINE], 0.02, 0.05)).toEqual({ at: 3, met: [LINE] });
    expect(snapEdge("u", 2.52, 1.03, [LINE], 0.02, 0.05).at).toBeCloseTo(2.53, 12);
  });

  it("takes figures as fine as the eye is near", () => {
    expect(roundFigure("metric", 0.06)).toBe(0.05);
    expect(roundFigure("metric", 0.0001)).toBe(0.001);
    expect(roundFigure("imperial", 0.03)).toBe(0.0254);
    expect(roundFigure("imperial", 0)).toBe(0.0254 / 16);
  });
});
