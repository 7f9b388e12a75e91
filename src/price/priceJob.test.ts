import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkWorking } from "../../test/checkWorking.ts";
import { demoBuilds } from "../../test/demoBuilds.ts";
import type { PriceBook } from "../job/priceBook.ts";
import { takeOffBuild } from "../takeoff/takeOffBuild.ts";
import { marginOfPrice } from "./formulas.ts";
import { priceJob } from "./priceJob.ts";
import type { Quote } from "./quote.ts";

const SEED = 4201;
const demos = demoBuilds().map((demo) => ({ ...demo, takeoff: takeOffBuild(demo.build) }));
const first = demos[0]!;
const { book } = first;
const sum = (numbers: readonly number[]): number => numbers.reduce((total, one) => total + one, 0);

function expectIdentities(quote: Quote): void {
  const { lines, direct, overhead, contingency, cost, margin, price, tax, total } = quote;
  for (const { what, count, rate, amount } of lines) {
    expect(Math.abs(amount.value - count.value * rate.value), what).toBeLessThanOrEqual(0.5 + 1e-6);
  }
  expect(direct.value).toBe(sum(lines.map(({ amount }) => amount.value)));
  expect(cost.value).toBe(direct.value + overhead.value + contingency.value);
  expect(price.value).toBe(cost.value + margin.value);
  expect(total.value).toBe(price.value + tax.value);
  for (const one of [...lines.map(({ amount }) => amount), direct, overhead, contingency, cost, margin, price, tax, total]) {
    expect(Number.isSafeInteger(one.value), one.means).toBe(true);
    expect(one.unit).toBe("cents");
  }
}

describe("published", () => {
  /** Margin of 20 % of the price is a mark-up of 25 % on the cost; of 50 %, 100 %: arithmetic of every cost-accounting text. */
  test.for([
    { margin: 0.2, markUp: 0.25 },
    { margin: 0.5, markUp: 1 },
    { margin: 0, markUp: 0 },
  ])("margin of $margin of the price is $markUp of the cost", ({ margin, markUp }) => {
    expect(marginOfPrice.compute({ C_cost: 100_000, r_margin: margin })).toBe(markUp * 100_000);
  });
});

describe.each(demos)("identity: $name", ({ build, takeoff, book: prices }) => {
  const quote = priceJob(build, takeoff, prices);

  test("totals are the sums of their lines to the cent", () => expectIdentities(quote));

  test("the demo book knows every price", () => expect(quote.missing).toEqual([]));

  test("hours of the job are the hours of its labour lines", () => {
    const hours = quote.lines.filter(({ group }) => group === "labour").map(({ count }) => count.value);
    expect(quote.labourHours.value).toBeCloseTo(sum(hours), 9);
  });

  test("every line of the takeoff is priced once, with its whole stock", () => {
    const priced = quote.lines.filter(({ group }) => group !== "labour" && group !== "delivery");
    expect(priced.map(({ id }) => id)).toEqual(takeoff.lines.map(({ id }) => id));
    for (const [at, { count, per }] of priced.entries()) {
      const { buy } = takeoff.lines[at]!;
      const each = per === "litre" ? (buy.holds?.value ?? Number.NaN) * 1000 : buy.holds?.value;
      const wanted = ["piece", "pack", "set"].includes(per) ? buy.count.value : buy.count.value * (each ?? Number.NaN);
      expect(count.value).toBeCloseTo(wanted, 9);
    }
  });

  test("every working says what its text does", () => {
    const { direct, overhead, contingency, cost, margin, price, tax, total, labourHours } = quote;
    expect(checkWorking([direct, overhead, contingency, cost, margin, price, tax, total, labourHours])).toBeGreaterThan(quote.lines.length);
  });

  test("the job's own shares go before the book's", () => {
    const own = build.job.prices;
    const share = (part: number, of: number): number => part / of;
    expect(share(quote.margin.value, quote.price.value)).toBeCloseTo(own.margin ?? prices.margin, 5);
    expect(share(quote.contingency.value, quote.direct.value)).toBeCloseTo(own.contingency ?? prices.contingency, 5);
    expect(share(quote.overhead.value, quote.direct.value)).toBeCloseTo(own.overhead ?? prices.overhead, 5);
    expect(share(quote.tax.value, quote.price.value)).toBeCloseTo(own.tax ?? prices.tax, 5);
  });
});

describe("shares", () => {
  const percent = (greatest: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: greatest * 1000 }).map((mille) => mille / 1000);

  test("identities hold for every share, and the margin is that share of the price to the cent", () => {
    fc.assert(
      fc.property(percent(1), percent(1), percent(0.9), percent(1), (overhead, contingency, margin, tax) => {
        const job = { ...first.build.job, prices: { book: "any", overhead, contingency, margin, tax } };
        const quote = priceJob({ ...first.build, job }, first.takeoff, book);
        expectIdentities(quote);
        expect(Math.abs(quote.margin.value - margin * quote.price.value)).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });
});

describe("missing prices", () => {
  const without: PriceBook = { ...book, materials: { ...book.materials, foams: {}, items: {} } };
  const quote = priceJob(first.build, first.takeoff, without);

  test("are listed by name, and no line stands in their place", () => {
    const wanted = first.takeoff.lines.filter(({ row }) => row === undefined || row.table === "foams").map(({ id }) => id);
    expect(wanted.length).toBeGreaterThan(1);
    expect(quote.missing.map(({ id }) => id)).toEqual(wanted);
    expect(quote.missing.every(({ wanted: what }) => what.includes(book.id))).toBe(true);
    expect(quote.lines.filter(({ id }) => wanted.includes(id))).toEqual([]);
    expectIdentities(quote);
  });

  test("lower the direct cost by what the lines were", () => {
    const whole = priceJob(first.build, first.takeoff, book);
    const left = new Set(quote.missing.map(({ id }) => id));
    const amounts = whole.lines.filter(({ id }) => left.has(id)).map(({ amount }) => amount.value);
    expect(whole.direct.value - quote.direct.value).toBe(sum(amounts));
  });
});
