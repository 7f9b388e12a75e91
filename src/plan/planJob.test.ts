import { describe, expect, test } from "vitest";
import { checkWorking } from "../../test/checkWorking.ts";
import { demoBuilds } from "../../test/demoBuilds.ts";
import { battedJobFile, jobOf, sampleJobFile } from "../../test/sampleJob.ts";
import { assemble } from "../build/assemble.ts";
import type { Build } from "../build/build.ts";
import { catalogue } from "../catalogue/catalogue.ts";
import type { PriceBook } from "../job/priceBook.ts";
import { labourOf } from "../takeoff/labour.ts";
import { suppliedBy } from "../takeoff/supply.ts";
import { takeOffBuild } from "../takeoff/takeOffBuild.ts";
import type { Quantity } from "../working/quantity.ts";
import { DAY, dayNumber } from "./calendar.ts";
import { planJob } from "./planJob.ts";
import type { DatedItem, Moment, ShopPlan } from "./shopPlan.ts";

const demos = demoBuilds();
const { book } = demos[0]!;
const plan = (build: Build, prices: PriceBook = book): ShopPlan => planJob(build, takeOffBuild(build), prices);
const clock = ({ day, minute }: Moment): number => dayNumber(day) * DAY + minute;
const isWorked = ({ kind }: DatedItem): boolean => kind === "work" || kind === "hold point";

