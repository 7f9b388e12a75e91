export { airsAt, heatedTemperature, heldTemperature, type Airs, type OutdoorAir, type RoomClimate } from "./moisture/insideAir.ts";
export { AIR_PERMEABILITY, airThicknessOf, permeanceOf, vapourClassOf, type VapourClass, type VapourLayer } from "./moisture/layer.ts";
export type { Wall } from "./moisture/mesh.ts";
export { dewPoint } from "./moisture/saturation.ts";
export { leastSurfaceFactor, resistanceForSurfaceFactor, type Criterion } from "./moisture/surface.ts";
export type { WallAirs } from "./moisture/vapourState.ts";
export { vapourYear, type VapourYear } from "./moisture/vapourYear.ts";
export { monthlyNeeds, type MonthNeed } from "./moisture/worstMonth.ts";
