import type { Build } from "../build/build.ts";
import { isBoxPart } from "../build/part.ts";
import { pieceLabels } from "./labels.ts";
import { barLines } from "./lines/bars.ts";
import { battLines } from "./lines/batts.ts";
import { boardLines } from "./lines/boards.ts";
import { coatingLines } from "./lines/coatings.ts";
import { fastenerLines } from "./lines/fasteners.ts";
import { foamLines } from "./lines/foam.ts";
import { articleLines, boxLine, itemLines, suppliedLines } from "./lines/pieces.ts";
import { sealantLines } from "./lines/sealants.ts";
import type { Takeoff } from "./takeoff.ts";

/**
 * Counts every part of a build: what is in the box, what has to be bought in whole stock, and which piece is cut from which
 * bar or sheet. Parts of the box as bought are one line. Temporary parts are counted apart and marked.
 */
export function takeOffBuild(build: Build): Takeoff {
  const parts = build.parts.filter((part) => !isBoxPart(part));
  const labels = pieceLabels(build);
  const bars = barLines(parts, labels);
  const boards = boardLines(parts, labels);
  return {
    lines: [
      boxLine(build),
      ...bars.lines,
      ...foamLines(parts),
      ...battLines(parts),
      ...boards.lines,
      ...coatingLines(parts),
      ...articleLines(parts),
      ...itemLines(parts),
      ...suppliedLines(build.job),
      ...fastenerLines(build, parts),
      ...sealantLines(build, parts),
    ],
    cutList: [...bars.cutList, ...boards.cutList],
  };
}
