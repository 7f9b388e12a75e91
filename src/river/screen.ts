import type { Build } from "../build/build.ts";
import type { Part } from "../build/part.ts";
import { massWorking } from "../build/mass.ts";
import { clearSizeWorking, partSizeWorking } from "../build/sizes.ts";
import { type CheckContext, CHECKS, checksAt, type Finding, makeContext, type Pace } from "../checks/checks.ts";
import type { Job } from "../job/job.ts";
import type { PriceBook } from "../job/priceBook.ts";
import { massSum } from "../physics/rigidBody.ts";
import { deliveryWorking, itemWorking } from "../plan/dateWorkings.ts";
import type { Moment, WorkItem } from "../plan/shopPlan.ts";
import { groupAmount } from "../price/groupAmount.ts";
import { unpricedHeadlineOf, type UnpricedHeadline } from "../papers/headline.ts";
import type { Headline } from "../papers/results.ts";
import type { System } from "../units/format.ts";
import { apply } from "../working/formula.ts";
import { workingJson } from "../working/json.ts";
import type { Quantity } from "../working/quantity.ts";
import { sourceText } from "../working/source.ts";
import type { Working } from "../working/steps.ts";
import { type Checked, makeChecking, makeUndrawnRiver, type River } from "./river.ts";
import { type HeatOf, type HeatTables, type Hour, isOfHeat, type SectionPicture, type SectionRow, type SectionsView, sectionsView } from "./sections.ts";
import { inStage } from "./stageError.ts";

export type { Build, PlacedOpening, Sweep } from "../build/build.ts";
export type { Part, Role } from "../build/part.ts";
export type { Span, Surface, SurfaceId } from "../build/surface.ts";
export type { Verdict } from "../checks/checks.ts";
export type { Polygon } from "../geometry/polygon.ts";
export type { Rect } from "../geometry/rect.ts";
export type { Vec2, Vec3 } from "../geometry/vector.ts";
export type { Headline } from "../papers/results.ts";
export type { Working } from "../working/steps.ts";
export type { HeatTables, Hour, SectionPicture, SectionRow } from "./sections.ts";

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

/** Stands where there is no price book to price and date a job from. */
export interface NoBook {
  /** Why, in a short sentence. */
  readonly unpriced: string;
  /** What would mend it. */
  readonly mend: string;
}

/** The numbers that decide a job; without a price book, those that need none. */
export type ScreenHeadline = Headline | (UnpricedHeadline & NoBook & { readonly currency?: undefined });

/** All that the app shows of one job, as plain data that can be posted between threads. */
export interface Screen {
  readonly build: Build;
  readonly findings: readonly ScreenFinding[];
  readonly headline: ScreenHeadline;
  /** None without a price book, and no plan either. */
  readonly quote: readonly ScreenQuoteLine[];
  readonly plan: readonly ScreenWorkItem[];
}

/** What the slow checks say of one job, as plain data. */
export interface SlowScreen {
  /** Ids of the slow checks. */
  readonly checks: readonly string[];
  readonly findings: readonly ScreenFinding[];
}

/** What a working can be asked of: a number of the whole job, or one of the thing with that id (of the role, of the group). */
export type WorkingOf =
  | HeatOf
  | { readonly kind: "price" | "delivery day" | "clear size" }
  | {
      readonly kind: "finding" | "mass of part" | "mass of role" | "size of part" | "quote line" | "quote count" | "quote group" | "plan item";
      readonly id: string;
    };

/** A river for the app: runs a job, keeps the last answer, and shows the working of any number in it. */
export interface ScreenRiver {
  /** With all checks. Throws StageError where a stage could not compute, as the other two do. */
  readonly run: (job: Job, book: PriceBook | NoBook) => Screen;
  /** Without the slow checks. */
  readonly quick: (job: Job, book: PriceBook | NoBook) => Screen;
  /** The slow checks alone. */
  readonly slow: (job: Job) => SlowScreen;
  /** Undefined where the last runs hold nothing of that id. */
  readonly working: (of: WorkingOf) => Working | undefined;
  /** The sections of the last run with slow checks, with their coldest surfaces; none before the first. */
  readonly sections: () => readonly SectionRow[];
  /** Isotherms in steps of the unit system. Undefined where that run has no such section, or its site does not state that month. */
  readonly picture: (id: string, hour: Hour, system: System) => SectionPicture | undefined;
  /** What its box loses and how cold its surfaces are; undefined before the first. */
  readonly heat: () => HeatTables | undefined;
}

