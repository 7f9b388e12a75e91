import type { Build } from "../../build/build.ts";
import type { Part, Role } from "../../build/part.ts";
import type { Span, Surface, SurfaceId } from "../../build/surface.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { Item } from "../../job/job.ts";
import { compare, type Comparison } from "../../working/comparison.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import type { Finding } from "../check.ts";
import { findingMaker, type MakeFinding } from "../finding.ts";
import { NO_DISTANCE } from "../limits.ts";
import { partBox, type WorldBox } from "../places.ts";
import { type Say, sayIn } from "../say.ts";
import { clearDistance, stretchGap } from "./formulas.ts";
import { SENTENCES } from "./sentences.ts";

/** An item in its place. */
export interface PlacedItem {
  readonly item: Item;
  readonly box: WorldBox;
}

/** What every rule of this check works from. */
export interface Fit {
  readonly build: Build;
  readonly say: Say;
  readonly make: MakeFinding<typeof SENTENCES>;
  readonly items: readonly PlacedItem[];
  /** Parts of a surface with one of these roles, in the build's order. */
  parts(surface: SurfaceId, ...roles: readonly Role[]): readonly Part[];
}

/** One question of the check; no finding where nothing of its kind is in the build. */
export type Rule = (fit: Fit) => readonly Finding[];

/** Prepares a build for the rules. Throws RangeError where an item of the job has no part. */
export function fitOf(build: Build): Fit {
  const say = sayIn(build.job.units);
  const bySurface = new Map<SurfaceId, Map<Role, Part[]>>();
  const surfaces = new Map<SurfaceId, Surface>(build.surfaces.map((surface) => [surface.id, surface]));
  const itemParts = new Map<string, Part>();
  for (const part of build.parts) {
    const byRole = bySurface.get(part.surface) ?? new Map<Role, Part[]>();
    bySurface.set(part.surface, byRole);
    const alike = byRole.get(part.role);
    if (alike === undefined) byRole.set(part.role, [part]);
    else alike.push(part);
    if (part.role === "item" && part.of !== undefined) itemParts.set(part.of, part);
  }
  return {
    build,
    say,
    make: findingMaker("fit", SENTENCES, say),
    items: build.job.items.map((item) => {
      const part = itemParts.get(item.id);
      const surface = part === undefined ? undefined : surfaces.get(part.surface);
      if (part === undefined || surface === undefined) throw new RangeError(`item ${item.id} has no part in the build`);
      return { item, box: partBox(surface, part) };
    }),
    parts: (surface, ...roles) => {
      const byRole = bySurface.get(surface);
      return byRole === undefined ? [] : roles.flatMap((role) => byRole.get(role) ?? []);
    },
  };
}

/** A place read off the build: part, opening, item or surface, and which line of it. */
export function line(value: number, on: string, field: string): Quantity<"m"> {
  return given(value, "m", "x", `${field} of ${on}`, { kind: "part", id: on, field });
}

/** Clear distance from the first line to the second. */
export function distance(from: Quantity<"m">, to: Quantity<"m">, means: string): Quantity<"m"> {
  return apply(clearDistance, { x_1: from, x_2: to }, { means });
}

/** Room between two stretches, each named by what it belongs to. */
export function gapBetween(a: Span, aOn: string, b: Span, bOn: string, along: string): Quantity<"m"> {
  return apply(
    stretchGap,
    {
      a_1: line(a.from, aOn, `start ${along}`),
      a_2: line(a.to, aOn, `end ${along}`),
      b_1: line(b.from, bOn, `start ${along}`),
      b_2: line(b.to, bOn, `end ${along}`),
    },
    { means: `room between ${aOn} and ${bOn} ${along}` },
  );
}

/** A distance that has to be at least the limit; equal is enough. */
export function atLeast(left: Quantity<"m">, limit: Quantity<"m">): Comparison<"m"> {
  return compare(left, ">=", limit, SAME_LENGTH);
}

/** A distance that may not go below nothing. */
export function notNegative(left: Quantity<"m">): Comparison<"m"> {
  return atLeast(left, NO_DISTANCE);
}
