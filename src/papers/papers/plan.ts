import type { JsonValue } from "../../job/file.ts";
import type { DatedItem, ShopPlan } from "../../plan/shopPlan.ts";
import { csv } from "../csv.ts";
import type { Paper } from "../paper.ts";
import type { Results } from "../results.ts";
import { shownText } from "../shownText.ts";
import { clockText, counted, dayText, hoursText } from "../write.ts";

/** Who does what, when: dated work items with their waits, leads and hold points. */
export const plan: Paper = {
  id: "plan",
  title: "Plan of the work",
  make: (results) => ({
    section: { template: TEMPLATE, data: dataOf(results) },
    files: [{ path: "plan.csv", text: table(results.plan) }],
  }),
};

function dataOf({ plan: dated, job }: Results): JsonValue {
  const leads = dated.items.filter(({ kind }) => kind === "lead");
  const inShop = dated.items.filter(({ kind }) => kind !== "lead");
  const first = inShop.reduce((least, { start }) => Math.min(least, dayOf(start.day)), dayOf(dated.finish.day));
  const last = inShop.reduce((most, { finish }) => Math.max(most, dayOf(finish.day)), dayOf(dated.finish.day));
  return {
    start: dayText(dated.start.day),
    finish: dayText(dated.finish.day),
    due: job.shop.due === undefined ? "none set" : dayText(job.shop.due),
    days: last - first + 1,
    weeks: weekMarks(first, last),
    unknown: dated.unknownLeads.map(({ what, wanted }) => `${what}: ${wanted}`),
    crews: job.shop.crews.map(({ id, what, people, trades }) => [id, what, String(people), trades.join(", ")]),
    leads: leads.map(({ what, hours, start, finish, slackHours, critical }) => ({
      row: [what, dayText(start.day), dayText(finish.day), daysText(hours.value)],
      spare: critical ? "none" : hoursText(slackHours),
      critical,
    })),
    items: inShop.map((item) => itemData(item, first)),
    holds: dated.items
      .filter(({ kind }) => kind === "hold point")
      .map(({ what, signs, start }) => [dayText(start.day), what.replace(/^hold point: /, ""), signs ?? "", "", ""]),
    notes: dated.items.flatMap(({ what, note }) => (note === undefined ? [] : [`${what}: ${note}`])),
  };
}

function itemData(item: DatedItem, first: number): JsonValue {
  const { start, finish, hours, slackHours } = item;
  return {
    what: item.what,
    who: item.crew ?? WHO[item.kind],
    hours: hoursText(hours.value),
    from: `${dayText(start.day, "without year")} ${clockText(start)}`,
    to: `${dayText(finish.day, "without year")} ${clockText(finish)}`,
    spare: item.critical ? "none" : hoursText(slackHours),
    critical: item.critical,
    kind: item.kind,
    left: dayOf(start.day) - first + start.minute / MINUTES,
    right: dayOf(finish.day) - first + finish.minute / MINUTES,
  };
}

const WHO: Readonly<Record<DatedItem["kind"], string>> = { work: "no crew", wait: "wait", lead: "supplier", "hold point": "who signs" };
const MINUTES = 1440;

/** Whole days of hours by the clock. */
function daysText(hours: number): string {
  return counted(Math.floor(hours / 24 + 1e-9), "day", "days");
}

/** Days since 1970. */
function dayOf(day: string): number {
  return Date.parse(`${day}T00:00:00Z`) / 86_400_000;
}

/** The Mondays, in days from the first, and the first day itself; every so many of them named that the names stay apart. */
function weekMarks(first: number, last: number): JsonValue {
  const days = Array.from({ length: last - first + 1 }, (_, at) => ({ at, date: new Date((first + at) * 86_400_000) }));
  const mondays = days.filter(({ date }) => date.getUTCDay() === 1);
  const every = Math.ceil(mondays.length / MOST_NAMED);
  return mondays.map(({ at, date }, index) => ({
    at,
    text: index % every === 0 && at < (1 - LAST_NAMED) * days.length ? dayText(date.toISOString().slice(0, 10), "without year") : "",
  }));
}

