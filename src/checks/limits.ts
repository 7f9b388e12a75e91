import { foot, inch } from "../catalogue/imperial.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { commonPractice, source, type Source } from "../working/source.ts";

/**
 * Figures that checks compare with, each with its source. Most are common practice of the trade: a shop that works
 * otherwise changes the figure here, in one place.
 */

/** Least strip of sheet between a hole and the box's frame; a frame that stands right on the rail leaves none and is fine. */
export const LEAST_STRIP = limit(
  2 * inch,
  "m",
  "c_strip",
  "least strip of sheet worth leaving between a hole and the box's frame",
  commonPractice,
);

/** Least sheet between two holes, for weld access and a flat strip. */
export const LEAST_BETWEEN_HOLES = limit(4 * inch, "m", "c_holes", "least sheet between two holes", commonPractice);

/** Greatest hole cut in corrugated sheet without a welded frame. */
export const LARGEST_UNFRAMED = limit(8 * inch, "m", "c_bare", "greatest hole in corrugated sheet without a welded frame", commonPractice);

/** Greatest total gap between an article and its clear opening that shims and sealant close well. */
export const GREATEST_SHIM = limit(1 * inch, "m", "c_shim", "greatest gap that shims and sealant close", commonPractice);

/** Free depth before a fan or an intake. */
export const FREE_BEFORE_AIR = limit(1 * foot, "m", "c_air", "free depth before a fan or an intake", commonPractice);

/** Free depth before a door or a hatch, and before a way of escape. */
export const FREE_BEFORE_DOOR = limit(3 * foot, "m", "c_door", "free depth before a door, a hatch or an escape window", commonPractice);

/** Least clear height in a room. */
export const LEAST_HEADROOM = limit(
  7 * foot,
  "m",
  "h_room",
  "least clear height in a room",
  source("common practice; IRC R305.1 asks for 7 ft in dwellings, from memory", "practice"),
);

/** A leaf should open at least square. */
export const LEAST_DOOR_ANGLE = limit(Math.PI / 2, "rad", "phi_min", "least angle that a door leaf opens", commonPractice);

/** Offset between seams of one board layer and the next. */
export const LEAST_STAGGER = limit(
  10 * inch,
  "m",
  "c_stagger",
  "least distance between seams of one board layer and the next",
  source("GA-216, Application and Finishing of Gypsum Panel Products", "memory", "joints of face layer and base layer"),
);

/** A support may miss an edge by this and still be under it: what a saw and a tape leave. */
export const SEAM_TOLERANCE = limit(0.001, "m", "c_seam", "distance by which a support may miss a board's edge", commonPractice);

/** A board's edge at the end of its lining may hang over its last support by this: the wall it butts against holds it in line. */
export const MOST_OVERHANG = limit(
  1 * inch,
  "m",
  "c_over",
  "distance by which a board may hang over its last support at the end of its lining",
  commonPractice,
);

/** Boxing around a corner fitting or post carries board edges this far beside it: one leg of a corner angle. */
export const BOXING = limit(1.5 * inch, "m", "c_box", "distance beside the box's steel over which its boxing carries a board edge", commonPractice);

/** A part may reach this far into the box's steel on paper: what a saw, a tape and a rolled edge leave. */
export const MOST_INTO_STEEL = limit(0.001, "m", "c_steel", "reach into steel that is no more than a saw and a tape leave", commonPractice);

/** A board spans this much of its own edge, as in the notch around a post. */
export const LONGEST_OPEN_EDGE = limit(2 * inch, "m", "c_open_max", "length of a board edge that may go without support", commonPractice);

/** Design value of the eccentricity of the centre of mass, as a share of the box's length and of its width. */
export const GREATEST_ECCENTRICITY = limit(
  0.05,
  "1",
  "eps_max",
  "design value of eccentricity",
  source("ISO 3874:1997, eccentricity design value as quoted by a secondary page", "memory"),
);

/** Nothing over: two things that may touch but not overlap. */
export const NO_DISTANCE = limit(0, "m", "c_0", "distance at which two things touch", source("geometry", "derived"));

function limit<const U extends string>(value: number, unit: U, symbol: string, means: string, from: Source): Quantity<U> {
  return given(value, unit, symbol, means, { kind: "constant", source: from });
}
