import type { Build } from "../build/build.ts";
import { massWorking } from "../build/mass.ts";
import { CHECKS, type Finding } from "../checks/checks.ts";
import type { Job } from "../job/job.ts";
import type { PriceBook } from "../job/priceBook.ts";
import type { Moment, WorkItem } from "../plan/shopPlan.ts";
import type { Headline } from "../papers/results.ts";
import type { Comparison } from "../working/comparison.ts";
import { workingJson } from "../working/json.ts";
import type { Quantity } from "../working/quantity.ts";
import { sourceText } from "../working/source.ts";
import type { Working } from "../working/steps.ts";
import { makeUndrawnRiver, type River } from "./river.ts";

export type { Build, PlacedOpening, Sweep } from "../build/build.ts";
export type { Part, Role } from "../build/part.ts";
export type { Span, Surface, SurfaceId } from "../build/surface.ts";
export type { Verdict } from "../checks/checks.ts";
export type { Polygon } from "../geometry/polygon.ts";
export type { Rect } from "../geometry/rect.ts";
export type { Vec2, Vec3 } from "../geometry/vector.ts";
export type { Headline } from "../papers/results.ts";
export type { Working } from "../working/steps.ts";

/** A finding as plain data; its working is asked for by id. */
export interface ScreenFinding extends Pick<Finding, "id" | "check" | "verdict" | "code" | "facts" | "says" | "about"> {
  readonly sources: readonly string[];
  readonly leavesOut: string;
  readonly decides: string;
}

export interface ScreenQuoteLine {
  readonly id: string;
  readonly group: string;
  readonly what: string;
  readonly count: number;
  readonly per: string;
  readonly amountCents: number;
}

export interface ScreenWorkItem extends Pick<WorkItem, "id" | "what" | "kind" | "crew"> {
  readonly start: Moment;
  readonly finish: Moment;
  readonly critical: boolean;
}

/** All that the app shows of one job, as plain data that can be posted between threads. */
export interface Screen {
  readonly build: Build;
  readonly findings: readonly ScreenFinding[];
  readonly headline: Headline;
  readonly quote: readonly ScreenQuoteLine[];
  readonly plan: readonly ScreenWorkItem[];
}

/** What a working can be asked of: a finding, a part's mass, a line of the quote, the price itself. */
export type WorkingOf =
  | { readonly kind: "finding"; readonly id: string }
  | { readonly kind: "mass of part"; readonly id: string }
  | { readonly kind: "quote line"; readonly id: string }
  | { readonly kind: "price" };

/** A river for the app: runs a job, keeps the last answer, and shows the working of any number in it. */
export interface ScreenRiver {
  /** Throws StageError where a stage could not compute. */
  readonly run: (job: Job, book: PriceBook) => Screen;
  /** Undefined where the last run holds nothing of that id. */
  readonly working: (of: WorkingOf) => Working | undefined;
}

export function makeScreenRiver(): ScreenRiver {
  const river = makeUndrawnRiver();
  let last: UndrawnRiver | undefined;
  return {
    run: (job, book) => {
      last = river(job, book);
      return screenOf(last);
    },
    working: (of) => (last === undefined ? undefined : workingIn(last, of)),
  };
}

type UndrawnRiver = Omit<River, "drawings">;

function screenOf({ build, findings, headline, quote, plan }: UndrawnRiver): Screen {
  return {
    build,
    findings: findings.map(({ id, check, verdict, code, facts, says, about, sources }) => {
      const made = CHECKS.find((one) => one.id === check);
      return {
        id,
        check,
        verdict,
        code,
        facts,
        says,
        about,
        sources: sources.map(sourceText),
        leavesOut: made?.leavesOut ?? "",
        decides: made?.decides ?? "",
      };
    }),
    headline,
    quote: quote.lines.map(({ id, group, what, count, per, amount }) => ({
      id,
      group,
      what,
      count: count.value,
      per,
      amountCents: amount.value,
    })),
    plan: plan.items.map(({ id, what, kind, crew, start, finish, critical }) => ({ id, what, kind, crew, start, finish, critical })),
  };
}

function workingIn({ build, findings, quote }: UndrawnRiver, of: WorkingOf): Working | undefined {
  switch (of.kind) {
    case "finding": {
      const found = findings.find(({ id }) => id === of.id);
      return found === undefined ? undefined : shown(found.working, found.comparison);
    }
    case "mass of part": {
      const part = build.parts.find(({ id }) => id === of.id);
      return part === undefined ? undefined : shown([massWorking(part)]);
    }
    case "quote line": {
      const line = quote.lines.find(({ id }) => id === of.id);
      return line === undefined ? undefined : shown([line.amount]);
    }
    case "price":
      return shown([quote.total]);
  }
}

function shown(roots: readonly Quantity[], comparison?: Comparison): Working {
  return workingJson(roots, comparison === undefined ? [] : [comparison]);
}
