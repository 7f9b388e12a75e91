import type { Sentences } from "../finding.ts";
import { capital, every } from "../say.ts";

/** What is said of openings. */
export const openingSentences = {
  "hole outside sheet": (f: { opening: string; surface: string; past: string; side: string; over: number }, say) =>
    `${f.opening} on the ${f.surface}: the hole runs ${say.amount(f.over)} past the ${f.past} ${f.side}.`,
  "thin strip": (f: { opening: string; surface: string; side: string; strip: number; least: number }, say) => {
    const [strip, least] = say.lengths(f.strip, f.least);
    return `${f.opening} on the ${f.surface} leaves only ${strip} of sheet ${f.side}; set its frame right on the box's frame or leave ${least}.`;
  },
  "holes in sheet": (f: { count: number; opening: string; side: string; margin: number }, say) =>
    `${capital(every(f.count, "the hole", "holes"))} ${f.count === 1 ? "keeps" : "keep"} to the sheet between posts and rails; least is left at ${f.opening}, ${say.length(f.margin)} ${f.side}.`,

  "holes overlap": (f: { one: string; other: string; over: number }, say) =>
    `The holes of ${f.one} and ${f.other} overlap by ${say.amount(f.over)}; move one of them.`,
  "holes too near": (f: { one: string; other: string; apart: number; least: number }, say) => {
    const [apart, least] = say.lengths(f.apart, f.least);
    return `The holes of ${f.one} and ${f.other} leave only ${apart} of sheet between them; ${least} is usual.`;
  },
  "holes apart": (f: { one: string; other: string; apart: number }, say) =>
    `Holes keep apart; the nearest two are ${f.one} and ${f.other} with ${say.length(f.apart)} between them.`,

  "stud in opening": (f: { opening: string; stud: string; move: number; way: string }, say) =>
    `Stud ${f.stud} crosses ${f.opening}, which has no framing of its own; move ${f.opening} by ${say.atLeast(f.move)} ${f.way}.`,
  "openings between studs": (f: { count: number; opening: string; stud: string; clear: number }, say) =>
    `No stud crosses ${f.count === 1 ? f.opening : `any of the ${f.count} unframed openings`}; nearest is ${f.stud}, ${say.length(f.clear)} from ${f.opening}.`,

  "partition in opening": (f: { opening: string; partition: string; over: number }, say) =>
    `Partition ${f.partition} meets ${f.opening} by ${say.amount(f.over)}; move one of them.`,
  "openings clear of partitions": (f: { opening: string; partition: string; clear: number }, say) =>
    `No partition meets an opening; nearest is ${f.opening}, ${say.length(f.clear)} from ${f.partition}.`,
  "cross-member in opening": (f: { opening: string; member: string; move: number; way: string }, say) =>
    `The floor opening ${f.opening} cuts cross-member ${f.member}; move it ${say.atLeast(f.move)} ${f.way}.`,
  "opening wider than bay": (f: { opening: string; count: number; width: number }, say) =>
    `The floor opening ${f.opening} is ${say.length(f.width)} long, more than the gap between cross-members, and cuts ${f.count === 1 ? "one" : f.count} wherever it is put; an engineer has to say how the floor is carried around it.`,
  "floor openings between cross-members": (f: { opening: string; member: string; clear: number }, say) =>
    `Floor openings lie between cross-members; nearest is ${f.opening}, ${say.length(f.clear)} from ${f.member}.`,

  "article too big": (f: { opening: string; article: string; way: string; needs: number; has: number }, say) => {
    const [needs, has] = say.lengths(f.needs, f.has);
    return `${f.opening}: ${f.article} needs ${needs} of ${f.way}, the clear opening has ${has}.`;
  },
  "article too loose": (f: { opening: string; article: string; way: string; gap: number; most: number }, say) => {
    const [gap, most] = say.lengths(f.gap, f.most);
    return `${f.opening}: ${f.article} leaves a gap of ${gap} in ${f.way}; more than ${most} wants a filler or a smaller opening.`;
  },
  "articles fit": (f: { count: number; opening: string; way: string; spare: number }, say) =>
    `Every article fits its opening (${f.count} checked); the tightest is ${f.opening} with ${say.length(f.spare)} to spare in ${f.way}.`,

  "frame thinner than sheet": (f: { opening: string; frame: number; sheet: number }, say) => {
    const [frame, sheet] = say.lengths(f.frame, f.sheet);
    return `${f.opening}: the frame is ${frame} deep and the sheet's profile ${sheet}; the troughs stay open past the frame.`;
  },
  "hole without frame": (f: { opening: string; size: number; most: number }, say) => {
    const [size, most] = say.lengths(f.size, f.most);
    return `${f.opening} cuts ${size} of corrugated sheet without a welded frame; above ${most} a frame is usual.`;
  },
  "frames cover sheet": (f: { opening: string; frame: number; sheet: number }, say) =>
    `Every welded frame covers the sheet's profile; the tightest is ${f.opening}, ${say.length(f.frame)} deep over ${say.length(f.sheet)}.`,

  "opening crosses leaves": (f: { opening: string }) =>
    `${f.opening} crosses both cargo door leaves, which are to go on working; keep it within one leaf.`,
  "opening on working leaf": (f: { opening: string }) =>
    `${f.opening} is cut in a working cargo door leaf; keep it clear of locking bars and gasket, and let the leaf's hinges carry its weight.`,
  "opening across fixed leaves": (f: { opening: string }) =>
    `${f.opening} crosses both cargo door leaves; weld the leaves together and to the frame first.`,
} as const satisfies Sentences;
