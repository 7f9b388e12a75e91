import type { Part, Role } from "../../build/part.ts";
import { isBoxPart } from "../../build/part.ts";
import { findSurface } from "../../build/surface.ts";
import { grow, intersect } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import { compare, type Comparison } from "../../working/comparison.ts";
import { apply } from "../../working/formula.ts";
import type { Finding } from "../check.ts";
import { MOST_INTO_STEEL } from "../limits.ts";
import { around, AXES, ontoSurface, partBox, spanGap, type WorldBox, worldBox } from "../places.ts";
import { type Fit, gapBetween, type Rule } from "./context.ts";
import { reachInto } from "./formulas.ts";
import { leavesSheet } from "./openingInSheet.ts";
import { coveredBy } from "./outline.ts";

/**
 * Nothing that is added stands in the box's own posts, rails, corner fittings or cross-members, found from the parts
 * alone. Foam and coats lie around steel; what lies over a cut cross-member or past the sheet is told by its own rule.
 */
export const steelInTheWay: Rule = (fit) => {
  const { make } = fit;
  const { hits, notched } = meetings(fit);
  const worst = new Map<string, Hit>();
  for (const hit of hits) {
    const key = `${hit.part.of ?? hit.part.id}|${hit.steel.id}`;
    const known = worst.get(key);
    if (known === undefined || hit.comparison.margin < known.comparison.margin) worst.set(key, hit);
  }
  const out: Finding[] = [...worst.values()].map(({ part, steel, comparison }) => {
    const name = nameOf(part);
    const facts = { part: name, steel: steel.id, by: comparison.left.value };
    return make("part in steel", facts, { verdict: "stop", at: `steel-in-the-way/${name}/${steel.id}`, about: [name, steel.id], comparison });
  });
  if (notched.length > 0) {
    const boards = [...new Set(notched.map(({ part }) => part.id))];
    const steel = [...new Set(notched.map((one) => one.steel))];
    const facts = { count: boards.length, around: namesOf(steel) };
    out.push(make("boards notched", facts, { verdict: "note", at: "steel-in-the-way/notches", about: [...boards, ...steel.map(({ id }) => id)] }));
  }
  return out;
};

interface Hit {
  readonly part: Part;
  readonly steel: Part;
  readonly comparison: Comparison<"m">;
}

interface Placed {
  readonly part: Part;
  readonly box: WorldBox;
}

const STEEL: readonly Role[] = ["post", "rail", "corner fitting", "cross-member"];
const AROUND_STEEL: ReadonlySet<Role> = new Set<Role>(["foam", "coating"]);

/** Parts that stand in steel, and boards cut out around it. */
function meetings(fit: Fit): { readonly hits: readonly Hit[]; readonly notched: readonly { readonly part: Part; readonly steel: Part }[] } {
  const { build } = fit;
  const toldElsewhere = new Set(build.openings.filter(leavesSheet).map(({ opening }) => opening.id));
  const steel = build.surfaces.flatMap((surface) => fit.parts(surface.id, ...STEEL).map((part) => ({ part, box: partBox(surface, part) })));
  const hits: Hit[] = [];
  const notched: { part: Part; steel: Part }[] = [];
  for (const part of build.parts) {
    if (isBoxPart(part) || AROUND_STEEL.has(part.role)) continue;
    const placed = { part, box: partBox(findSurface(build.surfaces, part.surface), part) };
    for (const member of steel) {
      if (!meets(placed.box, member.box) || isTold(placed.part, member.part, toldElsewhere)) continue;
      const reached = reachOf(fit, placed, member);
      if (reached !== undefined) hits.push({ part, steel: member.part, comparison: reached });
      else if (part.role === "board" || part.role === "floor board") notched.push({ part, steel: member.part });
    }
  }
  return { hits, notched };
}

/** Holes past the sheet and floor openings over cross-members have their own rules. */
function isTold({ of, surface }: Part, steel: Part, past: ReadonlySet<string>): boolean {
  if (of === undefined) return false;
  return past.has(of) || (surface === "floor" && steel.role === "cross-member");
}

/** How far a part reaches into steel, where that is more than nothing; undefined where its true outline keeps clear. */
function reachOf({ build }: Fit, { part, box }: Placed, steel: Placed): Comparison<"m"> | undefined {
  const surface = findSurface(build.surfaces, part.surface);
  const core = grow(ontoSurface(surface, steel.box).rect, -MOST_INTO_STEEL.value);
  const inSteel = coveredBy(part).filter((rect) => intersect(rect, core) !== undefined);
  if (inSteel.length === 0) return undefined;
  const piece = part.shape.kind === "panel" ? around(inSteel.map((rect) => worldBox(surface, rect, part.depth))) : box;
  const g = AXES.map((axis) => gapBetween(piece[axis], part.id, steel.box[axis], steel.part.id, WORDS[axis]));
  const reach = apply(reachInto, { g }, { means: `reach of ${part.id} into ${steel.part.id}` });
  return compare(reach, "<=", MOST_INTO_STEEL, SAME_LENGTH);
}

const WORDS = { x: "along the box", y: "across the box", z: "in height" } as const;

/** True where two blocks share more than the tolerance along every axis. */
function meets(a: WorldBox, b: WorldBox): boolean {
  return AXES.every((axis) => spanGap(a[axis], b[axis]) < -MOST_INTO_STEEL.value - SAME_LENGTH);
}

/** An item goes by its own id. */
function nameOf({ role, of, id }: Part): string {
  return role === "item" && of !== undefined ? of : id;
}

/** The kinds of steel in words: "corner fittings and posts". */
function namesOf(steel: readonly Part[]): string {
  return [...new Set(steel.map(({ role }) => `${role}s`))].sort().join(" and ");
}
