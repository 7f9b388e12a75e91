/**
 * Density by which mills reckon the mass of plate and bar, kg/m3 (ASTM A6/A6M and EN 10058 family, from memory).
 * The material row `steel` keeps the 7800 of ISO 10456, which belongs to its thermal values.
 */
export const MILL_DENSITY = 7850;

/**
 * Area of a square or rectangular hollow section, m2: outside corner radius 2t, inside radius t.
 * Domain: both sides greater than 4t.
 */
export function hollowArea(depth: number, width: number, thickness: number): number {
  if (!(thickness > 0 && depth > 4 * thickness && width > 4 * thickness)) {
    throw new RangeError(`hollow section ${depth} x ${width} x ${thickness}: sides must be more than four thicknesses`);
  }
  const flats = 2 * (depth + width - 8 * thickness) * thickness;
  const corners = Math.PI * ((2 * thickness) ** 2 - thickness ** 2);
  return flats + corners;
}

/**
 * Width of the flat strip from which an open section is folded, m: outside sizes of the elements in order, all folds at
 * right angles with one inside radius, measured along mid-thickness.
 */
export function stripWidth(elements: readonly number[], thickness: number, insideRadius: number): number {
  const folds = elements.length - 1;
  const outside = elements.reduce((sum, element) => sum + element, 0);
  const sharp = outside - folds * thickness;
  const middleRadius = insideRadius + thickness / 2;
  return sharp - folds * (2 - Math.PI / 2) * middleRadius;
}

/** Mass of one metre of steel of this area, kg/m. */
export function steelPerMetre(area: number): number {
  return area * MILL_DENSITY;
}
