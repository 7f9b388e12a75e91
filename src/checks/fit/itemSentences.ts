import type { Sentences } from "../finding.ts";
import { capital, every } from "../say.ts";

/** What is said of fit-out items, door swings and rooms. */
export const itemSentences = {
  "item outside room": (f: { item: string; room: string; over: number; face: string }, say) =>
    `${f.item} runs ${say.amount(f.over)} past ${f.face}.`,
  "items in rooms": (f: { count: number; item: string; margin: number; face: string }, say) =>
    `${capital(every(f.count, "the item", "items"))} ${f.count === 1 ? "stands" : "stand"} within finished walls and under the ceiling; closest is ${f.item}, ${say.length(f.margin)} from ${f.face}.`,
  "item on the outside": (f: { item: string }) => `${f.item} stands outside the box; its place there is not checked.`,

  "items overlap": (f: { one: string; other: string; over: number }, say) =>
    `${f.one} and ${f.other} take the same space, by ${say.amount(f.over)} at least.`,
  "items apart": (f: { one: string; other: string; apart: number }, say) =>
    `No two items take the same space; the nearest are ${f.one} and ${f.other}, ${say.length(f.apart)} apart.`,

  "item in article": (f: { item: string; article: string; over: number }, say) =>
    `${f.item} stands where ${f.article} reaches into the room, by ${say.amount(f.over)} at least; move one of them.`,
  "items clear of articles": (f: { item: string; article: string; clear: number }, say) =>
    `No item stands where an article reaches into the room; nearest is ${f.item}, ${say.length(f.clear)} from ${f.article}.`,

  "clear space short": (f: { item: string; side: string; needs: number; has: number; blocker: string }, say) => {
    const [needs, has] = f.has > 0 ? say.lengths(f.needs, f.has) : [say.length(f.needs), "none"];
    return `${f.item} needs ${needs} free ${f.side} and has ${has}: ${f.blocker} is in the way.`;
  },
  "clear spaces kept": (f: { count: number; item: string; side: string; spare: number }, say) =>
    `${capital(every(f.count, "the clear space", "clear spaces"))} asked for ${f.count === 1 ? "is" : "are"} free; the tightest is that of ${f.item} ${f.side} with ${say.length(f.spare)} to spare.`,

  "item in swing": (f: { item: string; opening: string; over: number }, say) =>
    `${f.item} stands ${say.amount(f.over)} inside the swing of ${f.opening}.`,
  "swings clear of items": (f: { item: string; opening: string; clear: number }, say) =>
    `No item stands in a door's swing; nearest is ${f.item}, ${say.length(f.clear)} from the leaf of ${f.opening}.`,
  "item before opening": (f: { item: string; opening: string; has: number; least: number }, say) => {
    if (f.has <= 0) return `${f.item} stands right in ${f.opening}; leave ${say.length(f.least)} free before it.`;
    const [has, least] = say.lengths(f.has, f.least);
    return `${f.item} stands ${has} before ${f.opening}; leave ${least} free.`;
  },
  "openings free": (f: { count: number; least: number }, say) =>
    `Nothing stands before doors, hatches, fans, intakes and ways of escape (${f.count} looked at, ${say.length(f.least)} deep at most).`,
  "openings free beyond": (f: { item: string; opening: string; has: number }, say) =>
    `Doors, hatches, fans, intakes and ways of escape are free; nearest is ${f.item}, ${say.length(f.has)} before ${f.opening}.`,

  "item cannot be brought in": (f: { item: string; small: number; middle: number }, say) =>
    `${f.item} (${say.length(f.small)} by ${say.length(f.middle)} at its smallest) goes through none of the finished ways in to its room; set it in place before they are closed.`,
  "items can be brought in": (f: { count: number; item: string; opening: string; spare: number }, say) =>
    `Every item goes through the openings on the way to its room (${f.count} checked); the tightest is ${f.item} through ${f.opening} with ${say.length(f.spare)} to spare.`,

  "swing hits partition": (f: { opening: string; partition: string; over: number }, say) =>
    `The leaf of ${f.opening} hits ${f.partition} ${say.amount(f.over)} before its edge.`,
  "swing hits wall": (f: { opening: string; wall: string; over: number }, say) =>
    `The leaf of ${f.opening} runs ${say.amount(f.over)} into the ${f.wall} before it is fully open.`,
  "swings cross": (f: { one: string; other: string; over: number }, say) =>
    `The leaves of ${f.one} and ${f.other} sweep the same floor by ${say.amount(f.over)}; they can meet.`,
  "door opens too little": (f: { opening: string; angle: number }) =>
    `The leaf of ${f.opening} opens ${String(Math.floor((f.angle * 180) / Math.PI + 1e-9))}°; 90° is the least.`,
  "swing not stated": (f: { opening: string }) =>
    `The swing of ${f.opening} is not stated; say its hinge and the way it opens to have it checked.`,
  "doors swing free": (f: { count: number }) =>
    `${capital(every(f.count, "the leaf", "leaves"))} ${f.count === 1 ? "opens" : "open"} at least square, free of walls, partitions and each other.`,

  "room size": (f: { room: string; length: number; width: number; height: number }, say) =>
    `${f.room} is ${say.length(f.length)} long, ${say.length(f.width)} wide and ${say.length(f.height)} high between finished faces.`,
  "room too low": (f: { room: string; length: number; width: number; height: number; least: number }, say) => {
    const [height, least] = say.lengths(f.height, f.least);
    return `${f.room} is ${say.length(f.length)} long, ${say.length(f.width)} wide and only ${height} high between finished faces; ${least} is the least that is usual.`;
  },
} as const satisfies Sentences;
