import { isBoxPart, type Part, type Role } from "../../build/part.ts";
import { findSurface } from "../../build/surface.ts";
import { grow, intersect } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import { compare, type Comparison } from "../../working/comparison.ts";
import { apply } from "../../working/formula.ts";
import type { Finding } from "../check.ts";
import { MOST_INTO_STEEL } from "../limits.ts";
import { around, AXES, ontoSurface, partBox, spanGap, type WorldBox, worldBox } from "../places.ts";
import { gapsBetween } from "./blocks.ts";
import type { Fit, Rule } from "./context.ts";
import { reachInto } from "./formulas.ts";
import { leavesSheet } from "./openingInSheet.ts";
import { coveredBy } from "./outline.ts";

/**
 * Nothing that is added stands in the box's own posts, rails, corner fittings or cross-members, found from the parts
 * alone. Foam, batts and coats lie around steel; what lies over a cut cross-member or past the sheet is told by its own rule.
 */
export const steelInTheWay: Rule = (fit) => {
  const { make } = fit;
  const { hits, notched, told, count } = meetings(fit);
  const worst = new Map<string, Hit>();
  for (const hit of hits) {
    const key = `${hit.part.of ?? hit.part.id}|${hit.steel.id}`;
    const known = worst.get(key);
    if (known === undefined || hit.comparison.margin < known.comparison.margin) worst.set(key, hit);
  }
  const out: Finding[] = [...worst.values()].map(({ part, steel, comparison }) => {
    const name = nameOf(part);
    const facts = { part: name, steel: steel.id, by: comparison.left.value };
    return make("part in steel", facts, {
      verdict: "stop",
      at: `steel-in-the-way/${name}/${steel.id}`,
      about: [name, steel.id],
      comparison,
    });
  });
  if (out.length === 0 && !told && count > 0) {
    out.push(make("parts clear of steel", { count }, { verdict: "pass", at: "steel-in-the-way", about: [] }));
  }
  if (notched.length > 0) {
    const boards = [...new Set(notched.map(({ part }) => part.id))];
    const steel = [...new Set(notched.map((one) => one.steel))];
    const facts = { count: boards.length, around: namesOf(steel) };
    out.push(
      make("boards notched", facts, { verdict: "note", at: "steel-in-the-way/notches", about: [...boards, ...steel.map(({ id }) => id)] }),
    );
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
const AROUND_STEEL: ReadonlySet<Role> = new Set<Role>(["foam", "batt", "coating"]);

interface Meetings {
  readonly hits: readonly Hit[];
  /** Boards of walls and ceiling cut out around steel. */
  readonly notched: readonly { readonly part: Part; readonly steel: Part }[];
  /** True where another rule tells of a part in steel. */
  readonly told: boolean;
  /** How many parts were looked at. */
  readonly count: number;
}

function meetings(fit: Fit): Meetings {
  const { build } = fit;
  const past = new Set(build.openings.filter(leavesSheet).map(({ opening }) => opening.id));
  const steel = build.surfaces.flatMap((surface) => fit.parts(surface.id, ...STEEL).map((part) => ({ part, box: partBox(surface, part) })));
  const hits: Hit[] = [];
  const notched: { part: Part; steel: Part }[] = [];
  let told = false;
  const added = steel.length === 0 ? [] : build.parts.filter((part) => !isBoxPart(part) && !AROUND_STEEL.has(part.role));
  for (const part of added) {
    const placed = { part, box: partBox(findSurface(build.surfaces, part.surface), part) };
    for (const member of steel) {
      if (!meets(placed.box, member.box)) continue;
      if (isTold(part, member.part, past)) {
        told = true;
        continue;
      }
      const reached = reachOf(fit, placed, member);
      if (reached !== undefined) hits.push({ part, steel: member.part, comparison: reached });
      else if (part.role === "board") notched.push({ part, steel: member.part });
    }
  }
  return { hits, notched, told, count: added.length };
}

/** Holes past the sheet and floor openings over cross-members have their own rules. */
function isTold({ of, surface, role }: Part, steel: Part, past: ReadonlySet<string>): boolean {
  if (of === undefined || role === "item") return false;
  return past.has(of) || (surface === "floor" && steel.role === "cross-member");
}

/** How far a part reaches into steel, where that is more than nothing; undefined where its true outline keeps clear. */
function reachOf({ build }: Fit, { part, box }: Placed, steel: Placed): Comparison<"m"> | undefined {
  const surface = findSurface(build.surfaces, part.surface);
  const core = grow(ontoSurface(surface, steel.box).rect, -MOST_INTO_STEEL.value);
  const inSteel = coveredBy(part).filter((rect) => intersect(rect, core) !== undefined);
  if (inSteel.length === 0) return undefined;
  const piece = part.shape.kind === "panel" ? around(inSteel.map((rect) => worldBox(surface, rect, part.depth))) : box;
  const g = gapsBetween(piece, part.id, steel.box, steel.part.id);
  const reach = apply(reachInto, { g }, { means: `reach of ${part.id} into ${steel.part.id}` });
  return compare(reach, "<=", MOST_INTO_STEEL, SAME_LENGTH);
}

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
