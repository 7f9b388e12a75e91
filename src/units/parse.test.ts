import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { EXAMPLES } from "./advice.ts";
import { KINDS } from "./kinds.ts";
import type { Kind } from "./kinds.ts";
import { parseQuantity } from "./parse.ts";
import { findUnit } from "./unitSearch.ts";
import { UNITS } from "./unitTable.ts";

function read(kind: Kind, text: string): number {
  const parsed = parseQuantity(kind, text);
  if (!parsed.ok) throw new Error(`${kind} "${text}": ${parsed.reason}`);
  return parsed.value;
}

function reasonAgainst(kind: Kind, text: string): string {
  const parsed = parseQuantity(kind, text);
  return parsed.ok ? `read as ${parsed.value}` : parsed.reason;
}

describe("lengths that a tape shows", () => {
  // 7 ft 8-5/8 in = 92.625 in = 2.352675 m by the definition of the inch.
  it.each([
    `7' 8-5/8"`, `7'-8 5/8"`, `7'-8-5/8"`, `7'8-5/8"`, `7' 8 5/8"`, `7' - 8 5/8"`, `7 ft 8 5/8 in`, `7ft 8-5/8in`, `7ft8-5/8in`,
    `7 feet 8 5/8 inches`, `7 ft. 8-5/8 in.`, `7 ft, 8 5/8 in`, `7 FT 8 5/8 IN`, `7' 8.625"`, `7' 8 5/8`, `92-5/8"`, `92 5/8 in`, `92.625 in`, `92 5/8''`,
    `7′ 8⅝″`, `7’ 8 5/8”`, `7‘ 8 5/8“`, `7ʹ 8⅝ʺ`, `7´ 8⅝˝`, `7\` 8⅝"`, `7’-8 5⁄8’’`, `7′–8⅝″`, `7'\u00a08\u00a05/8"`, ` 7' 8⅝" `, `７' 8⅝"`,
  ])("%s", (text) => {
    expect(read("length", text)).toBe(2.352675);
  });

  it.each([
    [`6' 0"`, 1.8288], ["6'", 1.8288], ["6 ft", 1.8288], ["7ft 8in", 2.3368], ["7' 8", 2.3368], ["7-1/2 ft", 2.286],
    ["7.5'", 2.286],
    [`8-5/8"`, 0.219075], ["5/8 in", 0.015875], ['1 1/2"', 0.0381], ['1½"', 0.0381], ["½ in", 0.0127], [`0' 3-1/2"`, 0.0889],
    [`7' 5/8"`, 2.149475],
    ["-3 in", -0.0762], ["−3 in", -0.0762], ["–3 in", -0.0762], [`-7' 8-5/8"`, -2.352675], [`−0' 6"`, -0.1524],
    ["+3 in", 0.0762], ["3-in", 0.0762], [".5 in", 0.0127],
    ["2352 mm", 2.352], ["2,352 mm", 2.352], ["2 352 mm", 2.352], ["2\u202f352 mm", 2.352], ["235.2 cm", 2.352],
    ["2.352 m", 2.352], ["2352mm", 2.352], ["2352 MM", 2.352],
    ["1.5e3 mm", 1.5], ["1.5×10³ mm", 1.5], ["1.5 x 10^3 mm", 1.5], ["12 mil", 0.0003048], ["125 µm", 0.000125],
    ["125 um", 0.000125], ["2,140 m", 2140], ["12,192 mm", 12.192],
    ["2 yd", 1.8288], ["0 mm", 0], ["-0 mm", 0],
  ])("%s is %s m", (text, metres) => {
    expect(read("length", text)).toBe(metres);
  });
});

