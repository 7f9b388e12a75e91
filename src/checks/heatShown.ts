// Lists, tables and pictures of a build's sections, as plain data for papers and screens.
export type { Hour } from "./envelope/shown/hour.ts";
export type { Outline } from "./envelope/shown/outlines.ts";
export { type PictureGrid, pictureOf, type SectionPicture } from "./envelope/shown/picture.ts";
export { plannedOf, type SectionRow, sectionRows } from "./envelope/shown/rows.ts";
export { type HeatPicture, type HeatShown, heatShown } from "./envelope/shown/shown.ts";
export { heatTables, type HeatTables, yearlyHeatIn } from "./envelope/shown/tables.ts";
