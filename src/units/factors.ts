/**
 * How many SI units make one of another unit: each factor once, in this direction only.
 *
 * A factor is kept as a fraction of two numbers, so that a typed decimal becomes the nearest number to its true
 * value: 2352 mm is 2352 / 1000, not 2352 × 0.001. Every factor is exact by definition, save the three columns of
 * liquid, which rest on a density agreed for the purpose, and those made from them.
 *
 * Sources: international yard and pound agreement of 1959; BIPM SI Brochure, 9th ed. (2019); NIST Special
 * Publication 811 (2008), Appendix B. The definitions are written from memory of these texts; the tests hold the
 * results against the rounded values that SP 811 prints and against a general-purpose units library.
 */
export interface Factor {
  readonly times: number;
  readonly over: number;
  readonly definition: string;
}

function exact(times: number, over: number, definition: string): Factor {
  return { times, over, definition };
}

function quotient(top: readonly Factor[], bottom: readonly Factor[], definition: string): Factor {
  const product = (side: readonly Factor[], part: "times" | "over") => side.reduce((sum, factor) => sum * factor[part], 1);
  return {
    times: product(top, "times") * product(bottom, "over"),
    over: product(top, "over") * product(bottom, "times"),
    definition,
  };
}

/** The SI unit itself, or a power of ten of it. */
export const one = exact(1, 1, "the SI unit itself");
export const thousand = exact(1000, 1, "prefix kilo: 1000");
export const million = exact(1e6, 1, "prefix mega: 1e6");
export const milliard = exact(1e9, 1, "prefix giga: 1e9");
export const hundredth = exact(1, 100, "prefix centi: 1/100; also percent");
export const thousandth = exact(1, 1000, "prefix milli: 1/1000; also per mille");
export const millionth = exact(1, 1e6, "prefix micro: 1/1e6");

// Length and what is made of it.
export const inch = exact(254, 10_000, "1 in = 25.4 mm exactly (1959)");
export const foot = exact(3048, 10_000, "1 ft = 12 in = 0.3048 m exactly (1959)");
export const yard = exact(9144, 10_000, "1 yd = 3 ft = 0.9144 m exactly (1959)");
export const mile = exact(1_609_344, 1000, "1 mi = 5280 ft = 1609.344 m exactly (1959)");
export const mil = exact(254, 1e7, "1 mil = 0.001 in exactly");
export const squareInch = quotient([inch, inch], [], "1 in2 = (1 in)2");
export const squareFoot = quotient([foot, foot], [], "1 ft2 = (1 ft)2");
export const squareYard = quotient([yard, yard], [], "1 yd2 = (1 yd)2");
export const cubicInch = quotient([inch, inch, inch], [], "1 in3 = (1 in)3");
export const cubicFoot = quotient([foot, foot, foot], [], "1 ft3 = (1 ft)3");
export const cubicYard = quotient([yard, yard, yard], [], "1 yd3 = (1 yd)3");
export const inchToFourth = quotient([inch, inch, inch, inch], [], "1 in4 = (1 in)4");
export const boardFoot = quotient([foot, foot, inch], [], "1 board foot = 1 ft x 1 ft x 1 in = 144 in3");
export const usGallon = exact(3_785_411_784, 1e12, "1 US gallon = 231 in3 exactly");
export const usQuart = exact(946_352_946, 1e12, "1 US quart = 1/4 US gallon exactly");
export const usFluidOunce = exact(295_735_295_625, 1e16, "1 US fluid ounce = 1/128 US gallon exactly");
export const degree = exact(Math.PI, 180, "1 degree = pi/180 rad");

// Time.
export const minute = exact(60, 1, "1 min = 60 s");
export const perMinute = exact(1, 60, "1/min");
export const hour = exact(3600, 1, "1 h = 3600 s");
export const day = exact(86_400, 1, "1 d = 24 h; a day of the clock, not a working day");
export const week = exact(604_800, 1, "1 week = 7 d");

// Mass and force.
export const pound = exact(45_359_237, 1e8, "1 lb = 0.45359237 kg exactly (1959)");
export const ounce = exact(45_359_237, 16e8, "1 oz = 1/16 lb exactly");
const grain = exact(6_479_891, 1e11, "1 grain = 1/7000 lb = 64.79891 mg exactly");
export const shortTon = exact(90_718_474, 1e5, "1 short ton = 2000 lb exactly");
export const standardGravity = exact(980_665, 1e5, "g_n = 9.80665 m/s2 exactly (CGPM 1901)");
export const kilogramForce = exact(980_665, 1e5, "1 kgf = 1 kg x g_n");
export const poundForce = exact(44_482_216_152_605, 1e13, "1 lbf = 1 lb x g_n = 4.4482216152605 N exactly");
export const kip = exact(44_482_216_152_605, 1e10, "1 kip = 1000 lbf");
export const poundPerFoot = quotient([pound], [foot], "1 lb/ft");
export const poundPerSquareFoot = quotient([pound], [squareFoot], "1 lb/ft2");
export const poundPerCubicFoot = quotient([pound], [cubicFoot], "1 lb/ft3");
export const poundPerCubicYard = quotient([pound], [cubicYard], "1 lb/yd3");
export const ouncePerSquareYard = quotient([ounce], [squareYard], "1 oz/yd2");
export const ouncePerSquareFoot = quotient([ounce], [squareFoot], "1 oz/ft2");
export const poundForcePerFoot = quotient([poundForce], [foot], "1 lbf/ft");
export const poundForcePerInch = quotient([poundForce], [inch], "1 lbf/in");
export const kipPerFoot = quotient([kip], [foot], "1 kip/ft");
export const poundForceFoot = quotient([poundForce, foot], [], "1 lbf ft");
export const poundForceInch = quotient([poundForce, inch], [], "1 lbf in");
export const kipFoot = quotient([kip, foot], [], "1 kip ft");
export const kipInch = quotient([kip, inch], [], "1 kip in");

