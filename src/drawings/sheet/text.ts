import type { Rect } from "../../geometry/rect.ts";
import type { DrawnShape } from "../drawing.ts";

export type DrawnText = Extract<DrawnShape, { kind: "text" }>;

/** The face that every drawing is lettered in: all its letters are equally wide, so that widths are known exactly. */
export const FONT_FAMILY = "DejaVu Sans Mono, monospace";

/** Height of a capital and advance of a letter, as shares of the font size (metrics of DejaVu Sans Mono). */
export const CAPITAL = 0.729;
const ADVANCE = 0.602;
/** Reach of letters above and below the baseline, as shares of a capital's height. */
const ABOVE = 1.08;
const BELOW = 0.34;

/** Height of a line of text with its descenders, as a share of a capital's height. */
export const LINE = ABOVE + BELOW;

/** Text that fits on one line: control characters and line breaks become spaces; spaces that hold a length together stay. */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp} ]+/gu, " ").trim();
}

/** Dashes, quotes, primes and signs that the face has at the width of its letters. */
const MARKS = /[\u2010-\u2027\u2032\u2033\u20AC\u2122\u2212\u2248\u2264\u2265]/u;

/** Width of a line of text on paper, metres; letters from outside the face may be twice as wide. */
export function textWidth(text: string, height: number): number {
  const letters = [...text].reduce((sum, letter) => sum + ((letter.codePointAt(0) as number) >= 0x1100 && !MARKS.test(letter) ? 2 : 1), 0);
  return (letters * height * ADVANCE) / CAPITAL;
}

/** The rectangle on paper that a text covers. */
export function textBox(text: DrawnText): Rect {
  const width = textWidth(text.text, text.height);
  const start = text.align === "left" ? 0 : text.align === "middle" ? -width / 2 : -width;
  const { x, y } = text.at;
  const [up, down] = [text.height * ABOVE, text.height * BELOW];
  if (text.turned === true) return { u0: x - up, u1: x + down, v0: y + start, v1: y + start + width };
  return { u0: x + start, u1: x + start + width, v0: y - down, v1: y + up };
}

/** Breaks text into lines no wider than `width`; words that are too wide alone are broken between letters. */
export function wrap(text: string, height: number, width: number): readonly string[] {
  const most = Math.max(1, Math.floor((width + 1e-9) / textWidth("0", height)));
  const lines: string[] = [];
  let line = "";
  for (const word of oneLine(text).split(" ").flatMap((whole) => pieces(whole, most))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (textWidth(longer, height) <= width || line === "") line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}

function pieces(word: string, most: number): readonly string[] {
  if (textWidth(word, 1) <= textWidth("0", 1) * most) return [word];
  const letters = [...word];
  const each = Math.max(1, Math.floor(most / (textWidth(word, 1) / textWidth("0", 1) / letters.length)));
  return Array.from({ length: Math.ceil(letters.length / each) }, (_, part) =>
    letters.slice(part * each, (part + 1) * each).join(""),
  );
}
