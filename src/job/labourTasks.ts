/** What a labour rate is counted by. */
export type LabourUnit = "piece" | "metre" | "m2" | "m2 and pass" | "m2 and coat";

/** Every task that a shop spends hours on, with what it is counted by. A price book gives the hours for each. */
export const LABOUR_TASKS = {
  mobilise: "piece",
  "receive box": "piece",
  "clean and blast": "m2",
  "mark opening": "piece",
  "cut opening": "piece",
  "cut along hole": "metre",
  "weld frame": "metre",
  "repair coat": "piece",
  "coat outside": "m2 and coat",
  "set framing": "piece",
  "set furring": "piece",
  "take off furring": "piece",
  "rough-in penetration": "piece",
  "rough-in room": "piece",
  "spray foam": "m2 and pass",
  "set batts": "m2",
  "board gypsum": "m2",
  "board wood panel": "m2",
  "board steel plate": "m2",
  "board aluminium sheet": "m2",
  "board plastic panel": "m2",
  "board floor covering": "m2",
  "board cement board": "m2",
  "tape and fill": "metre",
  trim: "metre",
  "coat inside": "m2 and coat",
  "fit door": "piece",
  "fit window": "piece",
  "fit damper": "piece",
  "fit screen": "piece",
  "fit louvre": "piece",
  "fit fan": "piece",
  "fit split unit": "piece",
  "fit heater": "piece",
  "fit cable entry": "piece",
  "fit sleeve": "piece",
  "fit hatch": "piece",
  "place item": "piece",
  "refrigerant work": "piece",
  inspect: "piece",
  "weigh and load": "piece",
} as const satisfies Readonly<Record<string, LabourUnit>>;

export type LabourTask = keyof typeof LABOUR_TASKS;

export const LABOUR_TASK_IDS: readonly LabourTask[] = Object.keys(LABOUR_TASKS).filter(isLabourTask);

function isLabourTask(id: string): id is LabourTask {
  return Object.hasOwn(LABOUR_TASKS, id);
}
