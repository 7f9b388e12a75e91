import { describe, expect, it } from "vitest";
import { catalogue } from "./catalogue.ts";
import { hollowArea, steelPerMetre } from "./steel.ts";
import type { BoxRow, ProfileRow } from "./rows.ts";

const boxes = catalogue.boxes.rows;
const each = boxes.map((box): [string, BoxRow] => [box.id, box]);
const millimetres = (length: number): number => length * 1000;

describe("ISO 668 outside sizes and ISO 1496-1 least sizes, mm", () => {
  // Outside sizes seen on a forwarder's page that quotes ISO 668; 20 ft high cube and 10 ft from memory.
  const outside: readonly [string, number, number, number][] = [
    ["10-standard", 2991, 2438, 2591],
    ["20-standard", 6058, 2438, 2591],
    ["20-high-cube", 6058, 2438, 2896],
    ["40-standard", 12192, 2438, 2591],
    ["40-high-cube", 12192, 2438, 2896],
    ["45-high-cube", 13716, 2438, 2896],
  ];
  // Least inside lengths: 20 and 40 ft seen on the same page, 45 and 10 ft from memory.
  const leastLength: Readonly<Record<number, number>> = { 10: 2802, 20: 5867, 40: 11998, 45: 13542 };

  it("holds these six boxes and no other", () => {
    expect(boxes.map((box) => box.id)).toEqual(outside.map(([id]) => id));
  });

  it.each(outside)("%s is %s x %s x %s outside", (id, length, width, height) => {
    const box = catalogue.boxes.get(id);
    expect(millimetres(box.outside.length)).toBeCloseTo(length, 9);
    expect(millimetres(box.outside.width)).toBeCloseTo(width, 9);
    expect(millimetres(box.outside.height)).toBeCloseTo(height, 9);
  });

  it.each(each)("%s is no smaller inside than the standard allows", (_, box) => {
    expect(millimetres(box.inside.length)).toBeGreaterThanOrEqual(leastLength[box.nominalFeet]!);
    expect(millimetres(box.inside.width)).toBeGreaterThanOrEqual(2330);
    // Least height is the outside height less 241 mm.
    expect(millimetres(box.inside.height)).toBeGreaterThanOrEqual(millimetres(box.outside.height) - 241);
  });

  it.each(each)("%s has a door opening no smaller than the standard allows", (_, box) => {
    expect(millimetres(box.doorOpening.width)).toBeGreaterThanOrEqual(2286);
    expect(millimetres(box.doorOpening.height)).toBeGreaterThanOrEqual(box.height === "high cube" ? 2566 : 2261);
  });

  it("has the inside sizes and door opening that makers' specifications print", () => {
    // Two makers' specifications of 20 ft boxes and several carriers' pages, seen; 5 mm is their own tolerance.
    const { inside, doorOpening } = catalogue.boxes.get("20-standard");
    expect(Math.abs(millimetres(inside.length) - 5898)).toBeLessThan(1);
    expect(Math.abs(millimetres(inside.width) - 2352)).toBeLessThan(1);
    expect(Math.abs(millimetres(inside.height) - 2395)).toBeLessThan(5);
    expect(Math.abs(millimetres(doorOpening.width) - 2340)).toBeLessThan(1);
    expect(Math.abs(millimetres(doorOpening.height) - 2280)).toBeLessThan(1);
  });
});

