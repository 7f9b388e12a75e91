import { source } from "../working/source.ts";
import { dryBox } from "./boxes/dryBox.ts";
import type { BoxRow } from "./rows.ts";

const iso668 = source("ISO 668:2013", "seen", "external dimensions");
const iso668Memory = source("ISO 668:2013 with amendments", "memory", "external dimensions");
const tenFoot = source("ISO 668 1D for length and width; height as usually made", "memory");

const EIGHT_SIX = 2.591;
const NINE_SIX = 2.896;

/** Dry boxes by id. Measure the box in hand: its plate gives the tare and the greatest gross mass. */
export const boxRows: readonly BoxRow[] = [
  dryBox({ id: "10-standard", nominalFeet: 10, length: 2.991, height: EIGHT_SIX, from: tenFoot, tare: 1500, greatestGross: 10160, holesAlong: 2.787 }),
  dryBox({ id: "20-standard", nominalFeet: 20, length: 6.058, height: EIGHT_SIX, from: iso668, tare: 2220, greatestGross: 30480, holesAlong: 5.853 }),
  dryBox({ id: "20-high-cube", nominalFeet: 20, length: 6.058, height: NINE_SIX, from: iso668Memory, tare: 2340, greatestGross: 30480, holesAlong: 5.853 }),
  dryBox({ id: "40-standard", nominalFeet: 40, length: 12.192, height: EIGHT_SIX, from: iso668, tare: 3700, greatestGross: 30480, holesAlong: 11.985 }),
  dryBox({ id: "40-high-cube", nominalFeet: 40, length: 12.192, height: NINE_SIX, from: iso668, tare: 3900, greatestGross: 30480, holesAlong: 11.985 }),
  dryBox({ id: "45-high-cube", nominalFeet: 45, length: 13.716, height: NINE_SIX, from: iso668, tare: 4750, greatestGross: 30480, holesAlong: 13.509 }),
];
