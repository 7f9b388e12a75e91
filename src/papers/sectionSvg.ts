import type { HeatPicture } from "../checks/heatShown.ts";
import { CAPITAL, FONT_FAMILY, textWidth } from "../drawings/lettering.ts";
import type { Rect } from "../geometry/rect.ts";
import { overlaps } from "../geometry/rect.ts";
import type { Vec2 } from "../geometry/vector.ts";
import { formatQuantity, type System } from "../units/format.ts";
import type { MaterialLook } from "./materialLooks.ts";
import { dotsAlong, placeInAir, placeOnLines } from "./sectionLabels.ts";
import { temperatureText } from "./write.ts";

/** A section as an SVG picture; sizes in millimetres on paper. */
export interface PrintedSection {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** "1:6". */
  readonly scale: string;
}

/** Room on paper for one picture, mm. */
const MOST = { width: 83, height: 92 };
const RATIOS: readonly number[] = [2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50];
/** Strip below the picture for its scale bar, mm. */
const FOOT = 6;

const INK = "#262626";
const LINE = "#1d4a70";
/** Heights of capitals, mm. */
const SMALL = 1.35;
const USUAL = 1.6;
/** Steel thinner on paper is drawn this thick, mm. */
const LEAST_STEEL = 0.35;

/**
 * Draws a section to scale: materials by their looks, steel as lines, isotherms with their temperatures, the dew point heavier,
 * the coldest surface marked. What stands upright in the box stands upright here; a level section is seen from above.
 */
export function sectionSvg(picture: HeatPicture, looks: ReadonlyMap<string, MaterialLook>, system: System): PrintedSection {
  const paper = paperOf(picture);
  const { width, height, ratio } = paper;
  const frame = { u0: 0, u1: width, v0: 0, v1: height };
  const labels = lettering(picture, paper, system);
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}mm" height="${n(height + FOOT)}mm" viewBox="0 0 ${n(width)} ${n(height + FOOT)}">`,
    HATCHES,
    `<clipPath id="frame"><rect width="${n(width)}" height="${n(height)}"/></clipPath>`,
    '<g clip-path="url(#frame)" stroke-linejoin="round">',
    ...airs(picture, paper),
    ...materials(picture, looks, paper),
    ...steel(picture, paper),
    ...isothermLines(picture, paper),
    "</g>",
    `<rect width="${n(frame.u1)}" height="${n(frame.v1)}" fill="none" stroke="#9a9a9a" stroke-width="0.12"/>`,
    ...labels,
    ...scaleBar(height, ratio, system),
    "</svg>",
    "",
  ].join("\n");
  return { svg, width, height: height + FOOT, scale: `1:${ratio}` };
}

/** A section on paper: x to the right and y down, mm. */
interface OnPaper {
  readonly width: number;
  readonly height: number;
  readonly ratio: number;
  readonly place: (at: Vec2) => Vec2;
}

function paperOf({ window, axes }: HeatPicture): OnPaper {
  const [wide, tall] = [window.u1 - window.u0, window.v1 - window.v0];
  const isTurned = Math.abs(axes.x.z) > 0.5;
  const [across, up] = isTurned ? [tall, wide] : [wide, tall];
  const isFlipped = isTurned ? axes.x.z < 0 : axes.y.z < -0.5;
  const isMirrored = axes.x.x * axes.y.y - axes.x.y * axes.y.x < -0.5;
  const ratio = RATIOS.find((one) => (across * 1000) / one <= MOST.width && (up * 1000) / one <= MOST.height);
  if (ratio === undefined) throw new RangeError(`a section of ${wide} by ${tall} m fits no picture`);
  const scale = 1000 / ratio;
  return {
    width: across * scale,
    height: up * scale,
    ratio,
    place: ({ x, y }) => {
      const [right, over] = isTurned ? [y - window.v0, x - window.u0] : [x - window.u0, y - window.v0];
      return { x: (isMirrored ? across - right : right) * scale, y: (isFlipped ? over : up - over) * scale };
    },
  };
}

function airs({ environments }: HeatPicture, paper: OnPaper): readonly string[] {
  return environments.map(({ name, rings }) => `<path d="${ringsPath(rings, paper)}" fill-rule="evenodd" fill="${name === "outside" ? "#dfe7ee" : "#ffffff"}"/>`);
}

