import { defineFormula } from "../working/formula.ts";
import { source } from "../working/source.ts";

export const crewHours = defineFormula({
  id: "plan-crew-hours",
  symbol: "H_crew",
  means: "hours that a crew takes, all of its people on the item",
  unit: "h",
  text: "H_sum / n_people",
  takes: { H_sum: "h", n_people: "1" },
  source: source("person-hours shared evenly by the people of the crew", "practice"),
  compute: ({ H_sum, n_people }) => H_sum / n_people,
});

export const leadHours = defineFormula({
  id: "plan-lead-hours",
  symbol: "H_lead",
  means: "hours of the clock from order to arrival",
  unit: "h",
  text: "24 * n_days",
  takes: { n_days: "1" },
  source: source("calendar days of 24 h", "derived"),
  compute: ({ n_days }) => 24 * n_days,
});

export const wholeMinutes = defineFormula({
  id: "plan-whole-minutes",
  symbol: "H_take",
  means: "hours that an item takes, in whole minutes",
  unit: "h",
  text: "ceil(60 * H - 1e-9) / 60",
  takes: { H: "h" },
  source: source("a started minute is counted whole", "practice"),
  compute: ({ H }) => Math.ceil(60 * H - 1e-9) / 60,
});

const METHOD = source("critical path method, forward pass (Kelley and Walker 1959)", "memory");

export const itemStart = defineFormula({
  id: "plan-item-start",
  symbol: "t_start",
  means: "start of an item, hours after the first midnight of the plan",
  unit: "h",
  text: "t_ready + H_until",
  takes: { t_ready: "h", H_until: "h" },
  source: METHOD,
  compute: ({ t_ready, H_until }) => t_ready + H_until,
});

export const workEnd = defineFormula({
  id: "plan-work-end",
  symbol: "t_end",
  means: "end of an item in working hours, hours after the first midnight of the plan",
  unit: "h",
  text: "t_ready + H_until + H_take + H_shut",
  takes: { t_ready: "h", H_until: "h", H_take: "h", H_shut: "h" },
  source: METHOD,
  compute: ({ t_ready, H_until, H_take, H_shut }) => t_ready + H_until + H_take + H_shut,
});

export const clockEnd = defineFormula({
  id: "plan-clock-end",
  symbol: "t_end",
  means: "end of an item that runs around the clock, hours after the first midnight of the plan",
  unit: "h",
  text: "t_ready + H_take",
  takes: { t_ready: "h", H_take: "h" },
  source: METHOD,
  compute: ({ t_ready, H_take }) => t_ready + H_take,
});

export const deliveryDays = defineFormula({
  id: "plan-delivery-days",
  symbol: "n_deliver",
  means: "calendar days from the start day to delivery",
  unit: "1",
  text: "ceil(t_end / 24 - 1e-9) - 1",
  takes: { t_end: "h" },
  source: source("calendar days of 24 h; midnight belongs to the day that ends", "derived"),
  compute: ({ t_end }) => Math.ceil(t_end / 24 - 1e-9) - 1,
});

export const daysToSpare = defineFormula({
  id: "plan-days-to-spare",
  symbol: "n_spare",
  means: "calendar days between delivery and the due day",
  unit: "1",
  text: "n_due - n_deliver",
  takes: { n_due: "1", n_deliver: "1" },
  source: source("difference of calendar days", "derived"),
  compute: ({ n_due, n_deliver }) => n_due - n_deliver,
});
