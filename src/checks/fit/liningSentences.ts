import type { Sentences } from "../finding.ts";
import { every } from "../say.ts";

/** What is said of linings, framing, boards, foam, batts and cargo doors. */
export const liningSentences = {
  "leaf lining too thick": (f: { over: number; has: number; most: number }, say) => {
    const [has, most] = say.lengths(f.has, f.most);
    return `The cargo doors will not close: their lining is ${has} thick and ${most} is the most, ${say.amount(f.over)} too much.`;
  },
  "leaf lining fits": (f: { has: number; most: number; margin: number }, say) =>
    `The cargo doors close over their lining: ${say.length(f.has)} thick, ${say.length(f.most)} is the most, ${say.length(f.margin)} to spare.`,
  "leaf lining too wide": (f: { board: string; has: number; least: number; side: string }, say) => {
    const [has, least] = say.lengths(f.has, f.least);
    return `The cargo door lining ${f.board} keeps ${has} from its leaf's edge ${f.side}; gasket and locking gear need ${least}.`;
  },
  "leaf margin kept": (f: { board: string; has: number; side: string }, say) =>
    `The lining keeps clear of gasket and locking gear; the least is ${say.length(f.has)} ${f.side} of ${f.board}.`,
  "foam locks doors": () =>
    "Foam between the cargo doors and the wall inside them would glue working doors shut; leave it out there, or fix the doors.",
  "foam on leaf": () =>
    "Foam is sprayed on working cargo door leaves; mask the gasket and locking gear, and trim it within the lining's depth.",

  "nozzle room short": (f: { corner: string; one: string; other: string; has: number; needs: number; missing: number }, say) => {
    const [has, needs] = say.lengths(f.has, f.needs);
    return `In the corner of ${f.corner}, ${f.one} and ${f.other} leave ${has} for the foam nozzle; ${needs} is needed, ${say.amount(f.missing)} is missing.`;
  },
  "nozzle room kept": (f: { count: number; corner: string; has: number; needs: number }, say) =>
    `The foam nozzle gets into ${every(f.count, "the corner", "corners")}; the tightest is ${f.corner} with ${say.length(f.has)}, ${say.length(f.needs)} is needed.`,

  "foam past boards": (f: { surface: string; foam: number; room: number; over: number }, say) => {
    const [foam, room] = say.lengths(f.foam, f.room);
    return `Foam on the ${f.surface} is ${foam} thick and the boards leave ${room}; it stands ${say.amount(f.over)} proud.`;
  },
  "foam short of studs": (f: { surface: string; foam: number; standOff: number }, say) => {
    const [foam, standOff] = say.lengths(f.foam, f.standOff);
    return `Foam on the ${f.surface} is ${foam} thick and the studs stand ${standOff} off the sheet; the gap behind them stays open.`;
  },
  "foam below cross-members": (f: { foam: number; depth: number }, say) => {
    const [foam, depth] = say.lengths(f.foam, f.depth);
    return `Foam under the floor is ${foam} thick and hangs below the cross-members, which are ${depth} deep; forks and chassis will tear it.`;
  },
  "foam below one pass": (f: { surface: string; foam: number; least: number }, say) => {
    const [foam, least] = say.lengths(f.foam, f.least);
    return `Foam on the ${f.surface} is ${foam} thick; one pass is ${least} at least.`;
  },
  "foam fits": (f: { count: number; surface: string; spare: number }, say) =>
    `Foam lies within the build-up on ${every(f.count, "its face", "faces")}; the tightest is the ${f.surface} with ${say.length(f.spare)} to the boards.`,

  "batts too thick": (f: { surface: string; batts: number; room: number; over: number }, say) => {
    const [batts, room] = say.lengths(f.batts, f.room);
    return `Batts on the ${f.surface} are ${batts} thick and have ${room} of room, ${say.amount(f.over)} too little; take thinner batts or less foam.`;
  },
  "batts fit": (f: { count: number; surface: string; spare: number }, say) =>
    `Batts have room between the studs of ${every(f.count, "one surface", "surfaces")}; the tightest is the ${f.surface} with ${say.length(f.spare)} behind them.`,

  "edge off support": (f: { surface: string; layer: number; count: number; at: number; open: number }, say) =>
    `Layer ${f.layer} of the ${f.surface}: ${f.count === 1 ? "a board edge has" : `${f.count} board edges have`} no support behind, the longest ${say.amount(f.open)} at ${say.length(f.at)} along.`,
  "edges supported": (f: { count: number }) => `All ${f.count} board edges along the studs lie on a support.`,
  "boards without support": (f: { surface: string }) =>
    `Boards on the ${f.surface} have neither studs nor furring behind them; say how they are held.`,
  "edges on furring": (f: { surface: string }) =>
    `Boards on the ${f.surface} hang on furring; their edges between the bars are not checked.`,
  "seams too near": (f: { surface: string; layer: number; count: number; at: number; apart: number; least: number }, say) => {
    const [apart, least] = say.lengths(f.apart, f.least);
    const seams = f.count === 1 ? "a seam" : `${f.count} seams`;
    return `Layer ${f.layer} of the ${f.surface} has ${seams} too near those of the layer behind, the nearest ${apart} at ${say.length(f.at)} along; ${least} is the least.`;
  },
  "seams staggered": (f: { surface: string; apart: number }, say) =>
    `Seams of one layer keep clear of those of the next; the nearest are ${say.length(f.apart)} apart on the ${f.surface}.`,
  "boards overlap": (f: { one: string; other: string; area: number }) => `Boards ${f.one} and ${f.other} of one layer overlap.`,
  "boards side by side": (f: { count: number }) => `No two boards of one layer overlap (${f.count} looked at).`,

  "part in steel": (f: { part: string; steel: string; by: number }, say) =>
    `${f.part} stands ${say.amount(f.by)} deep in ${f.steel}, part of the box's own frame; move it or cut it back.`,
  "parts clear of steel": (f: { count: number }) =>
    `Nothing that is added stands in posts, rails, corner fittings or cross-members (${f.count} parts looked at).`,
  "boards notched": (f: { count: number; around: string }) =>
    `${f.count === 1 ? "One board is" : `${f.count} boards are`} notched around ${f.around} that stand past the lining's plane; box these out so that no gap is left.`,

  "no header room": (f: { opening: string; surface: string }) =>
    `${f.opening} on the ${f.surface} cuts a track and leaves none to carry its header or sill; move it, or make it lower.`,
  "jamb left out": (f: { opening: string; surface: string }) =>
    `A jamb stud of ${f.opening} on the ${f.surface} finds no room; move the opening along.`,
  "stagger lost": (f: { surface: string; layer: number; at: number }, say) =>
    `Layer ${f.layer} of the ${f.surface} has a seam at ${say.length(f.at)} along that lies over one of the layer behind; no other stud was in reach.`,
  "no seam line": (f: { surface: string; layer: number; at: number }, say) =>
    `Layer ${f.layer} of the ${f.surface} finds no stud for a seam beyond ${say.length(f.at)} along; use a longer board or another pitch.`,
} as const satisfies Sentences;
