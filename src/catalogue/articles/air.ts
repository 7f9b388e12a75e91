import { inch } from "../imperial.ts";
import type { ArticleKind, ArticleRow } from "../rows.ts";
import { demo, roughAround } from "./demo.ts";

interface Frame {
  readonly id: string;
  readonly what: string;
  readonly kind: ArticleKind;
  /** Free opening of the duct or hole that it serves, m. */
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  readonly mass: number;
  /** Free area over the area of that opening. */
  readonly freeShare: number;
  readonly power?: number;
  readonly transmittance?: number;
}

const FLANGE = 0.038;
const SLEEVE_GAP = 0.006;

/** A flanged article whose sleeve passes through the hole; `width` and `height` are over the flange. */
function flanged({ width, height, freeShare, ...kept }: Frame): ArticleRow {
  return {
    ...kept,
    source: demo,
    width: width + 2 * FLANGE,
    height: height + 2 * FLANGE,
    rough: roughAround(width, height, SLEEVE_GAP),
    freeArea: width * height * freeShare,
  };
}

const SQUARES = [
  { inches: 12, damper: 5.2, screen: 1.1, louvre: 3.6 },
  { inches: 18, damper: 8.4, screen: 1.8, louvre: 7 },
  { inches: 24, damper: 12.6, screen: 2.7, louvre: 11.5 },
] as const;

const openings = SQUARES.flatMap(({ inches, damper, screen, louvre }) => {
  const side = { width: inches * inch, height: inches * inch };
  const size = `${inches} x ${inches} in`;
  const name = `${inches}x${inches}`;
  return [
    flanged({ id: `damper-${name}`, what: `motorised insulated damper ${size}, closes on loss of power`, kind: "damper", ...side, depth: 0.13, mass: damper, freeShare: 0.82, power: 6, transmittance: 3 }),
    flanged({ id: `screen-${name}`, what: `insect and bird screen ${size}, stainless mesh`, kind: "screen", ...side, depth: 0.03, mass: screen, freeShare: 0.6 }),
    flanged({ id: `louvre-storm-${name}`, what: `storm louvre ${size}, drainable blades`, kind: "louvre", ...side, depth: 0.1, mass: louvre, freeShare: 0.45 }),
  ];
});

/** Dampers, screens, louvres and fans. Flow and pressure of a fan are one point of its curve. */
export const airArticles: readonly ArticleRow[] = [
  ...openings,
  {
    id: "fan-wall-400",
    what: "exhaust wall fan 400 mm with backdraught shutter",
    source: demo,
    kind: "fan",
    width: 0.54,
    height: 0.54,
    depth: 0.3,
    mass: 17,
    rough: { width: 0.46, height: 0.46 },
    airFlow: 0.9,
    pressure: 60,
    power: 320,
  },
  {
    id: "fan-wall-300",
    what: "exhaust wall fan 300 mm with backdraught shutter",
    source: demo,
    kind: "fan",
    width: 0.43,
    height: 0.43,
    depth: 0.25,
    mass: 10,
    rough: { width: 0.35, height: 0.35 },
    airFlow: 0.45,
    pressure: 50,
    power: 140,
  },
  {
    id: "fan-fume-200",
    what: "inline fume extract fan 200 mm, coated, wall outlet",
    source: demo,
    kind: "fan",
    width: 0.34,
    height: 0.34,
    depth: 0.45,
    mass: 12,
    rough: { width: 0.23, height: 0.23 },
    airFlow: 0.25,
    pressure: 250,
    power: 210,
  },
  {
    id: "fan-room-100",
    what: "small room fan 100 mm with shutter",
    source: demo,
    kind: "fan",
    width: 0.16,
    height: 0.16,
    depth: 0.13,
    mass: 1,
    rough: { width: 0.115, height: 0.115 },
    airFlow: 0.025,
    pressure: 25,
    power: 15,
  },
];