// Pressure.
export const bar = exact(100_000, 1, "1 bar = 100 kPa");
export const hundredPascal = exact(100, 1, "1 hPa = 1 mbar = 100 Pa");
export const atmosphere = exact(101_325, 1, "1 standard atmosphere = 101325 Pa exactly");
export const psi = quotient([poundForce], [squareInch], "1 psi = 1 lbf/in2");
export const psf = quotient([poundForce], [squareFoot], "1 psf = 1 lbf/ft2");
export const ksi = quotient([kip], [squareInch], "1 ksi = 1000 psi");
export const inchOfWater = exact(24_908_891, 1e5, "conventional: 1 in x 1000 kg/m3 x g_n = 249.08891 Pa; not the 60 degF value");
export const millimetreOfWater = exact(980_665, 1e5, "conventional: 1 mm x 1000 kg/m3 x g_n = 9.80665 Pa");
export const inchOfMercury = quotient(
  [inch, standardGravity, exact(135_951, 10, "conventional density of mercury, 13595.1 kg/m3")],
  [],
  "conventional: 1 in x 13595.1 kg/m3 x g_n = 3386.389 Pa; agreed, not exact by nature",
);

// Heat.
export const btu = exact(105_505_585_262, 1e8, "1 BTU (International Table) = 1055.05585262 J exactly");
export const kilowattHour = exact(3_600_000, 1, "1 kWh = 3.6 MJ exactly");
export const fahrenheitDegree = exact(5, 9, "a difference of 1 degF = 5/9 K exactly");
export const btuPerHour = quotient([btu], [hour], "1 BTU/h");
export const thousandBtuPerHour = quotient([btu, thousand], [hour], "1 MBH = 1000 BTU/h, as the trade writes it");
export const tonOfCooling = quotient([btu, exact(12_000, 1, "12000")], [hour], "1 ton of cooling = 12000 BTU/h exactly");
export const horsepower = quotient([poundForce, foot, exact(550, 1, "550")], [], "1 hp (mechanical) = 550 ft lbf/s");
export const btuPerHourSquareFoot = quotient([btu], [hour, squareFoot], "1 BTU/(h ft2)");
export const imperialR = quotient([squareFoot, hour, fahrenheitDegree], [btu], "R-1 = 1 ft2 h degF/BTU");
export const imperialU = quotient([btu], [squareFoot, hour, fahrenheitDegree], "1 BTU/(h ft2 degF)");
export const imperialK = quotient([btu], [foot, hour, fahrenheitDegree], "1 BTU/(h ft degF)");
export const imperialKInch = quotient([btu, inch], [squareFoot, hour, fahrenheitDegree], "1 BTU in/(h ft2 degF)");
export const btuPerPoundFahrenheit = quotient([btu], [pound, fahrenheitDegree], "1 BTU/(lb degF) = 4186.8 J/(kg K)");

// Air and vapour.
export const cubicFootPerMinute = quotient([cubicFoot], [minute], "1 cfm = 1 ft3/min");
export const cubicMetrePerHour = exact(1, 3600, "1 m3/h");
export const cfmPerSquareFoot = quotient([cubicFoot], [minute, squareFoot], "1 cfm/ft2");
export const perHour = exact(1, 3600, "1/h");
export const nanogram = exact(1, 1e12, "1 ng = 1e-12 kg");
export const usPerm = quotient([grain], [hour, squareFoot, inchOfMercury], "1 US perm = 1 grain/(h ft2 inHg), conventional inHg");
export const usPermInch = quotient([grain, inch], [hour, squareFoot, inchOfMercury], "1 perm in = 1 US perm x 1 in");

// Rates.
export const footPerMinute = quotient([foot], [minute], "1 ft/min");
export const milePerHour = quotient([mile], [hour], "1 mph");
export const kilometrePerHour = exact(10, 36, "1 km/h");
export const squareMetrePerLitre = exact(1000, 1, "1 m2/L");
export const squareFootPerGallon = quotient([squareFoot], [usGallon], "1 ft2/gal (US)");
export const hourPerFoot = quotient([hour], [foot], "1 h/ft");
export const hourPerSquareFoot = quotient([hour], [squareFoot], "1 h/ft2");
export const minutePerFoot = quotient([minute], [foot], "1 min/ft");
export const minutePerSquareFoot = quotient([minute], [squareFoot], "1 min/ft2");
export const footcandle = quotient([], [squareFoot], "1 footcandle = 1 lm/ft2");
