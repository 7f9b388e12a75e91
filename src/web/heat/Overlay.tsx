import { useMemo, type ReactElement } from "react";
import type { Vec2 } from "../../river/screen.ts";
import type { Outline, SectionPicture } from "../../river/sections.ts";
import { useSettings } from "../state/settings.ts";
import { toPixels, type Frame } from "./frame.ts";
import type { MaterialRow } from "./materials.ts";
import { labelPlaces, namePlace, spread } from "./placing.ts";
import { degrees, level } from "./words.ts";

interface Shown {
  readonly picture: SectionPicture;
  readonly materials: readonly MaterialRow[];
  readonly marked: number | undefined;
  readonly frame: Frame;
  /** Width of the strip for numbers at the right. */
  readonly numbers: number;
}

/** Lines, labels and marks over the shades. */
export function Overlay({ picture, materials, marked, frame, numbers }: Shown): ReactElement {
  const { width, height } = frame;
  const within = useMemo(() => numbersWithin(picture, materials, frame), [picture, materials, frame]);
  const beside = useMemo(() => numbersBeside(materials.filter(({ number }) => !within.has(number)), frame, width + numbers - RING - 1), [materials, within, frame, width, numbers]);
  const taken = useMemo(() => [...within.values()], [within]);
  return (
    <svg className="h-overlay" width={width + numbers} height={height} aria-hidden="true">
      <Lines picture={picture} frame={frame} taken={taken} marked={materials.find(({ number }) => number === marked)?.what} />
      <Numbers marked={marked} within={within} beside={beside} />
      <AirNames picture={picture} frame={frame} beside={beside} />
    </svg>
  );
}

/** Radius of the ring around a number, how far numbers stay apart, and the room that one needs within its material. */
const RING = 9;
const APART = 2 * RING + 3;
const ROOM = 3 * RING;

/** The numbers that stand in their material, because there is room for them. */
function numbersWithin({ outlines }: SectionPicture, materials: readonly MaterialRow[], frame: Frame): ReadonlyMap<number, Vec2> {
  return new Map(
    materials.flatMap(({ number, what }) => {
      const rings = outlines.filter((outline) => outline.closed && outline.what === what).map(({ points }) => points.map((point) => toPixels(frame, point)));
      const at = rings.length === 0 ? undefined : namePlace(rings, [], ROOM, ROOM);
      return at === undefined ? [] : [[number, at] as const];
    }),
  );
}

/** A number at the side, with the point of its material that it stands for. */
interface Beside {
  readonly number: number;
  readonly anchor: Vec2;
  readonly at: Vec2;
}

function numbersBeside(materials: readonly MaterialRow[], frame: Frame, x: number): readonly Beside[] {
  const anchors = materials.map(({ anchor }) => toPixels(frame, anchor));
  const heights = spread(anchors.map(({ y }) => y), APART, RING + 1, frame.height - RING - 1);
  return materials.map(({ number }, index) => ({ number, anchor: anchors[index] as Vec2, at: { x, y: heights[index] as number } }));
}

/** Width of a letter and height of a name, pixels. */
const LETTER = { width: 7, height: 15 };

/** The air on each side by its name, where there is room for it beside steel, labels and lines to numbers. */
function AirNames({ picture: { environments, outlines, coldest }, frame, beside }: Pick<Shown, "picture" | "frame"> & { readonly beside: readonly Beside[] }): ReactElement {
  const places = useMemo(() => {
    const pixels = (points: readonly Vec2[]): readonly Vec2[] => points.map((point) => toPixels(frame, point));
    const lines = [
      ...outlines.filter(({ closed }) => !closed).map(({ points }) => pixels(points)),
      ...beside.map(({ anchor, at }) => [anchor, at]),
      ...(coldest === undefined ? [] : [spotLine(toPixels(frame, coldest.at), frame)]),
    ];
    return environments.flatMap(({ name, rings }) => {
      const at = namePlace(rings.map(pixels), lines, name.length * LETTER.width, LETTER.height);
      return at === undefined ? [] : [{ name, at }];
    });
  }, [environments, outlines, coldest, frame, beside]);
  return (
    <>
      {places.map(({ name, at }) => (
        <text key={name} className="h-air" x={at.x} y={at.y} textAnchor="middle" dominantBaseline="central">
          {name}
        </text>
      ))}
    </>
  );
}

/** Room that a label of a temperature needs, and the shortest line that gets one, pixels. */
const LABEL = { apart: 44, least: 60 };

interface Lined extends Pick<Shown, "picture" | "frame"> {
  /** Where numbers stand. */
  readonly taken: readonly Vec2[];
  /** The name of the material to mark. */
  readonly marked: string | undefined;
}

