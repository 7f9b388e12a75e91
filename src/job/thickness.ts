import { catalogue } from "../catalogue/catalogue.ts";
import type { BuildUp } from "./job.ts";

/** A build-up's thickness from the inside plane to the finished face, m. Temporary furring and paint take none. */
export function buildUpThickness(buildUp: BuildUp): number {
  const { foam, studs, furring } = buildUp;
  const foamDepth = foam === undefined ? 0 : foam.thickness;
  const studDepth = studs === undefined ? 0 : studs.standOff + catalogue.sections.get(studs.row).depth;
  const bars = furring === undefined || furring.temporary ? 0 : catalogue.sections.get(furring.row).depth;
  return Math.max(foamDepth, studDepth) + bars + boardsThickness(buildUp.boards);
}

/** Thickness of board layers laid on each other, m. */
export function boardsThickness(layers: BuildUp["boards"]): number {
  return layers.reduce((sum, { row }) => sum + catalogue.boards.get(row).thickness, 0);
}
