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
