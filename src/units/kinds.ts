/**
 * Every kind of quantity that the trade writes, with the unit in which the rest of the code holds it.
 * Temperatures are held in °C, differences of temperature in K; everything else in SI base units or products of them.
 * Money is apart: see money.ts.
 */
export const SI_UNIT = {
  length: "m",
  area: "m2",
  volume: "m3",
  secondMoment: "m4",
  angle: "rad",
  mass: "kg",
  massPerLength: "kg/m",
  massPerArea: "kg/m2",
  density: "kg/m3",
  force: "N",
  lineLoad: "N/m",
  moment: "N m",
  pressure: "Pa",
  duration: "s",
  timePerLength: "s/m",
  timePerArea: "s/m2",
  speed: "m/s",
  acceleration: "m/s2",
  frequency: "Hz",
  airFlow: "m3/s",
  airLeakage: "m3/(s m2)",
  airChangeRate: "1/s",
  temperature: "degC",
  temperatureDifference: "K",
  energy: "J",
  power: "W",
  heatFlux: "W/m2",
  thermalResistance: "m2K/W",
  thermalConductivity: "W/(m K)",
  linearTransmittance: "W/(m K)",
  thermalTransmittance: "W/(m2 K)",
  specificHeat: "J/(kg K)",
  vapourPermeance: "kg/(s m2 Pa)",
  vapourPermeability: "kg/(s m Pa)",
  vapourResistanceFactor: "1",
  coverage: "m2/m3",
  voltage: "V",
  current: "A",
  apparentPower: "VA",
  illuminance: "lx",
  ratio: "1",
} as const;

/** A kind of quantity. */
export type Kind = keyof typeof SI_UNIT;

/** The unit symbol that workings use for a kind, in plain letters. */
export type SiUnit = (typeof SI_UNIT)[Kind];

/** All kinds, in the order of the table above. */
export const KINDS: readonly Kind[] = Object.keys(SI_UNIT).filter((key): key is Kind => key in SI_UNIT);

/** The kind in plain words: `thermalResistance` gives "thermal resistance". */
export function kindInWords(kind: Kind): string {
  return kind.replace(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`);
}
