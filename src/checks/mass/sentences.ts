import type { Sentences } from "../finding.ts";
import type { Say } from "../say.ts";

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
  "mass near middle": (f: OffMiddle, say) => `${offMiddle(f, say)}.`,
  "mass off middle": (f: OffMiddle, say) => `${offMiddle(f, say)}, so tell whoever lifts it.`,
  "centre height": (f: { height: number }, say) => `The centre of mass lies ${say.length(f.height)} above the box's underside.`,
  "corner loads": (f: { blindLeft: number; blindRight: number; doorLeft: number; doorRight: number }, say) =>
    `On four level supports the corners carry ${say.force(f.blindLeft)} (blind end, left), ${say.force(f.blindRight)} (blind end, right), ` +
    `${say.force(f.doorLeft)} (door end, left) and ${say.force(f.doorRight)} (door end, right).`,
  "corner lifts off": (f: { corner: string; load: number }, say) =>
    `On four level supports the corner ${f.corner} would lift off (${say.force(f.load)}); move heavy things toward it.`,
  "no mass": () => "The build has no parts with mass; nothing to weigh.",
} as const satisfies Sentences;

interface OffMiddle {
  readonly way: string;
  readonly offset: number;
  readonly toward: string;
  readonly share: number;
  readonly most: number;
}

function offMiddle({ way, offset, toward, share, most }: OffMiddle, say: Say): string {
  const whole = way === "along" ? "length" : "width";
  const place = `The centre of mass lies ${say.length(offset)} from the middle ${toward}, ${say.share(share)} of the ${whole}`;
  return `${place}; lifting gear is laid out for up to ${say.share(most)}`;
}