describe("other kinds", () => {
  it.each<[Kind, string, number]>([
    ["area", "100 sq ft", 9.290304], ["area", "100 ft²", 9.290304], ["area", "100 ft^2", 9.290304],
    ["area", "100 SF", 9.290304], ["area", "1 sq. in.", 0.00064516],
    ["volume", "12 bd ft", 0.028316846592], ["volume", "1 ft3", 0.028316846592], ["volume", "5 gal", 0.01892705892],
    ["volume", "250 L", 0.25], ["volume", "250 l", 0.25],
    ["mass", "30,480 kg", 30480], ["mass", "30.48 t", 30480], ["mass", "16 oz", 0.45359237], ["mass", "1/2 lb", 0.226796185],
    ["force", "4.5 kN", 4500], ["force", "4.5 KN", 4500], ["force", "1 kip", 4448.2216152605], ["force", "1 kgf", 9.80665],
    ["pressure", "0.25 in wg", 62.2722275], ["pressure", `0.25 in. w.g.`, 62.2722275], ["pressure", "0.25 inH2O", 62.2722275],
    ["pressure", "0.25 inH₂O", 62.2722275],
    ["pressure", "820 hPa", 82000], ["pressure", "820 mbar", 82000], ["pressure", "170 kPa", 170000],
    ["pressure", "350 MPa", 3.5e8], ["pressure", "350 N/mm2", 3.5e8],
    ["temperature", "-34 °C", -34], ["temperature", "−34 ℃", -34], ["temperature", "-34C", -34], ["temperature", "95 °F", 35],
    ["temperature", "95 ºF", 35], ["temperature", "95 deg F", 35],
    ["temperature", "-40 F", -40], ["temperature", "293.15 K", 20], ["temperature", "0 K", -273.15],
    ["temperatureDifference", "20 K", 20], ["temperatureDifference", "20 C°", 20], ["temperatureDifference", "20 °C", 20],
    ["temperatureDifference", "36 F°", 20], ["temperatureDifference", "-36 °F", -20],
    ["power", "3.2 kW", 3200], ["power", "3.2 KW", 3200], ["power", "5 mW", 0.005], ["power", "5 MW", 5e6],
    ["airFlow", "250 L/s", 0.25], ["airFlow", "900 m³/h", 0.25], ["airFlow", "900 m3/hr", 0.25],
    ["airFlow", "60 CFM", 0.028316846592],
    ["thermalResistance", "RSI 2.1", 2.1], ["thermalResistance", "RSI-2.1", 2.1], ["thermalResistance", "2.1 m2K/W", 2.1],
    ["thermalResistance", "2.1 m²·K/W", 2.1], ["thermalResistance", "2.1 K·m²/W", 2.1],
    ["thermalConductivity", "0.024 W/(m·K)", 0.024], ["thermalConductivity", "0.024 W/mK", 0.024],
    ["thermalConductivity", "24 mW/m-K", 0.024], ["thermalTransmittance", "0.35 W/m2K", 0.35],
    ["vapourPermeance", "60 ng/(Pa·s·m²)", 6e-11], ["vapourPermeance", "60 ng/Pa·s·m2", 6e-11],
    ["density", "2 pcf", 32.03692674787904],
    ["duration", "1.5 h", 5400], ["duration", "2 weeks", 1209600], ["angle", "180°", Math.PI], ["coverage", "8 m2/L", 8000],
    ["ratio", "15%", 0.15], ["ratio", "0.15", 0.15],
    ["ratio", "1:12", 1 / 12], ["ratio", "3/12", 0.25], ["vapourResistanceFactor", "60", 60], ["current", "60 A", 60],
    ["voltage", "13.8 kV", 13800], ["airChangeRate", "0.5 ACH", 0.5 / 3600],
  ])("%s: %s is %s", (kind, text, value) => {
    expect(read(kind, text)).toBeCloseTo(value, 12 - Math.round(Math.log10(Math.abs(value) + 1e-9)));
  });

  it("reads every way of writing an imperial thermal resistance alike", () => {
    // NIST SP 811 B.9: 1 ft2 h degF/BTU = 1.761 102 E-01 m2 K/W, so R-12 is 2.113322.
    for (const text of ["R-12", "R 12", "R12", "r-12", "R–12", "12 ft²·h·°F/BTU", "12 h·ft2·F/Btu", "12 ft2 h F/BTU", "12 (ft2 h °F)/BTU", "12 hr-ft2-F/Btu"]) {
      expect(read("thermalResistance", text)).toBeCloseTo(2.113322, 6);
    }
  });
});

