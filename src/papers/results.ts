import type { Build } from "../build/build.ts";
import type { Finding } from "../checks/checks.ts";
import type { HeatShown } from "../checks/heatShown.ts";
import type { Drawing } from "../drawings/drawing.ts";
import type { JobFile } from "../job/file.ts";
import type { Job } from "../job/job.ts";
import type { ShopPlan } from "../plan/shopPlan.ts";
import type { Quote } from "../price/quote.ts";
import type { Takeoff } from "../takeoff/takeoff.ts";
import type { Currency } from "../units/money.ts";

/** The numbers that decide a job. */
export interface Headline {
  /** Findings by verdict. */
  readonly stops: number;
  readonly watches: number;
  readonly passes: number;
  readonly notes: number;
  /** Mass of the finished box with its fit-out, kg; what comes off before delivery is not in it. */
  readonly mass: number;
  /** Price with tax, whole cents. Not complete where `missingPrices` is above zero. */
  readonly priceCents: number;
  readonly currency: Currency;
  readonly missingPrices: number;
  /** Calendar day on which the last work item ends. */
  readonly deliveryDay: string;
  /** Calendar days between delivery and the due day; negative when late; undefined where no due day is set. */
  readonly daysToSpare: number | undefined;
}

/** Everything that the stages made of one job. */
export interface Results {
  readonly job: Job;
  readonly build: Build;
  readonly findings: readonly Finding[];
  readonly heat: HeatShown;
  readonly takeoff: Takeoff;
  readonly quote: Quote;
  readonly plan: ShopPlan;
  readonly drawings: readonly Drawing[];
  readonly headline: Headline;
}

/** The job file as the user typed it: its text, and the same as JSON in its newest version. */
export interface TypedJob {
  readonly text: string;
  readonly file: JobFile;
}
