import { source } from "../working/source.ts";
import { usGallon } from "./imperial.ts";
import type { CoatingRow } from "./rows.ts";

const typical = source("usual product data of this kind of coating; spread derived from solids and dry film", "typical");
const micrometre = 1e-6;

interface Paint {
  readonly id: string;
  readonly what: string;
  readonly solidsByVolume: number;
  readonly dryFilm_um: number;
  readonly wetDensity: number;
  readonly dryDensity: number;
  readonly recoatHours: number;
  readonly cureHours: number;
  readonly packGallons: number;
}

/** One coat's spread follows from what stays on the wall: solids by volume over dry film, before any loss. */
function coating(paint: Paint): CoatingRow {
  const { dryFilm_um, packGallons, ...kept } = paint;
  const dryFilm = dryFilm_um * micrometre;
  return { ...kept, source: typical, dryFilm, spread: paint.solidsByVolume / dryFilm, packVolume: packGallons * usGallon };
}

/** Coatings, one row a product, values for one coat. */
export const coatingRows: readonly CoatingRow[] = [
  coating({ id: "primer-epoxy-zinc", what: "zinc-rich epoxy primer", solidsByVolume: 0.65, dryFilm_um: 75, wetDensity: 2500, dryDensity: 3380, recoatHours: 4, cureHours: 168, packGallons: 3 }),
  coating({ id: "primer-epoxy", what: "surface-tolerant epoxy primer", solidsByVolume: 0.72, dryFilm_um: 100, wetDensity: 1400, dryDensity: 1600, recoatHours: 8, cureHours: 168, packGallons: 2 }),
  coating({ id: "mid-coat-epoxy", what: "high-build epoxy mid coat", solidsByVolume: 0.75, dryFilm_um: 125, wetDensity: 1450, dryDensity: 1640, recoatHours: 8, cureHours: 168, packGallons: 5 }),
  coating({ id: "mid-coat-epoxy-marine", what: "epoxy mid coat with flake for salt air", solidsByVolume: 0.8, dryFilm_um: 150, wetDensity: 1500, dryDensity: 1660, recoatHours: 12, cureHours: 168, packGallons: 5 }),
  coating({ id: "topcoat-polyurethane", what: "aliphatic polyurethane topcoat", solidsByVolume: 0.6, dryFilm_um: 60, wetDensity: 1250, dryDensity: 1500, recoatHours: 8, cureHours: 168, packGallons: 5 }),
  coating({ id: "primer-alkyd", what: "alkyd metal primer", solidsByVolume: 0.5, dryFilm_um: 40, wetDensity: 1350, dryDensity: 1880, recoatHours: 16, cureHours: 72, packGallons: 5 }),
  coating({ id: "enamel-alkyd", what: "alkyd enamel topcoat", solidsByVolume: 0.5, dryFilm_um: 40, wetDensity: 1150, dryDensity: 1490, recoatHours: 16, cureHours: 72, packGallons: 5 }),
  coating({ id: "roof-elastomeric", what: "white elastomeric acrylic roof coat", solidsByVolume: 0.52, dryFilm_um: 250, wetDensity: 1400, dryDensity: 1770, recoatHours: 12, cureHours: 72, packGallons: 5 }),
  coating({ id: "underside-bituminous", what: "bituminous underside coat", solidsByVolume: 0.55, dryFilm_um: 200, wetDensity: 1050, dryDensity: 1250, recoatHours: 12, cureHours: 72, packGallons: 5 }),
  coating({ id: "primer-latex", what: "interior latex primer", solidsByVolume: 0.32, dryFilm_um: 35, wetDensity: 1300, dryDensity: 1930, recoatHours: 4, cureHours: 24, packGallons: 5 }),
  coating({ id: "paint-latex", what: "interior latex paint, eggshell", solidsByVolume: 0.37, dryFilm_um: 38, wetDensity: 1280, dryDensity: 1750, recoatHours: 4, cureHours: 24, packGallons: 5 }),
  coating({ id: "floor-epoxy", what: "two-part epoxy floor coat", solidsByVolume: 0.9, dryFilm_um: 200, wetDensity: 1450, dryDensity: 1510, recoatHours: 12, cureHours: 72, packGallons: 3 }),
  coating({ id: "varnish-wood", what: "water-borne polyurethane varnish for wood panels", solidsByVolume: 0.32, dryFilm_um: 30, wetDensity: 1040, dryDensity: 1120, recoatHours: 3, cureHours: 72, packGallons: 1 }),
  coating({ id: "barrier-intumescent", what: "intumescent coat over foam, where a test report allows it", solidsByVolume: 0.66, dryFilm_um: 400, wetDensity: 1350, dryDensity: 1530, recoatHours: 8, cureHours: 72, packGallons: 5 }),
];
