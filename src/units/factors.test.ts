import { unit as mathUnit } from "mathjs";
import { describe, expect, it } from "vitest";
import type { Kind } from "./kinds.ts";
import { KINDS } from "./kinds.ts";
import { parseQuantity } from "./parse.ts";
import { findUnit } from "./unitSearch.ts";
import { UNITS, fromSi, toSi } from "./unitTable.ts";

function inSi(kind: Kind, text: string): number {
  const parsed = parseQuantity(kind, text);
  if (!parsed.ok) throw new Error(`${kind} "${text}": ${parsed.reason}`);
  return parsed.value;
}

describe("factors against NIST SP 811 (2008), Appendix B", () => {
  // Six decimals as printed there. Rows marked seen were read in public copies of that table (a handbook reprint and
  // converter sources that cite it); the others are from memory.
  it.each<[Kind, string, number]>([
    ["pressure", "1 inHg", 3.386389e3], // seen, "inch of mercury, conventional"
    ["vapourPermeance", "1 perm", 5.72135e-11], // seen, "perm (0 °C)"
    ["vapourPermeability", "1 perm in", 1.45322e-12], // seen, "perm inch (0 °C)"
    ["volume", "1 bd ft", 2.359737e-3], // seen
    ["thermalResistance", "R-1", 1.761102e-1], // seen, "thermal insulance"
    ["energy", "1 BTU", 1.055056e3], // seen, International Table
    ["power", "1 BTU/h", 2.930711e-1], // seen
    ["volume", "1 gal", 3.785412e-3], // seen
    ["volume", "1 ft3", 2.831685e-2], // seen
    ["volume", "1 in3", 1.638706e-5], // seen
    ["volume", "1 qt", 9.463529e-4], // seen
    ["volume", "1 fl oz", 2.957353e-5], // seen
    ["mass", "1 oz", 2.834952e-2], // seen
    ["pressure", "1 psi", 6.894757e3], // seen
    ["pressure", "1 inH2O", 2.490889e2], // seen, "inch of water, conventional"
    ["pressure", "1 mmH2O", 9.80665],
    ["pressure", "1 psf", 4.788026e1],
    ["pressure", "1 ksi", 6.894757e6],
    ["force", "1 lbf", 4.448222],
    ["force", "1 kip", 4.448222e3],
    ["lineLoad", "1 lbf/ft", 1.45939e1],
    ["lineLoad", "1 lbf/in", 1.751268e2],
    ["moment", "1 lbf ft", 1.355818],
    ["moment", "1 lbf in", 1.129848e-1],
    ["massPerLength", "1 lb/ft", 1.488164],
    ["massPerArea", "1 lb/ft2", 4.882428],
    ["massPerArea", "1 oz/yd2", 3.390575e-2],
    ["density", "1 lb/ft3", 1.601846e1],
    ["density", "1 lb/yd3", 5.932764e-1],
    ["mass", "1 short ton", 9.071847e2],
    ["power", "1 ton", 3.516853e3],
    ["power", "1 hp", 7.456999e2],
    ["airFlow", "1 cfm", 4.719474e-4],
    ["heatFlux", "1 BTU/(h ft2)", 3.154591],
    ["thermalTransmittance", "1 BTU/(h ft2 °F)", 5.678263],
    ["thermalConductivity", "1 BTU/(h ft °F)", 1.730735],
    ["thermalConductivity", "1 BTU in/(h ft2 °F)", 1.442279e-1],
    ["specificHeat", "1 BTU/(lb °F)", 4.1868e3],
    ["speed", "1 mph", 4.4704e-1],
    ["speed", "1 ft/min", 5.08e-3],
    ["secondMoment", "1 in4", 4.162314e-7],
    ["illuminance", "1 footcandle", 1.076391e1],
    ["area", "1 ft2", 9.290304e-2],
    ["area", "1 in2", 6.4516e-4],
    ["length", "1 mil", 2.54e-5],
    ["length", "1 mi", 1.609344e3],
    ["angle", "1 deg", 1.745329e-2],
  ])("%s: %s", (kind, text, printed) => {
    const lastPlace = 10 ** (Math.floor(Math.log10(printed)) - 6);
    const coarser = kind === "vapourPermeance" || kind === "vapourPermeability" ? 10 : 1; // printed to five decimals
    expect(Math.abs(inSi(kind, text) - printed)).toBeLessThanOrEqual(0.5000001 * lastPlace * coarser);
  });

  it("is exact where the definition is", () => {
    // The value that a reader would type in code, to the last bit.
    expect(inSi("length", "1 in")).toBe(0.0254);
    expect(inSi("length", "8 ft")).toBe(2.4384);
    expect(inSi("length", "2352 mm")).toBe(2.352);
    expect(inSi("mass", "1 lb")).toBe(0.45359237);
    expect(inSi("volume", "1 gal")).toBe(0.003785411784);
    expect(inSi("power", "3.2 kW")).toBe(3200);
    expect(inSi("temperature", "212 °F")).toBe(100);
    expect(inSi("temperature", "-40 °F")).toBe(-40);
  });
});

