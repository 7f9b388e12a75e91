import type { Kind } from "./kinds.ts";

/** A form that would do, for each kind: shown with every refusal. */
export const EXAMPLES: Readonly<Record<Kind, string>> = {
  length: `7' 8-5/8"`,
  area: "12.5 m2",
  volume: "0.35 m3",
  secondMoment: "7.8 in4",
  angle: "45 deg",
  mass: "120 kg",
  massPerLength: "6.87 lb/ft",
  massPerArea: "10.8 kg/m2",
  density: "32 kg/m3",
  force: "4.5 kN",
  lineLoad: "1.2 kN/m",
  moment: "25 kN m",
  pressure: "50 Pa",
  duration: "4 h",
  timePerLength: "0.2 h/m",
  timePerArea: "0.5 h/m2",
  speed: "40 m/s",
  acceleration: "9.81 m/s2",
  frequency: "60 Hz",
  airFlow: "250 cfm",
  airLeakage: "0.02 L/(s m2)",
  airChangeRate: "0.5 ACH",
  temperature: "-34 °C",
  temperatureDifference: "20 K",
  energy: "12 kWh",
  power: "3.2 kW",
  heatFlux: "800 W/m2",
  thermalResistance: "R-21",
  thermalConductivity: "0.024 W/(m K)",
  linearTransmittance: "0.1 W/(m K)",
  thermalTransmittance: "0.35 W/(m2 K)",
  specificHeat: "1400 J/(kg K)",
  vapourPermeance: "60 ng/(s m2 Pa)",
  vapourPermeability: "2 ng/(s m Pa)",
  vapourResistanceFactor: "60",
  coverage: "8 m2/L",
  voltage: "480 V",
  current: "60 A",
  apparentPower: "75 kVA",
  illuminance: "500 lx",
  ratio: "15 %",
};

const GAUGE = "a gauge number means another thickness in every material; write the thickness";
const TON = "a ton may be a short ton, a long ton or a metric tonne; write t, lb or short ton";
const POUND = "lb is a mass; write lbf for a force";
const MBTU = "MBTU may be a thousand or a million BTU; write MBH or kW";
const US_GALLON = "only the US gallon is read; write L";
const MONTH = "months differ in length; write days or weeks";

/** Why a unit that people do type is refused: it means more than one thing, or another one. Undefined where it is no trap. */
export function trapOf(kind: Kind, unit: string): string | undefined {
  const traps = TRAPS[kind];
  return traps !== undefined && Object.hasOwn(traps, unit) ? traps[unit] : undefined;
}

/** Keys as unitKey gives them, in small letters. */
const TRAPS: Readonly<Partial<Record<Kind, Readonly<Record<string, string>>>>> = {
  length: { ga: GAUGE, gauge: GAUGE, gage: GAUGE },
  mass: {
    ton: TON,
    tons: TON,
  },
  force: { lb: POUND, lbs: POUND, kg: "kg is a mass; write kgf or kN for a force" },
  power: {
    btu: "BTU is an energy; write BTU/h",
    "mbtu/h": MBTU,
    "mbtu/hr": MBTU,
  },
  volume: { "imp gal": US_GALLON, "imperial gal": US_GALLON, oz: "oz is a mass; write fl oz" },
  duration: { m: "m is a metre; write min for minutes", month: MONTH, months: MONTH },
};
