import type { Sentences } from "../finding.ts";

/** Every code of this check, its facts in SI, and the sentence made from them. */
export const SENTENCES = {
  "within gross": (f: { total: number; most: number; left: number }, say) =>
    `The finished box weighs ${say.mass(f.total)}; ${say.mass(f.left)} is left of the greatest gross mass of ${say.mass(f.most)}.`,
  "over gross": (f: { total: number; most: number; over: number }, say) =>
    `The finished box weighs ${say.mass(f.total)}, ${say.mass(f.over)} more than its greatest gross mass of ${say.mass(f.most)}.`,
  "tare from catalogue": (f: { tare: number }, say) =>
    `The tare of ${say.mass(f.tare)} is a usual figure; read the plate or weigh the box and enter it.`,
  "box modelled too heavy": (f: { over: number }, say) =>
    `The box's modelled steel and floor weigh ${say.mass(f.over)} more than its tare; check the tare against the plate.`,
  "mass near middle": (f: { way: string; offset: number; toward: string; share: number; most: number }, say) =>
    `The centre of mass lies ${say.length(f.offset)} from the middle ${f.toward}, ${say.share(f.share)} of the ${f.way === "along" ? "length" : "width"}; lifting gear is laid out for up to ${say.share(f.most)}.`,
  "mass off middle": (f: { way: string; offset: number; toward: string; share: number; most: number }, say) =>
    `The centre of mass lies ${say.length(f.offset)} from the middle ${f.toward}, ${say.share(f.share)} of the ${f.way === "along" ? "length" : "width"}; lifting gear is laid out for up to ${say.share(f.most)}, so tell whoever lifts it.`,
  "centre height": (f: { height: number }, say) =>
    `The centre of mass lies ${say.length(f.height)} above the box's underside.`,
  "corner loads": (f: { blindLeft: number; blindRight: number; doorLeft: number; doorRight: number }, say) =>
    `On four level supports the corners carry ${say.force(f.blindLeft)} (blind end, left), ${say.force(f.blindRight)} (blind end, right), ${say.force(f.doorLeft)} (door end, left) and ${say.force(f.doorRight)} (door end, right).`,
  "corner lifts off": (f: { corner: string; load: number }, say) =>
    `On four level supports the corner ${f.corner} would lift off (${say.force(f.load)}); move heavy things toward it.`,
  "no mass": () => "The build has no parts with mass; nothing to weigh.",
} as const satisfies Sentences;
