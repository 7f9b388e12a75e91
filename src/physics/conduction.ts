// Steady heat conduction through plane sections: the front door of the folder beside it.
export { type CellFlux, cellFlux } from "./conduction/cellFlux.ts";
export { equivalentGapConductivity } from "./conduction/gap.ts";
export { type Isotherm, isotherms } from "./conduction/isotherms.ts";
export { nodeTemperatures } from "./conduction/nodeTemperatures.ts";
export type { Air, Region, Section, Sheet } from "./conduction/section.ts";
export type { Accuracy, Field, NotSolved, SectionSolution } from "./conduction/solution.ts";
export { solveSection } from "./conduction/solveSection.ts";
