import type { PlacedOpening, Sweep } from "../../build/build.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import { compare, type Comparison } from "../../working/comparison.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { LEAST_DOOR_ANGLE } from "../limits.ts";
import { around, normalAxis, partBox, spanGap, type WorldBox } from "../places.ts";
import { type Fit, line, notNegative, type Rule } from "./context.ts";
import { reachPast } from "./formulas.ts";
import { pairsOf } from "./pairs.ts";
import { cornersOf, nearestInSweep, outlineOf, type PlanRect } from "./sector.ts";

type Swinging = PlacedOpening & { readonly sweep: Sweep };

/** Every leaf with the opening that it hangs in. */
function leavesOf({ build }: Fit): readonly Swinging[] {
  return build.openings.flatMap((placed) => placed.sweeps.map((sweep) => ({ ...placed, sweep })));
}

/** Leaves open square, and meet no partition, wall or other leaf on the way. */
export const swings: Rule = (fit) => {
  const { build, make } = fit;
  const missing = build.openings
    .filter(({ opening }) => opening.kind === "personnel door" && opening.swing === undefined)
    .map(({ opening: { id } }) => make("swing not stated", { opening: id }, { verdict: "note", at: `swings/${id}/stated`, about: [id] }));
  const leaves = leavesOf(fit);
  const troubles = [
    ...leaves.flatMap((leaf) => angleOf(fit, leaf)),
    ...leaves.flatMap((leaf) => partitionsIn(fit, leaf)),
    ...leaves.flatMap((leaf) => wallsIn(fit, leaf)),
    ...pairsOf(leaves).flatMap(([a, b]) => crossing(fit, a, b)),
  ];
  if (troubles.length > 0 || leaves.length === 0) return [...missing, ...troubles];
  const about = leaves.map(({ opening }) => opening.id);
  const comparison = tightest(leaves.map((leaf) => ({ comparison: angle(leaf) })))?.comparison;
  const pass = make(
    "doors swing free",
    { count: leaves.length },
    { verdict: "pass", at: "swings", about, ...(comparison === undefined ? {} : { comparison }) },
  );
  return [...missing, pass];
};

/** No item stands in the swing of a leaf. */
export const swingsAndItems: Rule = (fit) => {
  const cases = leavesOf(fit).flatMap((leaf) =>
    fit.items.flatMap(({ item, box }) => {
      const comparison = shares(leaf.sweep, box) ? reach(leaf, cornersOf(box), item.id) : undefined;
      return comparison === undefined ? [] : [{ item: item.id, opening: leaf.opening.id, comparison }];
    }),
  );
  const out = cases
    .filter(({ comparison }) => !comparison.holds)
    .map(({ item, opening, comparison }) =>
      fit.make(
        "item in swing",
        { item, opening, over: -comparison.margin },
        { verdict: "stop", at: `swings-and-items/${opening}/${item}`, about: [item, opening], comparison },
      ),
    );
  const least = tightest(cases);
  if (out.length > 0 || least === undefined) return out;
  const { item, opening, comparison } = least;
  return [
    fit.make(
      "swings clear of items",
      { item, opening, clear: comparison.margin },
      { verdict: "pass", at: "swings-and-items", about: [item, opening], comparison },
    ),
  ];
};

function angle({ opening, sweep }: Swinging): Comparison<"rad"> {
  const opens = given(sweep.to - sweep.from, "rad", "phi", `angle that the leaf of ${opening.id} opens`, {
    kind: "part",
    id: opening.id,
    field: "swing",
  });
  return compare(opens, ">=", LEAST_DOOR_ANGLE, 1e-9);
}

function angleOf({ make }: Fit, leaf: Swinging): readonly Finding[] {
  const comparison = angle(leaf);
  const { id } = leaf.opening;
  if (comparison.holds) return [];
  const facts = { opening: id, angle: comparison.left.value };
  return [make("door opens too little", facts, { verdict: "watch", at: `swings/${id}/angle`, about: [id], comparison })];
}

