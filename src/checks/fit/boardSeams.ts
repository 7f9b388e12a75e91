import type { Surface } from "../../build/surface.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import { compare } from "../../working/comparison.ts";
import { given } from "../../working/quantity.ts";
import type { Finding } from "../check.ts";
import { LEAST_STAGGER, LONGEST_OPEN_EDGE, MOST_OVERHANG, SEAM_TOLERANCE } from "../limits.ts";
import { spanGap } from "../places.ts";
import { type BoardEdge, edgesAlongStuds, openLength, supportsOn } from "./boardEdges.ts";
import { atLeast, type Fit, gapBetween, type Rule } from "./context.ts";
import { tightest } from "../finding.ts";

/** Every board edge along the studs has a support behind it along its length, found from the parts alone. */
export const boardSeams: Rule = (fit) => {
  const out: Finding[] = [];
  let count = 0;
  for (const surface of fit.build.surfaces) {
    const edges = edgesAlongStuds(fit, surface);
    if (edges.length === 0) continue;
    if (surface.stack.studs === undefined && surface.stack.furring === undefined) {
      out.push(
        fit.make(
          "boards without support",
          { surface: surface.name },
          { verdict: "watch", at: `board-seams/${surface.id}`, about: [surface.id] },
        ),
      );
      continue;
    }
    if (surface.stack.furring !== undefined) {
      out.push(
        fit.make("edges on furring", { surface: surface.name }, { verdict: "note", at: `board-seams/${surface.id}`, about: [surface.id] }),
      );
      continue;
    }
    const supports = supportsOn(fit, surface);
    const open = edges
      .map((edge) => ({ edge, length: openLength(edge, supports, isAtEnd(surface, edge) ? MOST_OVERHANG.value : SEAM_TOLERANCE.value) }))
      .filter(({ length }) => length > LONGEST_OPEN_EDGE.value + SAME_LENGTH);
    count += edges.length;
    for (const [layer, found] of byLayer(open)) out.push(unsupported(fit, surface, layer, found));
  }
  if (out.some(({ verdict }) => verdict === "stop") || count === 0) return out;
  return [...out, fit.make("edges supported", { count }, { verdict: "pass", at: "board-seams", about: [] })];
};

/** Seams of one layer keep away from those of the layer on which it lies. */
export const boardStagger: Rule = (fit) => {
  const out: Finding[] = [];
  const nearest: { surface: string; comparison: ReturnType<typeof atLeast> }[] = [];
  for (const surface of fit.build.surfaces) {
    const seams = edgesAlongStuds(fit, surface).filter((edge) => isSeam(fit, surface, edge));
    const close = new Map<number, { edge: BoardEdge; other: BoardEdge; apart: number }[]>();
    for (const edge of seams) {
      for (const other of seams) {
        if (!liesOn(edge, other) || spanGap(edge.v, other.v) > -SEAM_TOLERANCE.value) continue;
        const layer = edge.board.layer ?? 1;
        const found = close.get(layer) ?? [];
        close.set(layer, found);
        found.push({ edge, other, apart: Math.abs(edge.u - other.u) });
      }
    }
    for (const [layer, found] of close) {
      const least = found.reduce((best, one) => (one.apart < best.apart ? one : best));
      const comparison = atLeast(seamsApart(least.edge, least.other), LEAST_STAGGER);
      nearest.push({ surface: surface.name, comparison });
      if (comparison.holds || isSnag(fit, surface, layer, least.edge.u)) continue;
      const near = found.filter(({ apart }) => apart < LEAST_STAGGER.value);
      const facts = {
        surface: surface.name,
        layer,
        count: new Set(near.map(({ edge }) => edge.u.toFixed(3))).size,
        at: least.edge.u,
        apart: comparison.left.value,
        least: LEAST_STAGGER.value,
      };
      const about = [least.edge.board.id, least.other.board.id];
      out.push(fit.make("seams too near", facts, { verdict: "watch", at: `board-stagger/${surface.id}/${layer}`, about, comparison }));
    }
  }
  const least = tightest(nearest);
  if (out.length > 0 || least === undefined || !least.comparison.holds) return out;
  const facts = { surface: least.surface, apart: least.comparison.left.value };
  return [fit.make("seams staggered", facts, { verdict: "pass", at: "board-stagger", about: [], comparison: least.comparison })];
};

function unsupported(fit: Fit, surface: Surface, layer: number, found: readonly { edge: BoardEdge; length: number }[]): Finding {
  const worst = found.reduce((most, one) => (one.length > most.length ? one : most));
  const { board, u } = worst.edge;
  const length = given(worst.length, "m", "c_open", `length of the edge of ${board.id} without support`, {
    kind: "part",
    id: board.id,
    field: "outline against the supports",
  });
  const facts = { surface: surface.name, layer, count: found.length, at: u, open: worst.length };
  return fit.make("edge off support", facts, {
    verdict: "stop",
    at: `board-seams/${surface.id}/${layer}`,
    about: [...new Set(found.map(({ edge }) => edge.board.id))],
    comparison: compare(length, "<=", LONGEST_OPEN_EDGE, SAME_LENGTH),
  });
}

function byLayer<T extends { readonly edge: BoardEdge }>(found: readonly T[]): ReadonlyMap<number, readonly T[]> {
  const layers = new Map<number, T[]>();
  for (const one of found) {
    const layer = one.edge.board.layer ?? 1;
    const alike = layers.get(layer);
    if (alike === undefined) layers.set(layer, [one]);
    else alike.push(one);
  }
  return layers;
}

/** An edge that a board of the same layer meets: not at the ends of the lining, and not around a hole. */
function isSeam(fit: Fit, surface: Surface, edge: BoardEdge): boolean {
  const { u, v } = edge;
  const atHole = fit.build.openings.some(
    ({ surface: { id }, lining }) =>
      id === surface.id &&
      Math.min(Math.abs(u - lining.u0), Math.abs(u - lining.u1)) < SEAM_TOLERANCE.value &&
      spanGap(v, { from: lining.v0, to: lining.v1 }) < -SEAM_TOLERANCE.value,
  );
  return !isAtEnd(surface, edge) && !atHole;
}

/** True at the two ends of the lining, where a board butts against the neighbour. */
function isAtEnd({ lined }: Surface, { u }: BoardEdge): boolean {
  return u <= lined.u0 + LEAST_EDGE || u >= lined.u1 - LEAST_EDGE;
}

/** Ends of the lining shift by the thickness of the neighbour's boards. */
const LEAST_EDGE = 0.06;

/** True where the first edge's board lies right on the second's, on the side of the room. */
function liesOn(edge: BoardEdge, other: BoardEdge): boolean {
  const [a, b] = [edge.board, other.board];
  if (a.layer === undefined || b.layer === undefined || a.layer !== b.layer + 1) return false;
  const touch = SEAM_TOLERANCE.value / 100;
  return Math.abs(a.depth.from - b.depth.to) < touch || Math.abs(a.depth.to - b.depth.from) < touch;
}

function seamsApart(edge: BoardEdge, other: BoardEdge) {
  const at = ({ u }: BoardEdge) => ({ from: u, to: u });
  return gapBetween(at(edge), edge.board.id, at(other), other.board.id, "along");
}

function isSnag(fit: Fit, surface: Surface, layer: number, u: number): boolean {
  return fit.build.snags.some(
    (snag) =>
      snag.kind === "stagger lost" && snag.surface === surface.id && snag.layer === layer && Math.abs(snag.seam - u) < SEAM_TOLERANCE.value,
  );
}