function materials({ outlines }: HeatPicture, looks: ReadonlyMap<string, MaterialLook>, paper: OnPaper): readonly string[] {
  const closed = outlines.filter((one) => one.closed);
  return [...new Set(closed.map(({ what }) => what))].flatMap((what) => {
    const look = looks.get(what);
    if (look === undefined) throw new RangeError(`${what} has no look`);
    const d = ringsPath(closed.filter((one) => one.what === what).map(({ points }) => points), paper);
    const hatched = look.hatch === "none" ? [] : [`<path d="${d}" fill-rule="evenodd" fill="url(#${look.hatch})"/>`];
    return [`<path d="${d}" fill-rule="evenodd" fill="${look.fill}"/>`, ...hatched, `<path d="${d}" fill="none" stroke="#595959" stroke-width="0.1"/>`];
  });
}

function steel({ outlines, thicknesses }: HeatPicture, paper: OnPaper): readonly string[] {
  return outlines
    .filter(({ closed }) => !closed)
    .map(({ what, points }) => {
      const thickness = thicknesses[what];
      if (thickness === undefined) throw new RangeError(`${what} has no thickness`);
      const stroke = Math.max(LEAST_STEEL, (thickness * 1000) / paper.ratio);
      return `<path d="${linePath(points, paper)}" fill="none" stroke="#111111" stroke-width="${n(stroke)}"/>`;
    });
}

function isothermLines({ isotherms, dewPoint }: HeatPicture, paper: OnPaper): readonly string[] {
  const path = (lines: readonly (readonly Vec2[])[]): string => lines.map((line) => linePath(line, paper)).join("");
  return [
    ...isotherms.map(({ lines }) => `<path d="${path(lines)}" fill="none" stroke="${LINE}" stroke-width="0.15"/>`),
    ...(dewPoint === undefined || dewPoint.lines.length === 0
      ? []
      : [
          `<path d="${path(dewPoint.lines)}" fill="none" stroke="#ffffff" stroke-width="1"/>`,
          `<path d="${path(dewPoint.lines)}" fill="none" stroke="${LINE}" stroke-width="0.6" stroke-dasharray="2.6 0.8"/>`,
        ]),
  ];
}

/** The mark of the coldest point, then texts where there is room for them: airs, dew point, isotherms. */
function lettering({ outlines, environments, isotherms, dewPoint, coldest }: HeatPicture, paper: OnPaper, system: System): readonly string[] {
  const frame: Rect = { u0: 0, u1: paper.width, v0: 0, v1: paper.height };
  const taken: Rect[] = [];
  const drawn: string[] = [];
  const put = (text: string, size: number, box: Rect, ink: string, ground: boolean): void => {
    taken.push(box);
    if (ground) drawn.push(`<rect x="${n(box.u0)}" y="${n(box.v0)}" width="${n(box.u1 - box.u0)}" height="${n(box.v1 - box.v0)}" fill="#ffffff" fill-opacity="0.88"/>`);
    drawn.push(letters(text, size, box, ink));
  };
  const isFree = (box: Rect): boolean => box.u0 >= frame.u0 && box.u1 <= frame.u1 && box.v0 >= frame.v0 && box.v1 <= frame.v1 && !taken.some((one) => overlaps(one, box));
  const onSteel = outlines.flatMap(({ closed, points }) => (closed ? [] : dotsAlong(points.map(paper.place), STEEL_STEP)));
  const isClear = (box: Rect): boolean => isFree(box) && !onSteel.some(({ x, y }) => x > box.u0 - CLEAR && x < box.u1 + CLEAR && y > box.v0 && y < box.v1);
  const centred = (at: Vec2, text: string, size: number): Rect => boxAround(at, textWidth(text, size) + 0.8, size * 1.45 + 0.3);

  if (coldest !== undefined) {
    const at = paper.place(coldest.at);
    drawn.push(`<circle cx="${n(at.x)}" cy="${n(at.y)}" r="1.15" fill="#ffffff" stroke="#111111" stroke-width="0.4"/>`, `<circle cx="${n(at.x)}" cy="${n(at.y)}" r="0.4" fill="#111111"/>`);
    taken.push(boxAround(at, 2.7, 2.7));
    const text = temperatureText(coldest.temperature, system);
    const box = AROUND.map(({ x, y }) => centred({ x: at.x + x * (2 + textWidth(text, USUAL) / 2), y: at.y + y * 3 }, text, USUAL)).find(isFree);
    if (box !== undefined) put(text, USUAL, box, "#111111", true);
  }
  for (const { name, temperature, rings } of environments) {
    const onPaper = rings.map((ring) => ring.map(paper.place));
    const text = `${name} ${degrees(temperature, system)}`;
    const box = [text, degrees(temperature, system)].flatMap((one) => {
      const at = placeInAir(onPaper, (middle) => centred(middle, one, USUAL), isClear);
      return at === undefined ? [] : [{ one, box: at }];
    })[0];
    if (box !== undefined) put(box.one, USUAL, box.box, INK, false);
  }
  const dew = dewPoint === undefined ? [] : [{ ...dewPoint, text: `dew point ${temperatureText(dewPoint.temperature, system)}` }];
  const others = isotherms.map((one) => ({ ...one, text: degrees(one.temperature, system).replace(/ .*/, "°") }));
  for (const { lines, text } of [...dew, ...others]) {
    const onPaper = lines.map((line) => line.map(paper.place));
    const boxAt = (at: Vec2): Rect => centred(at, text, SMALL);
    const box = placeOnLines(onPaper, boxAt, isClear) ?? placeOnLines(onPaper, boxAt, isFree);
    if (box !== undefined) put(text, SMALL, box, LINE, true);
  }
  return drawn;
}

