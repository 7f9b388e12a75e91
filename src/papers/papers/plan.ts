import type { JsonValue } from "../../job/file.ts";
import type { DatedItem, ShopPlan } from "../../plan/shopPlan.ts";
import { csv } from "../csv.ts";
import type { Paper } from "../paper.ts";
import type { Results } from "../results.ts";
import { shownText } from "../shownText.ts";
import { clockText, hoursText } from "../write.ts";

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
  const first = dated.items.reduce((least, { start }) => Math.min(least, dayOf(start.day)), dayOf(dated.start.day));
  const last = dated.items.reduce((most, { finish }) => Math.max(most, dayOf(finish.day)), dayOf(dated.finish.day));
  return {
    start: dated.start.day,
    finish: dated.finish.day,
    due: job.shop.due ?? "none set",
    days: last - first + 1,
    marks: monthMarks(first, last),
    unknown: dated.unknownLeads.map(({ what, wanted }) => `${what}: ${wanted}`),
    crews: job.shop.crews.map(({ id, what, people, trades }) => [id, what, String(people), trades.join(", ")]),
    items: dated.items.map((item) => itemData(item, first)),
    holds: dated.items
      .filter(({ kind }) => kind === "hold point")
      .map(({ what, signs, start }) => [start.day, what, signs ?? "", "", ""]),
    notes: dated.items.flatMap(({ what, note }) => (note === undefined ? [] : [`${what}: ${note}`])),
  };
}

function itemData(item: DatedItem, first: number): JsonValue {
  const { start, finish, hours, slackHours } = item;
  return {
    what: item.what,
    who: item.crew ?? WHO[item.kind],
    hours: item.kind === "lead" ? `${Math.round(hours.value / 24)} days` : hoursText(hours.value),
    from: `${start.day.slice(5)} ${clockText(start)}`,
    to: `${finish.day.slice(5)} ${clockText(finish)}`,
    slack: item.critical ? "critical" : hoursText(slackHours),
    critical: item.critical,
    kind: item.kind,
    left: dayOf(start.day) - first + start.minute / MINUTES,
    right: dayOf(finish.day) - first + finish.minute / MINUTES,
  };
}

const WHO: Readonly<Record<DatedItem["kind"], string>> = { work: "no crew", wait: "wait", lead: "supplier", "hold point": "hold point" };
const MINUTES = 1440;

/** Days since 1970. */
function dayOf(day: string): number {
  return Date.parse(`${day}T00:00:00Z`) / 86_400_000;
}

/** Where the months begin, in days from the first. */
function monthMarks(first: number, last: number): JsonValue {
  const days = Array.from({ length: last - first + 1 }, (_, at) => new Date((first + at) * 86_400_000).toISOString().slice(0, 10));
  return days.flatMap((day, at) => (at === 0 || day.endsWith("-01") ? [{ at, text: day.slice(0, 7) }] : []));
}

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

#let bar(item, days) = {
  let share(x) = x / days * 100%
  let look = if item.kind == "lead" or item.kind == "wait" { (fill: white, stroke: 0.5pt + soft) } else if item.critical { (fill: ink) } else { (fill: luma(62%)) }
  box(width: 100%, height: 5pt, {
    if item.kind == "hold point" {
      place(left + horizon, dx: share(item.left) - 2.2pt, polygon(fill: ink, (0pt, 2.5pt), (2.5pt, 0pt), (5pt, 2.5pt), (2.5pt, 5pt)))
    } else {
      place(left + horizon, dx: share(item.left), rect(width: calc.max(0.4%, (item.right - item.left) / days * 100%), height: 5pt, ..look))
    }
  })
}

#let scale(data) = box(width: 100%, height: 6pt, {
  for (at, mark) in data.marks.enumerate() {
    if at == 0 or mark.at - data.marks.at(at - 1).at > data.days / 6 {
      place(left + horizon, dx: mark.at / data.days * 100%, text(size: 6.5pt, mark.text))
    }
  }
})

#let body(data) = {
  [Work starts on #data.start and ends on #data.finish, due: #(data.due). Dates come from the critical path through work, waits and suppliers' leads,
  each crew on one item at a time. Black bars decide the delivery day; white ones are waits and leads; a diamond is a hold point.]
  if data.unknown.len() > 0 {
    framed({
      text(weight: 600)[Lead times that the price book does not know; the plan takes these to be there.]
      list(..data.unknown)
    })
  }
  listing((1.35fr, auto, auto, auto, auto, auto, 1.2fr), (left, left, right, left, left, right, left),
    ("What", "Who", "Takes", "From", "To", "Slack", scale(data)),
    data.items.map(i => {
      let strong(it) = if i.critical { text(weight: 600, it) } else { it }
      (strong(i.what), i.who, i.hours, i.from, i.to, i.slack, bar(i, data.days))
    }), size: 7.6pt)
  if data.notes.len() > 0 { small(list(..data.notes)) }
  if data.holds.len() > 0 {
    heading(level: 2, outlined: false)[Hold points: work stops until someone signs]
    listing((auto, 1.2fr, 1fr, 30mm, 18mm), (left, left, left, left, left), ("Day", "What", "Who signs", "Signature", "Date"), data.holds)
  }
  heading(level: 2, outlined: false)[Crews]
  listing((auto, 1fr, auto, 1.4fr), (left, left, right, left), ("Crew", "What", "People", "Trades"), data.crews)
}
`;