describe("factors against mathjs, an independent general-purpose table", () => {
  // mathjs calls the International Table BTU `BTU` and the short ton `ton`. Some of its factors are typed to fewer digits
  // (gal, qt, psi, kip, hp), hence the wider tolerance of those rows, each with a second row built from its exact units.
  it.each<[Kind, string, string, string, number]>([
    ["length", "1 in", "1 in", "m", 1e-15], ["length", "1 ft", "1 ft", "m", 1e-15], ["length", "1 yd", "1 yd", "m", 1e-15],
    ["length", "1 mi", "1 mi", "m", 1e-15], ["length", "1 mil", "1 mil", "m", 1e-15],
    ["area", "1 ft2", "1 ft^2", "m^2", 1e-14], ["area", "1 in2", "1 in^2", "m^2", 1e-14],
    ["area", "1 yd2", "1 yd^2", "m^2", 1e-14],
    ["volume", "1 ft3", "1 ft^3", "m^3", 1e-14], ["volume", "1 in3", "1 in^3", "m^3", 1e-14],
    ["volume", "1 yd3", "1 yd^3", "m^3", 1e-14], ["volume", "1 bd ft", "144 in^3", "m^3", 1e-14],
    ["volume", "1 gal", "231 in^3", "m^3", 1e-14], ["volume", "1 gal", "1 gal", "m^3", 1e-6],
    ["volume", "1 qt", "1 qt", "m^3", 1e-6], ["volume", "1 qt", "57.75 in^3", "m^3", 1e-14], ["volume", "1 L", "1 L", "m^3", 1e-14],
    ["mass", "1 lb", "1 lbm", "kg", 1e-14], ["mass", "1 oz", "1 oz", "kg", 1e-12],
    ["mass", "1 short ton", "1 ton", "kg", 1e-12], ["mass", "1 t", "1 tonne", "kg", 1e-14],
    ["force", "1 lbf", "1 lbf", "N", 1e-14], ["force", "1 kip", "1 kip", "N", 1e-8], ["force", "1 kip", "1000 lbf", "N", 1e-14],
    ["lineLoad", "1 lbf/ft", "1 lbf/ft", "N/m", 1e-14], ["moment", "1 lbf ft", "1 lbf ft", "N m", 1e-14],
    ["pressure", "1 psi", "1 psi", "Pa", 1e-8], ["pressure", "1 psi", "1 lbf/in^2", "Pa", 1e-14], ["pressure", "1 psf", "1 lbf/ft^2", "Pa", 1e-14],
    ["pressure", "1 ksi", "1000 lbf/in^2", "Pa", 1e-14], ["pressure", "1 bar", "1 bar", "Pa", 1e-14],
    ["pressure", "1 atm", "1 atm", "Pa", 1e-14], ["pressure", "1 mmH2O", "1 mmH2O", "Pa", 1e-12],
    ["pressure", "1 inH2O", "25.4 mmH2O", "Pa", 1e-12],
    ["temperatureDifference", "1 F°", "1 degR", "K", 1e-14], ["temperature", "95 °F", "95 degF", "degC", 1e-12],
    ["temperature", "-34 °C", "-34 degC", "degC", 1e-12], ["temperature", "293.15 K", "293.15 K", "degC", 1e-12],
    ["energy", "1 BTU", "1 BTU", "J", 1e-14], ["energy", "1 kWh", "1 kW hour", "J", 1e-14],
    ["power", "1 BTU/h", "1 BTU/hour", "W", 1e-14], ["power", "1 ton", "12000 BTU/hour", "W", 1e-14],
    ["power", "1 MBH", "1000 BTU/hour", "W", 1e-14],
    ["power", "1 hp", "1 hp", "W", 1e-10], ["power", "1 hp", "550 ft lbf/s", "W", 1e-14],
    ["airFlow", "1 cfm", "1 ft^3/minute", "m^3/s", 1e-14], ["airFlow", "1 m3/h", "1 m^3/hour", "m^3/s", 1e-14],
    ["airFlow", "1 L/s", "1 L/s", "m^3/s", 1e-14],
    ["airLeakage", "1 cfm/ft2", "1 ft/minute", "m/s", 1e-14], ["heatFlux", "1 BTU/(h ft2)", "1 BTU/(hour ft^2)", "W/m^2", 1e-14],
    ["thermalResistance", "R-1", "1 ft^2 hour degR/BTU", "m^2 K/W", 1e-14],
    ["thermalTransmittance", "1 BTU/(h ft2 F)", "1 BTU/(hour ft^2 degR)", "W/(m^2 K)", 1e-14],
    ["thermalConductivity", "1 BTU in/(h ft2 F)", "1 BTU in/(hour ft^2 degR)", "W/(m K)", 1e-14],
    ["linearTransmittance", "1 BTU/(h ft F)", "1 BTU/(hour ft degR)", "W/(m K)", 1e-14],
    ["specificHeat", "1 BTU/(lb F)", "1 BTU/(lbm degR)", "J/(kg K)", 1e-14],
    ["density", "1 lb/ft3", "1 lbm/ft^3", "kg/m^3", 1e-14], ["density", "1 lb/yd3", "1 lbm/yd^3", "kg/m^3", 1e-14],
    ["density", "1 g/cm3", "1 g/cm^3", "kg/m^3", 1e-14],
    ["massPerArea", "1 lb/ft2", "1 lbm/ft^2", "kg/m^2", 1e-14], ["massPerArea", "1 oz/yd2", "1 oz/yd^2", "kg/m^2", 1e-12],
    ["massPerLength", "1 lb/ft", "1 lbm/ft", "kg/m", 1e-14],
    ["vapourPermeance", "60 ng/(s m2 Pa)", "60e-12 kg/(s m^2 Pa)", "kg/(s m^2 Pa)", 1e-14],
    ["speed", "1 mph", "1 mi/hour", "m/s", 1e-14], ["speed", "1 ft/min", "1 ft/minute", "m/s", 1e-14],
    ["speed", "1 km/h", "1 km/hour", "m/s", 1e-14],
    ["secondMoment", "1 in4", "1 in^4", "m^4", 1e-14], ["angle", "1 deg", "1 deg", "rad", 1e-14],
    ["duration", "1 wk", "1 week", "s", 1e-14], ["duration", "1 d", "1 day", "s", 1e-14],
    ["coverage", "1 m2/L", "1 m^2/L", "m^-1", 1e-14],
    ["coverage", "1 ft2/gal", "0.004329004329004329 ft^2/in^3", "m^-1", 1e-14],
    ["timePerArea", "1 h/ft2", "1 hour/ft^2", "s/m^2", 1e-14], ["timePerLength", "1 h/ft", "1 hour/ft", "s/m", 1e-14],
  ])("%s: %s against %s", (kind, ours, theirs, si, tolerance) => {
    const expected = mathUnit(theirs).toNumber(si);
    expect(Math.abs(inSi(kind, ours) / expected - 1)).toBeLessThanOrEqual(tolerance + 4 * Number.EPSILON);
  });
});

describe("one direction", () => {
  it("comes back from SI to the number that went in, for every unit of every kind", () => {
    for (const kind of KINDS) {
      for (const unit of UNITS[kind]) {
        for (const x of [0, 1, -3.25, 12_345.678]) expect(fromSi(unit, toSi(unit, x)), `${kind} ${unit.print} ${x}`).toBeCloseTo(x, 8);
        expect(unit.factor.definition).not.toBe("");
        expect(findUnit(kind, unit.print)).toBe(unit);
      }
    }
  });
});