function partitionsIn(fit: Fit, leaf: Swinging): readonly Finding[] {
  const { id } = leaf.opening;
  return fit.build.surfaces
    .filter((surface) => surface.kind === "partition" && surface.id !== leaf.surface.id)
    .flatMap((surface) => {
      const parts = fit.parts(surface.id, "track", "stud", "jamb stud", "board");
      if (parts.length === 0) return [];
      const box = around(parts.map((part) => partBox(surface, part)));
      const comparison = shares(leaf.sweep, box) ? reach(leaf, cornersOf(box), surface.name) : undefined;
      if (comparison === undefined || comparison.holds) return [];
      const facts = { opening: id, partition: surface.name, over: -comparison.margin };
      return [
        fit.make("swing hits partition", facts, { verdict: "stop", at: `swings/${id}/${surface.id}`, about: [id, surface.id], comparison }),
      ];
    });
}

/** Finished walls, the one across too, as in a lobby shallower than the leaf is wide; the leaf's own lies behind its hinge. */
function wallsIn(fit: Fit, leaf: Swinging): readonly Finding[] {
  const { build, make } = fit;
  if (!leaf.sweep.inside) return [];
  const { id } = leaf.opening;
  const walls: { name: string; id: string; rect: PlanRect }[] = [];
  const { outside } = build.box;
  const whole = { x: { from: 0, to: outside.length }, y: { from: 0, to: outside.width } };
  for (const surface of build.surfaces) {
    const axis = normalAxis(surface);
    if (surface.kind === "partition" || axis === "z") continue;
    const plane = surface.origin[axis] + surface.inward[axis] * surface.stack.finished;
    const stretch = surface.inward[axis] > 0 ? { from: whole[axis].from, to: plane } : { from: plane, to: whole[axis].to };
    walls.push({ name: surface.name, id: surface.id, rect: { ...whole, [axis]: stretch } });
  }
  return walls.flatMap((wall) => {
    const comparison = reach(leaf, cornersOf(wall.rect), wall.name);
    if (comparison === undefined || comparison.holds) return [];
    const facts = { opening: id, wall: wall.name, over: -comparison.margin };
    return [make("swing hits wall", facts, { verdict: "stop", at: `swings/${id}/${wall.id}`, about: [id, wall.id], comparison })];
  });
}

function crossing({ make }: Fit, a: Swinging, b: Swinging): readonly Finding[] {
  const height = ({ sweep }: Swinging) => ({ from: sweep.hinge.z, to: sweep.hinge.z + sweep.height });
  if (spanGap(height(a), height(b)) >= 0) return [];
  const [one, other] = [a.opening.id, b.opening.id];
  const comparison = reach(a, outlineOf(b.sweep), other);
  if (comparison === undefined || comparison.holds) return [];
  return [
    make(
      "swings cross",
      { one, other, over: -comparison.margin },
      { verdict: "watch", at: `swings/${one}/${other}`, about: [one, other], comparison },
    ),
  ];
}

/** True where a block reaches into the height of a leaf. */
function shares(sweep: Sweep, box: WorldBox): boolean {
  return spanGap({ from: sweep.hinge.z, to: sweep.hinge.z + sweep.height }, box.z) < 0;
}

/** The nearest point of a shape in the swing against the leaf's radius; undefined where the shape lies aside of the swing. */
function reach({ opening, sweep }: Swinging, shape: readonly Vec2[], name: string): Comparison<"m"> | undefined {
  const near = nearestInSweep(sweep, shape);
  if (near === undefined) return undefined;
  const r_near: Quantity<"m"> = given(near, "m", "r_near", `hinge of ${opening.id} to the nearest point of ${name} in its swing`, {
    kind: "part",
    id: opening.id,
    field: "swing",
  });
  const room = apply(
    reachPast,
    { r_near, r_leaf: line(sweep.radius, opening.id, "leaf's width") },
    { means: `room between the leaf of ${opening.id} and ${name}` },
  );
  return notNegative(room);
}
