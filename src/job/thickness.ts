import { catalogue } from "../catalogue/catalogue.ts";
import type { BuildUp } from "./job.ts";

/**
 * A build-up's thickness from the inside plane to the finished face, m: boards lie on furring, else on studs, else on the
 * foam. Temporary furring and paint take none.
 */
export function buildUpThickness(buildUp: BuildUp): number {
  const { foam, studs, furring } = buildUp;
  const bars = furring === undefined || furring.temporary ? 0 : catalogue.sections.get(furring.row).depth;
  const carrying = studs === undefined ? (foam?.thickness ?? NO_LAYERS) : studs.standOff + catalogue.sections.get(studs.row).depth;
  return carrying + bars + boardsThickness(buildUp.boards);
}

/** Nothing between the inside plane and the boards. */
const NO_LAYERS = 0;

/** Thickness of board layers laid on each other, m. */
export function boardsThickness(layers: BuildUp["boards"]): number {
  return layers.reduce((sum, { row }) => sum + catalogue.boards.get(row).thickness, 0);
}