/** Steel is kept free of texts at points so far apart, and texts this far beside it, mm. */
const STEEL_STEP = 0.8;
const CLEAR = 0.6;

/** Where the temperature of the coldest point is tried, around its mark. */
const AROUND: readonly Vec2[] = [{ x: 1, y: 0 }, { x: -1, y: 0 }, { x: 0, y: -1 }, { x: 0, y: 1 }, { x: 1, y: -1 }, { x: -1, y: -1 }, { x: 1, y: 1 }, { x: -1, y: 1 }];

function boxAround({ x, y }: Vec2, width: number, height: number): Rect {
  return { u0: x - width / 2, u1: x + width / 2, v0: y - height / 2, v1: y + height / 2 };
}

/** Whole degrees. */
function degrees(celsius: number, system: System): string {
  return formatQuantity("temperature", celsius, system, { digits: 2 });
}

function letters(text: string, size: number, box: Rect, ink: string): string {
  const baseline = (box.v0 + box.v1) / 2 + size / 2;
  return `<text x="${n((box.u0 + box.u1) / 2)}" y="${n(baseline)}" text-anchor="middle" font-family="${FONT_FAMILY}" font-size="${n(size / CAPITAL)}" fill="${ink}">${escaped(text)}</text>`;
}

function scaleBar(top: number, ratio: number, system: System): readonly string[] {
  const { length, text } = system === "metric" ? { length: 0.1, text: "100 mm" } : { length: 0.1016, text: "4 in" };
  const long = (length * 1000) / ratio;
  const y = top + 3.2;
  const label = `${text} at 1:${ratio}`;
  return [
    `<path d="M0.2 ${n(y)}H${n(0.2 + long)}M0.2 ${n(y - 0.8)}v1.6M${n(0.2 + long)} ${n(y - 0.8)}v1.6M${n(0.2 + long / 2)} ${n(y - 0.5)}v1" fill="none" stroke="${INK}" stroke-width="0.2"/>`,
    letters(label, SMALL, boxAround({ x: 0.2 + long + 1.5 + textWidth(label, SMALL) / 2, y }, 0, 0), INK),
  ];
}

const HATCHES = [
  "<defs>",
  '<pattern id="strokes" width="1.6" height="1.6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0.8H1.6" stroke="#a99f7c" stroke-width="0.1"/></pattern>',
  '<pattern id="dots" width="1.5" height="1.5" patternUnits="userSpaceOnUse"><circle cx="0.75" cy="0.75" r="0.13" fill="#6f6f6f"/></pattern>',
  "</defs>",
].join("");

function ringsPath(rings: readonly (readonly Vec2[])[], paper: OnPaper): string {
  return rings.map((ring) => `${linePath(ring, paper)}Z`).join("");
}

function linePath(points: readonly Vec2[], { place }: OnPaper): string {
  return `M${points.map(place).map(({ x, y }) => `${n(x)} ${n(y)}`).join("L")}`;
}

/** Millimetres to the hundredth. */
function n(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