describe.each(each)("%s holds together", (_, box) => {
  it("outside less insets is inside", () => {
    const { outside, inside, insets } = box;
    expect(outside.length - insets.blindEnd - insets.doorEnd).toBeCloseTo(inside.length, 12);
    expect(outside.width - insets.left - insets.right).toBeCloseTo(inside.width, 12);
    expect(outside.height - insets.roof - insets.floor).toBeCloseTo(inside.height, 12);
  });

  it("sheets lie between the outside and the inside plane", () => {
    const room = (id: string, inset: number): number => {
      const profile = catalogue.profiles.get(id);
      return inset - profile.depth - profile.thickness;
    };
    expect(room(box.sheets.side, box.insets.left)).toBeGreaterThanOrEqual(0);
    expect(room(box.sheets.side, box.insets.right)).toBeGreaterThanOrEqual(0);
    expect(room(box.sheets.end, box.insets.blindEnd)).toBeGreaterThanOrEqual(0);
    // Top fittings stand at least 6 mm above the roof (ISO 1496-2 text, seen; the same in makers' specifications).
    expect(room(box.sheets.roof, box.insets.roof)).toBeGreaterThanOrEqual(0.006 - 1e-12);
  });

  it("floor, cross members and clearance fit into the floor's inset", () => {
    // Underside 12.5 mm +5/-1.5 above the fittings' lower face: makers' specification after ISO 1496-1, seen.
    const underside = box.insets.floor - box.floor.thickness - box.crossMembers.depth;
    expect(underside).toBeGreaterThanOrEqual(0.011);
    expect(box.rails.bottomSide.face + 0.0125 + 0.005).toBeGreaterThan(box.crossMembers.depth + 0.0125);
  });

  it("the door opening is what posts, header and floor leave", () => {
    const { doorOpening, posts, rails, outside, insets } = box;
    expect(doorOpening.width + 2 * posts.doorEnd.depth).toBeCloseTo(outside.width, 12);
    expect(doorOpening.height + rails.doorHeader.face + insets.floor).toBeCloseTo(outside.height, 12);
    expect(rails.doorHeader.face).toBeGreaterThanOrEqual(box.fittings.body.height);
  });

  it("the leaves fit the opening and their lining stays between the posts", () => {
    const { cargoDoors, doorOpening, posts, insets } = box;
    expect(2 * cargoDoors.leafWidth).toBeLessThan(doorOpening.width);
    expect(cargoDoors.leafHeight).toBeLessThan(doorOpening.height);
    expect(cargoDoors.liningDepth).toBeGreaterThan(0.03);
    expect(insets.doorEnd + cargoDoors.liningDepth).toBeLessThanOrEqual(posts.doorEnd.face + 1e-12);
  });

  it("hole spacing agrees with fitting positions within 5 mm", () => {
    // Centres 101.5 mm from the end face and 89 mm from the side face: ISO 668:1995 annex A, seen.
    const along = box.outside.length - 2 * 0.1015 - box.fittings.holesAlong;
    const across = box.outside.width - 2 * 0.089 - box.fittings.holesAcross;
    for (const apart of [along, across]) {
      expect(apart).toBeGreaterThanOrEqual(0);
      expect(apart).toBeLessThanOrEqual(0.005);
    }
  });

  it("fork pockets stand between the posts, on short boxes only", () => {
    expect(box.forkPockets === null).toBe(box.nominalFeet >= 40);
    if (box.forkPockets === null) return;
    expect(box.forkPockets.spacing + box.forkPockets.width).toBeLessThan(box.outside.length - 2 * 0.178);
    expect(box.forkPockets.height).toBeLessThan(box.rails.bottomSide.face);
  });

  it("weighs at least what its named parts weigh, and little more", () => {
    const share = namedMass(box) / box.mass.tare;
    expect(share).toBeGreaterThan(0.8);
    expect(share).toBeLessThan(1);
    expect(box.mass.greatestGross).toBeGreaterThan(box.mass.tare);
  });
});

/** Mass of the parts that the row names; gussets, gooseneck tunnel, fork pocket plates, lashing gear and paint are left out. */
function namedMass(box: BoxRow): number {
  const { inside, outside, rails, posts, crossMembers } = box;
  const sheet = (id: string, area: number): number => {
    const profile = catalogue.profiles.get(id);
    return area * developed(profile) * profile.thickness * catalogue.materials.get(profile.material).density;
  };
  const skin =
    2 * sheet(box.sheets.side, inside.length * inside.height) +
    sheet(box.sheets.end, inside.width * inside.height) +
    sheet(box.sheets.roof, inside.length * inside.width);
  const floor = inside.length * inside.width * box.floor.thickness * catalogue.materials.get(box.floor.material).density;
  const members = Math.floor(inside.length / crossMembers.pitch) * inside.width * crossMembers.massPerLength;
  const long = 2 * inside.length * (rails.topSide.massPerLength + rails.bottomSide.massPerLength);
  const ends = [rails.topBlind, rails.bottomBlind, rails.doorHeader, rails.doorSill];
  const across = inside.width * ends.reduce((sum, rail) => sum + rail.massPerLength, 0);
  const postHeight = outside.height - 2 * box.fittings.body.height;
  const upright = 2 * postHeight * (posts.blindEnd.massPerLength + posts.doorEnd.massPerLength);
  const fittings = 8 * box.fittings.mass;
  return skin + floor + members + long + across + upright + fittings + 2 * box.cargoDoors.leafMass;
}

/** Sheet used for one unit of width covered. */
function developed(profile: ProfileRow): number {
  const run = (profile.pitch - profile.innerFlat - profile.outerFlat) / 2;
  return (profile.innerFlat + profile.outerFlat + 2 * Math.hypot(run, profile.depth)) / profile.pitch;
}

describe("profiles", () => {
  it.each(catalogue.profiles.rows.map((row): [string, ProfileRow] => [row.id, row]))("%s closes on its pitch", (_, row) => {
    expect(row.pitch).toBeGreaterThanOrEqual(row.innerFlat + row.outerFlat);
    expect(row.depth).toBeGreaterThan(row.thickness);
  });

  it("slopes run 68 mm on the side and 18 mm on the end", () => {
    // Makers' specifications, seen: side outer 72, slope 68, depth 36, pitch 278; end outer 110, inner 104, slope 18, depth 45.6.
    const slope = (id: string): number => {
      const row = catalogue.profiles.get(id);
      return (row.pitch - row.innerFlat - row.outerFlat) / 2;
    };
    expect(slope("side-36")).toBeCloseTo(0.068, 12);
    expect(slope("end-46")).toBeCloseTo(0.018, 12);
  });
});

describe("top rail", () => {
  it("is the 60 x 60 x 3 mm tube that makers' drawings show", () => {
    const { topSide } = catalogue.boxes.get("20-standard").rails;
    expect(topSide.face).toBe(0.06);
    expect(topSide.massPerLength).toBeCloseTo(steelPerMetre(hollowArea(0.06, 0.06, 0.003)), 12);
    // EN 10219-2 lists 5.19 kg/m for the cold-formed 60 x 60 x 3 tube, from memory.
    expect(Math.abs(topSide.massPerLength - 5.19)).toBeLessThan(0.03);
  });
});