function Lines({ picture, frame, taken, marked }: Lined): ReactElement {
  const system = useSettings((settings) => settings.system);
  const { outlines, isotherms, dewPoint, coldest } = picture;
  const drawn = useMemo(() => {
    const pixels = (line: readonly Vec2[]): readonly Vec2[] => line.map((point) => toPixels(frame, point));
    const levels = isotherms.map(({ temperature, lines }) => ({ temperature, lines: lines.map(pixels) }));
    const dew = dewPoint?.lines.map(pixels) ?? [];
    const spot = coldest === undefined ? undefined : toPixels(frame, coldest.at);
    const [dewLabel, ...labels] = labelPlaces([dew, ...levels.map(({ lines }) => lines)], LABEL.apart, LABEL.least, spot === undefined ? taken : [...taken, spot]);
    return { levels, dew, spot, dewLabel, labels };
  }, [frame, isotherms, dewPoint, coldest, taken]);
  const { levels, dew, spot, dewLabel, labels } = drawn;
  return (
    <>
      {levels.map(({ temperature, lines }) => (
        <path key={temperature} className="h-isotherm" d={lines.map((line) => pathOf(line, false)).join("")} />
      ))}
      {outlines.map((outline, index) => (
        <path key={index} className={lineClass(outline, marked)} d={pathOf(outline.points.map((point) => toPixels(frame, point)), outline.closed)} />
      ))}
      <path className="h-dew" d={dew.map((line) => pathOf(line, false)).join("")} />
      {levels.map(({ temperature }, index) => (
        <Label key={temperature} at={labels[index]} className="h-label" text={level(temperature, system)} />
      ))}
      {dewPoint === undefined ? null : <Label at={dewLabel} className="h-label is-dew" text={`dew ${degrees(dewPoint.temperature, system)}`} />}
      {spot === undefined || coldest === undefined ? null : <Spot at={spot} frame={frame} text={degrees(coldest.temperature, system)} />}
    </>
  );
}

function lineClass({ what, closed }: Outline, marked: string | undefined): string {
  return `${closed ? "h-outline" : "h-steel"}${what === marked ? " is-marked" : ""}`;
}

function Label({ at, className, text }: { readonly at: Vec2 | undefined; readonly className: string; readonly text: string }): ReactElement | null {
  return at === undefined ? null : (
    <text className={className} x={at.x} y={at.y} textAnchor="middle" dominantBaseline="central">
      {text}
    </text>
  );
}

/** The coldest surface: a star on a disc with its temperature beside it, on the side where there is room. */
function Spot({ at, frame, text }: { readonly at: Vec2; readonly frame: Frame; readonly text: string }): ReactElement {
  const [start, end] = spotLine(at, frame);
  return (
    <>
      <ColdestMark at={at} />
      <text className="h-label is-coldest" x={start.x} y={start.y} textAnchor={end.x < start.x ? "end" : "start"} dominantBaseline="central">
        {text}
      </text>
    </>
  );
}

/** How long the temperature of the coldest surface is, pixels. */
const SPOT_LENGTH = 78;

/** The middle line of that temperature. */
function spotLine({ x, y }: Vec2, { width, height }: Frame): readonly [Vec2, Vec2] {
  const way = x + SPOT_LENGTH > width ? -1 : 1;
  const up = Math.min(height - 10, Math.max(10, y - 12));
  return [{ x: x + way * 12, y: up }, { x: x + way * SPOT_LENGTH, y: up }];
}

/** Radius of the disc of the coldest surface. */
const DISC = 8;

/** The sign of the coldest surface, in the picture and in its key. */
export function ColdestMark({ at: { x, y } }: { readonly at: Vec2 }): ReactElement {
  const arms = [0, 1, 2].map((arm) => ({ x: 0.6 * DISC * Math.sin((arm * Math.PI) / 3), y: 0.6 * DISC * Math.cos((arm * Math.PI) / 3) }));
  return (
    <g className="h-coldest-mark">
      <circle cx={x} cy={y} r={DISC} />
      <path d={arms.map((arm) => `M${x - arm.x} ${y - arm.y}L${x + arm.x} ${y + arm.y}`).join("")} />
    </g>
  );
}

/** The numbers of the materials: within them, or at the side with a line to them. */
function Numbers({ marked, within, beside }: { readonly marked: number | undefined; readonly within: ReadonlyMap<number, Vec2>; readonly beside: readonly Beside[] }): ReactElement {
  return (
    <>
      {beside.map(({ number, anchor, at }) => (
        <g key={number} className={number === marked ? "h-numbered is-marked" : "h-numbered"}>
          <path d={`M${anchor.x} ${anchor.y}L${at.x - RING} ${at.y}`} />
          <circle className="h-anchor" cx={anchor.x} cy={anchor.y} r="2" />
          <Ringed number={number} at={at} />
        </g>
      ))}
      {[...within].map(([number, at]) => (
        <g key={number} className={number === marked ? "h-numbered is-marked" : "h-numbered"}>
          <Ringed number={number} at={at} />
        </g>
      ))}
    </>
  );
}

function Ringed({ number, at: { x, y } }: { readonly number: number; readonly at: Vec2 }): ReactElement {
  return (
    <>
      <circle className="h-ring" cx={x} cy={y} r={RING} />
      <text className="h-label" x={x} y={y} textAnchor="middle" dominantBaseline="central">
        {number}
      </text>
    </>
  );
}

function pathOf(points: readonly Vec2[], closed: boolean): string {
  return points.length === 0 ? "" : `M${points.map(({ x, y }) => `${x.toFixed(2)} ${y.toFixed(2)}`).join("L")}${closed ? "z" : ""}`;
}
