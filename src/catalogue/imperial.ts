import { boardFoot as boardFootFactor, foot as footFactor, inch as inchFactor, pound as poundFactor, usGallon as gallonFactor } from "../units/factors.ts";

/** Sizes of the trade in SI, so that a row can be written as the trade says it: `(5 / 8) * inch`. */
export const inch = inchFactor.times / inchFactor.over;
export const foot = footFactor.times / footFactor.over;
const pound = poundFactor.times / poundFactor.over;
export const usGallon = gallonFactor.times / gallonFactor.over;
export const boardFoot = boardFootFactor.times / boardFootFactor.over;
export const poundPerFoot = pound / foot;
export const poundPerSquareFoot = pound / foot ** 2;