export function makeScreenRiver(): ScreenRiver {
  const context = makeContext();
  const whole = makeRunning("any", context);
  const quick = makeRunning("quick", context);
  const slow = makeChecking("slow", context);
  let last: Ran | undefined;
  let lastSlow: Checked | undefined;
  let heat: SectionsView | undefined;
  return {
    run: (job, book) => {
      last = whole(job, book);
      heat = sectionsView(last, context);
      return screenOf(last);
    },
    quick: (job, book) => {
      last = quick(job, book);
      return screenOf(last);
    },
    slow: (job) => {
      lastSlow = slow(job);
      heat = sectionsView(lastSlow, context);
      return { checks: checksAt("slow").map(({ id }) => id), findings: screenFindings(lastSlow.findings) };
    },
    working: (of) => {
      if (isOfHeat(of)) return shown(heat?.roots(of));
      return (last === undefined ? undefined : workingIn(last, of)) ?? (lastSlow === undefined ? undefined : slowWorkingIn(lastSlow, of));
    },
    sections: () => heat?.rows() ?? [],
    picture: (id, hour, system) => heat?.picture(id, hour, system),
    heat: () => heat?.tables(),
  };
}

/** A run; quote and plan are left out where there was no price book. */
type Ran = Pick<River, "job" | "build" | "findings"> & Partial<Pick<River, "quote" | "plan">> & Pick<Screen, "headline">;

/** Runs a job with the checks of a pace, priced or not. */
function makeRunning(pace: Pace, context: CheckContext): (job: Job, book: PriceBook | NoBook) => Ran {
  const priced = makeUndrawnRiver(undefined, pace, context);
  const checked = makeChecking(pace, context);
  return (job, book) => {
    if (!("unpriced" in book)) return priced(job, book);
    const { build, findings } = checked(job);
    return { job, build, findings, headline: { ...inStage("headline", () => unpricedHeadlineOf({ build, findings })), ...book } };
  };
}

function screenOf({ build, findings, headline, quote, plan }: Ran): Screen {
  return {
    build,
    findings: screenFindings(findings),
    headline,
    quote: (quote?.lines ?? []).map(({ id, group, what, count, per, amount }) => ({
      id,
      group,
      what,
      count: count.value,
      per,
      amountCents: amount.value,
    })),
    plan: (plan?.items ?? []).map(({ id, what, kind, crew, start, finish, critical }) => ({ id, what, kind, crew, start, finish, critical })),
  };
}

function screenFindings(findings: readonly Finding[]): readonly ScreenFinding[] {
  return findings.map(({ id, check, verdict, code, facts, says, about, sources }) => {
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
  });
}

function slowWorkingIn({ findings }: Checked, of: WorkingOf): Working | undefined {
  return of.kind === "finding" ? findingWorking(findings, of.id) : undefined;
}

function findingWorking(findings: readonly Finding[], id: string): Working | undefined {
  const found = findings.find((one) => one.id === id);
  return found === undefined ? undefined : workingJson(found.working, found.comparison === undefined ? [] : [found.comparison]);
}

function workingIn({ job, build, findings, quote, plan }: Ran, of: Exclude<WorkingOf, HeatOf>): Working | undefined {
  switch (of.kind) {
    case "finding":
      return findingWorking(findings, of.id);
    case "mass of part":
      return shown(ofPart(build, of.id, (part) => [massWorking(part)]));
    case "mass of role": {
      const parts = build.parts.filter(({ role, temporary }) => role === of.id && !temporary);
      return shown(parts.length === 0 ? undefined : [apply(massSum, { m: parts.map(massWorking) }, { means: `mass of ${of.id}` })]);
    }
    case "size of part":
      return shown(ofPart(build, of.id, partSizeWorking));
    case "clear size":
      return shown(clearSizeWorking(build));
    case "quote line":
      return shown(quote?.lines.filter(({ id }) => id === of.id).map(({ amount }) => amount));
    case "quote count":
      return shown(quote?.lines.filter(({ id }) => id === of.id).map(({ count }) => count));
    case "quote group": {
      const amount = quote === undefined ? undefined : groupAmount(quote, of.id);
      return shown(amount === undefined ? undefined : [amount]);
    }
    case "price":
      return shown(quote === undefined ? undefined : [quote.total]);
    case "plan item":
      return shown(plan === undefined ? undefined : itemWorking(plan, job.shop, of.id));
    case "delivery day":
      return shown(plan === undefined ? undefined : deliveryWorking(plan, job.shop));
  }
}

function ofPart(build: Build, id: string, working: (part: Part) => readonly Quantity[]): readonly Quantity[] | undefined {
  const part = build.parts.find((one) => one.id === id);
  return part === undefined ? undefined : working(part);
}

/** The working of what was found; of nothing there is none. */
function shown(roots: readonly Quantity[] | undefined): Working | undefined {
  return roots === undefined || roots.length === 0 ? undefined : workingJson(roots);
}