/** As many days as stand beside each other above the bars. */
const MOST_NAMED = 6;
/** The share of the width that a name takes: none begins so near to the end. */
const LAST_NAMED = 0.12;

function table(dated: ShopPlan): string {
  const header = [
    "id", "what", "kind", "crew", "hours", "after", "start day", "start time", "finish day", "finish time", "slack hours", "critical",
    "signs", "note",
  ];
  return csv(
    header,
    dated.items.map((item) => [
      item.id, shownText(item.what), item.kind, item.crew, item.hours.value, item.after.join(" "), item.start.day, clockText(item.start),
      item.finish.day, clockText(item.finish), item.slackHours, item.critical ? "yes" : "no", item.signs, item.note,
    ]),
  );
}

const TEMPLATE = String.raw`
#import "style.typ": *

#let bar(item, data) = {
  let share(x) = x / data.days * 100%
  let look = if item.kind == "wait" { (fill: white, stroke: 0.5pt + soft) } else if item.critical { (fill: ink) } else { (fill: luma(62%)) }
  box(width: 100%, height: 6pt, {
    for week in data.weeks { place(left + top, dx: share(week.at), dy: -3.4pt, line(angle: 90deg, length: 12.6pt, stroke: 0.3pt + hair)) }
    if item.kind == "hold point" {
      place(left + horizon, dx: share(item.left) - 3pt, polygon(fill: ink, (0pt, 3pt), (3pt, 0pt), (6pt, 3pt), (3pt, 6pt)))
    } else {
      place(left + horizon, dx: share(item.left), rect(width: calc.max(0.8%, (item.right - item.left) / data.days * 100%), height: 6pt, ..look))
    }
  })
}

#let weeks(data) = box(width: 100%, height: 6pt, {
  for week in data.weeks { place(left + horizon, dx: week.at / data.days * 100%, text(size: 6.5pt, week.text)) }
})

#let strong(critical, it) = if critical { text(weight: 600, it) } else { it }

#let body(data) = {
  [Work starts on #data.start and ends on #data.finish, due: #(data.due). Dates come from the critical path through work, waits and suppliers' leads,
  each crew on one item at a time.]
  if data.unknown.len() > 0 {
    framed({
      text(weight: 600)[Lead times that the price book does not know; the plan takes these to be there.]
      list(..data.unknown)
    })
  }
  if data.leads.len() > 0 {
    heading(level: 2, outlined: false)[What to order, and when it is here]
    listing((1fr, auto, auto, auto, auto), (left, left, left, right, right), ("What", "Order on", "Here on", "Takes", "Spare, working time"),
      data.leads.map(l => (strong(l.critical, l.row.first()), ..l.row.slice(1), l.spare)))
  }
  heading(level: 2, outlined: false)[Work in the shop]
  [Black bars have no time to spare: they decide the delivery day. White bars are waits, a diamond is a hold point. Thin upright lines are Mondays.]
  listing((1.15fr, auto, auto, auto, auto, auto, 1.35fr), (left, left, right, left, left, right, left),
    ("What", "Who", "Takes", "From", "To", "Spare", weeks(data)),
    data.items.map(i => (strong(i.critical, i.what), i.who, i.hours, i.from, i.to, i.spare, bar(i, data))), size: 7.6pt)
  if data.notes.len() > 0 { small(list(..data.notes)) }
  if data.holds.len() > 0 {
    heading(level: 2, outlined: false)[Hold points: work stops until someone signs]
    listing((auto, 1fr, 1.5fr, 28mm, 16mm), (left, left, left, left, left), ("Day", "What", "Who signs, and for what", "Signature", "Date"), data.holds)
  }
  block(breakable: false, {
    heading(level: 2, outlined: false)[Crews]
    listing((auto, 1fr, auto, 1.4fr), (left, left, right, left), ("Crew", "What", "People", "Trades"), data.crews)
  })
}
`;