describe("refused, with the reason", () => {
  it.each<[Kind, string, RegExp]>([
    ["length", "", /nothing/], ["length", "   ", /nothing/], ["length", "2352", /unit of length is needed/],
    ["length", "0", /unit of length is needed/], ["length", "8 5/8", /unit of length/],
    ["length", "2,5 m", /comma parts thousands/], ["length", "23,52 mm", /comma parts/],
    ["length", "1.234.5 mm", /point starts decimals/], ["length", "2.352,5 mm", /comma parts/],
    ["length", "1,2345 mm", /comma parts/],
    ["length", `7' 14"`, /below 12/], ["length", `7' 12"`, /below 12/], ["length", `7.5' 3"`, /take no inches/],
    ["length", `7' 85/8"`, /not below one/], ["length", `7' 8" 5/8`, /not a number of inches/],
    ["length", "7 feet and 8 inches", /not a number of inches/], ["length", `85/8"`, /not below one/],
    ["length", `1 9/8"`, /not below one/],
    ["length", "5/0 in", /over zero/], ["length", `7' -8"x`, /not a number of inches/], ["length", `7' --8"`, /negative/],
    ["length", "7' 8 cm", /not a number of inches/], ["length", "7 x 8 ft", /before the feet mark/],
    ["length", `7"8'`, /before the feet mark/],
    ["length", "16 ga", /gauge/], ["length", "5 kg", /mass, not of length/], ["length", "5 m m", /not a known unit/],
    ["length", "wide", /no number/], ["length", "5 constructor", /not a known unit/], ["length", "1e999 mm", /too large/],
    ["length", "NaN mm", /no number/], ["length", "Infinity m", /no number/], ["length", "0x10 mm", /not a known unit/],
    ["length", "2 x 1012 mm", /not a known unit/], ["length", `${"9".repeat(200)} mm`, /too long/],
    ["length", "' 8", /no number/],
    ["mass", "2 tons", /short ton/], ["mass", "5 kN", /force, not of mass/], ["force", "120 lb", /lbf/],
    ["power", "12000 BTU", /BTU\/h/], ["power", "12 MBTU/h", /thousand or a million/],
    ["power", "5 mw", /capitals/], ["pressure", "5 mpa", /capitals/], ["energy", "5 mj", /capitals/],
    ["temperature", "20", /unit of temperature/], ["temperature", "-300 °C", /absolute zero/],
    ["temperature", "-1 K", /absolute zero/], ["temperature", "-500 F", /absolute zero/],
    ["thermalResistance", "R-12 per inch", /may not follow R/], ["thermalResistance", "R-6.5/in", /may not follow R/],
    ["thermalResistance", "12", /unit of thermal resistance/], ["thermalResistance", "R-", /no number/],
    ["volume", "5 imp gal", /US gallon/], ["duration", "2 months", /differ/], ["ratio", "1:0", /over zero/],
  ])("%s: %s", (kind, text, reason) => {
    expect(reasonAgainst(kind, text)).toMatch(reason);
  });

  it("gives with every refusal a form that would do", () => {
    for (const kind of KINDS) {
      const parsed = parseQuantity(kind, "?");
      expect(parsed).toMatchObject({ ok: false, example: EXAMPLES[kind] });
      expect(parseQuantity(kind, EXAMPLES[kind])).toMatchObject({ ok: true });
    }
  });
});

describe("the table of units", () => {
  it("finds each unit by each of its spellings, so that none is claimed twice in a kind", () => {
    for (const kind of KINDS) {
      for (const unit of UNITS[kind]) {
        for (const spelling of [unit.print, ...unit.also]) expect(findUnit(kind, spelling), `${kind} ${spelling}`).toBe(unit);
      }
    }
  });

  it("has the SI unit itself for each kind", () => {
    for (const kind of KINDS) expect(UNITS[kind].some((unit) => unit.factor.times === unit.factor.over && unit.shift === 0), kind).toBe(true);
  });
});

describe("any text", () => {
  const pieces = fc.array(
    fc.oneof(
      fc.constantFrom("7", "8", "5/8", "'", '"', "ft", "in", " ", "-", "−", ",", ".", "e", "½", "″", "R", "RSI", "°", "F", "m", "m2", "W", "/", "(", ")", "%", ":", "×10⁻³", "K", "gal", "0"),
      fc.string({ unit: "binary", maxLength: 3 }),
    ),
    { maxLength: 12 },
  );
  it("gives a finite value or a reason, and never throws", () => {
    fc.assert(
      fc.property(fc.constantFrom(...KINDS), fc.oneof(fc.string({ unit: "binary" }), pieces.map((parts) => parts.join(""))), (kind, text) => {
        const parsed = parseQuantity(kind, text);
        if (parsed.ok) expect(Number.isFinite(parsed.value) && !Object.is(parsed.value, -0)).toBe(true);
        else expect(typeof parsed.reason === "string" && parsed.reason.length > 0).toBe(true);
      }),
      { seed: 2024, numRuns: 20_000 },
    );
  });

  it("feet, inches and sixteenths typed in any of the usual ways give the same length", () => {
    const ways = [
      (f: number, i: number, n: number) => `${f}' ${i}-${n}/16"`,
      (f: number, i: number, n: number) => `${f}'-${i} ${n}/16"`,
      (f: number, i: number, n: number) => `${f} ft ${i} ${n}/16 in`,
      (f: number, i: number, n: number) => `${f}’ ${i} ${n}⁄16”`,
      (f: number, i: number, n: number) => `${f * 12 + i} ${n}/16 in`,
      (f: number, i: number, n: number) => `${f * 12 + i + n / 16}"`,
      (f: number, i: number, n: number) => `${((f * 12 + i + n / 16) * 25.4).toFixed(5)} mm`,
    ];
    fc.assert(
      fc.property(fc.nat(60), fc.nat(11), fc.nat(15), fc.constantFrom(...ways), (feet, inches, sixteenths, way) => {
        expect(read("length", way(feet, inches, sixteenths))).toBeCloseTo((feet * 192 + inches * 16 + sixteenths) * 0.0015875, 12);
      }),
      { seed: 2024, numRuns: 2000 },
    );
  });
});