describe.each(demos)("identity: $name", ({ build }) => {
  const shopPlan = plan(build);
  const { items } = shopPlan;
  const byId = new Map(items.map((item) => [item.id, item]));
  const { shop } = build.job;

  test("nothing starts before what it follows ends", () => {
    for (const { id, after, start } of items) {
      for (const other of after) expect(clock(start), `${id} after ${other}`).toBeGreaterThanOrEqual(clock(byId.get(other)!.finish));
    }
  });

  test("no work on holidays or days off, nor outside the shop's hours", () => {
    const names = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
    for (const item of items.filter(isWorked)) {
      for (const { day, minute } of [item.start, item.finish]) {
        expect(shop.holidays, item.id).not.toContain(day);
        expect(shop.workDays, item.id).toContain(names[new Date(`${day}T00:00:00Z`).getUTCDay()]);
        expect(minute).toBeGreaterThanOrEqual(420);
        expect(minute).toBeLessThanOrEqual(420 + shop.hoursPerDay / 60);
      }
    }
  });

  test("no crew does two things at once, and each has the trade", () => {
    for (const crew of shop.crews) {
      const own = items.filter((item) => item.crew === crew.id).sort((a, b) => clock(a.start) - clock(b.start));
      own.slice(1).forEach((next, at) => expect(clock(next.start), next.id).toBeGreaterThanOrEqual(clock(own[at]!.finish)));
    }
    expect(items.filter(({ note }) => note?.includes("no crew") === true)).toEqual([]);
  });

  test("all labour of the job is in the plan, once", () => {
    const personHours = items.filter(isWorked).map(({ hours }) => personHoursIn(hours));
    const wanted = labourOf(build, book).reduce((sum, { hours }) => sum + hours.value, 0);
    expect(personHours.reduce((sum, one) => sum + one, 0)).toBeCloseTo(wanted, 6);
  });

  test("delivery is the last item, everything comes before it, and some chain is critical", () => {
    const last = items.at(-1);
    expect(last?.id).toBe("deliver");
    expect(last?.critical).toBe(true);
    const before = new Set<string>(["deliver"]);
    for (const item of [...items].reverse()) if (before.has(item.id)) for (const id of item.after) before.add(id);
    expect(items.map(({ id }) => id).filter((id) => !before.has(id))).toEqual([]);
    expect(clock(shopPlan.finish)).toBe(Math.max(...items.map(({ finish }) => clock(finish))));
    expect(shopPlan.critical).toEqual(items.filter(({ slackHours }) => slackHours === 0).map(({ id }) => id));
  });

  test("boards cover nothing before it was seen: foam and rough-in are signed first", () => {
    for (const board of items.filter(({ id }) => /^(ceiling|walls)\//.test(id))) {
      for (const hold of ["hold/rough-in", "hold/foam"]) {
        const signed = byId.get(hold);
        if (signed !== undefined) expect(clock(board.start)).toBeGreaterThanOrEqual(clock(signed.finish));
      }
    }
    const ceiling = items.filter(({ id }) => id.startsWith("ceiling/"));
    const walls = items.filter(({ id }) => id.startsWith("walls/"));
    if (build.job.ceilingFirst && ceiling.length > 0 && walls.length > 0) {
      expect(Math.min(...walls.map(({ start }) => clock(start)))).toBeGreaterThanOrEqual(Math.max(...ceiling.map(({ finish }) => clock(finish))));
    }
  });

  test("sleeves are welded in before the blast, and the primer is there before the first coat of it", () => {
    const sleeves = byId.get("fit/sleeve");
    const [blast, repair, lead] = [byId.get("blast")!, byId.get("repair")!, byId.get("lead/coating supplier")!];
    expect(sleeves === undefined).toBe(!build.parts.some(({ row }) => row?.id.startsWith("sleeve-") === true));
    if (sleeves !== undefined) expect(clock(blast.start)).toBeGreaterThanOrEqual(clock(sleeves.finish));
    expect(clock(repair.start)).toBeGreaterThanOrEqual(clock(lead.finish));
  });

  test("each coat goes on the roof before the next one goes on the walls", () => {
    const at = (zone: string, coat: number): DatedItem | undefined => byId.get(`coat/${zone}/${coat}`);
    for (let coat = 1; at("outside", coat + 1) !== undefined && at("roof", coat) !== undefined; coat += 1) {
      expect(clock(at("roof", coat)!.finish)).toBeLessThanOrEqual(clock(at("outside", coat + 1)!.start));
    }
    expect(at("roof", 2)).toBeDefined();
  });

  test("all foam is sprayed, the floor's too, and plates welded in the room carry a caution", () => {
    const foam = build.parts.filter(({ shape }) => shape.kind === "fill").map(({ id }) => id);
    const sprayed = new Set(labourOf(build, book).filter(({ task }) => task === "spray foam").map(({ place }) => place));
    expect([...sprayed].sort()).toEqual([...foam].sort());
    const plates = build.parts.some(({ row }) => row?.table === "boards" && catalogue.boards.get(row.id).kind === "steel plate");
    expect(items.some(({ note }) => note?.includes("fire watch") === true)).toBe(plates);
  });

  test("refrigerant work waits for the split unit alone, once for each indoor part", () => {
    const indoor = build.parts.filter(({ row }) => row?.table === "articles" && row.id.startsWith("split-") && row.id.endsWith("-indoor"));
    const hours = labourOf(build, book).filter(({ task }) => task === "refrigerant work").reduce((sum, work) => sum + work.hours.value, 0);
    expect(hours).toBeCloseTo((indoor.length * book.labour.tasks["refrigerant work"].hours) / 3600, 9);
    if (indoor.length > 0) expect(byId.get("refrigerant")?.after).toEqual(["fit/split-unit"]);
  });

  test("hold points say who signs; a split unit brings one for refrigerant", () => {
    const holds = items.filter(({ kind }) => kind === "hold point");
    expect(holds.every(({ signs }) => signs !== undefined && signs !== "")).toBe(true);
    const hasSplit = build.parts.some(({ row }) => row?.table === "articles" && row.id.startsWith("split-"));
    expect(holds.some(({ id }) => id === "hold/refrigerant")).toBe(hasSplit);
  });

  test("the book knows every lead time, and days to spare count from delivery to the due day", () => {
    expect(shopPlan.unknownLeads).toEqual([]);
    const due = shop.due === undefined ? undefined : dayNumber(shop.due) - dayNumber(shopPlan.finish.day);
    expect(shopPlan.daysToSpare).toBe(due);
  });

  test("a supplier group is one lead as long as its slowest line", () => {
    const slowest = new Map<string, number>();
    for (const line of takeOffBuild(build).lines) {
      const { entry } = suppliedBy(build, line, book);
      if (entry === undefined) continue;
      slowest.set(entry.supplierGroup, Math.max(entry.leadDays, slowest.get(entry.supplierGroup) ?? entry.leadDays));
    }
    const wanted = [...slowest].filter(([, days]) => days > 0).map(([group, days]) => [`lead/${group}`, 24 * days]);
    const leads = items.filter(({ kind }) => kind === "lead").map(({ id, hours }) => [id, hours.value]);
    expect(leads.sort()).toEqual(wanted.sort());
  });

  test("longer leads never deliver earlier", () => {
    const finishes = [0, 1, 2, 5, 9, 20, 45].map((more) => clock(plan(build, withLonger(more)).finish));
    expect(finishes).toEqual([...finishes].sort((a, b) => a - b));
    expect(finishes.at(-1)).toBeGreaterThan(finishes[0]!);
  });

  test("every working says what its text does", () => {
    expect(checkWorking(items.map(({ hours }) => hours))).toBeGreaterThan(20);
  });
});

describe("a plain box", () => {
  const build = assemble(jobOf(sampleJobFile()));
  const shopPlan = plan(build);

  test("work that no crew has the trade for is planned with a hired person and says so", () => {
    const hired = shopPlan.items.filter(({ kind, crew }) => kind === "work" && crew === undefined);
    expect(hired.length).toBeGreaterThan(0);
    expect(hired.every(({ note }) => note?.includes("no crew of the shop has the trade") === true)).toBe(true);
  });

  test("has no items for what it does not have", () => {
    const ids = shopPlan.items.map(({ id }) => id);
    expect(ids.filter((id) => /^(cut|weld|coat|hold\/openings|trim|items)/.test(id))).toEqual([]);
    expect(shopPlan.daysToSpare).toBeUndefined();
  });

  test("what the book has no lead time for is named", () => {
    const unknown = plan(build, { ...book, materials: { ...book.materials, boards: {} } }).unknownLeads;
    expect(unknown.length).toBeGreaterThan(0);
    expect(unknown.every(({ id }) => id.startsWith("boards/"))).toBe(true);
  });

  test("where faces have different paint, the slowest one sets the wait", () => {
    const file = sampleJobFile();
    const buildUps = file["buildUps"] as Record<string, Record<string, unknown>>;
    const painted = (name: string, row: string) => ({ ...buildUps[name], paint: [{ row, coats: 1 }] });
    const mixed = { wall: painted("wall", "paint-latex"), ceiling: painted("ceiling", "floor-epoxy") };
    const coats = plan(assemble(jobOf({ ...file, buildUps: mixed }))).items;
    const hours = (id: string): number | undefined => coats.find((item) => item.id === id)?.hours.value;
    const { recoatHours, cureHours } = catalogue.coatings.get("floor-epoxy");
    expect(hours("wait/coat/inside/1")).toBe(recoatHours);
    expect(hours("cure/inside")).toBe(cureHours);
  });

  test("a floor laid before the walls is planned before their studs", () => {
    const file = sampleJobFile();
    const early = plan(assemble(jobOf({ ...file, floor: { laid: "before walls", layers: [{ row: "plywood-3-4" }] } }))).items;
    const at = (id: string): number => clock(early.find((item) => item.id === id)!.start);
    expect(at("floor/1")).toBeLessThan(at("framing/left"));
  });

  test("batts follow the signed foam and come before the boards over them, in a partition after its studs", () => {
    const { items } = plan(assemble(jobOf(battedJobFile())));
    const order = ["hold/foam", "batts", "walls/1", "framing/P1", "batts/P1", "boards/P1/1"];
    const dated = order.map((id) => items.find((item) => item.id === id)!);
    for (const [index, { start }] of dated.slice(1).entries()) expect(clock(start), order[index + 1]).toBeGreaterThanOrEqual(clock(dated[index]!.finish));
  });
});

/** The person-hours behind an item's hours: what a crew shares, or the inspection itself. */
function personHoursIn({ origin, value }: Quantity): number {
  if (origin.kind === "given" || origin.formula.id !== "plan-crew-hours") return value;
  const sum = origin.inputs["H_sum"];
  if (sum === undefined || !("origin" in sum)) throw new Error("crew hours without person-hours");
  return sum.value;
}

/** The book with every lead longer by so many days. */
function withLonger(days: number): PriceBook {
  const longer = <E extends { readonly leadDays: number }>(rows: Readonly<Record<string, E>>): Record<string, E> =>
    Object.fromEntries(Object.entries(rows).map(([id, row]) => [id, { ...row, leadDays: row.leadDays + days }]));
  const { sections, boards, foams, batts, coatings, fasteners, sealants, articles, items } = book.materials;
  return {
    ...book,
    boxes: Object.fromEntries(Object.entries(book.boxes).map(([id, row]) => [id, longer(row)])),
    materials: {
      sections: longer(sections),
      boards: longer(boards),
      foams: longer(foams),
      batts: longer(batts),
      coatings: longer(coatings),
      fasteners: longer(fasteners),
      sealants: longer(sealants),
      articles: longer(articles),
      items: longer(items),
    },
  };
}
