/** What the app needs to draw the shapes of a build in space. */
export { toWorld } from "../build/surface.ts";
export { depthAt, wavePoints } from "../geometry/trapezoid.ts";
