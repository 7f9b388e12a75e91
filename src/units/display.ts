import type { Kind } from "./kinds.ts";

/** The system of units that papers and screens are written in. */
export type System = "metric" | "imperial";

/** The units each kind is written in, smallest first; the largest that the value reaches one of is taken. */
export const DISPLAY: Readonly<Record<Kind, Readonly<Record<System, readonly string[]>>>> = {
  length: { metric: ["mm"], imperial: ["in"] },
  area: { metric: ["m²"], imperial: ["ft²"] },
  volume: { metric: ["m³"], imperial: ["ft³"] },
  secondMoment: { metric: ["cm⁴"], imperial: ["in⁴"] },
  angle: both("°"),
  mass: { metric: ["kg"], imperial: ["lb"] },
  massPerLength: { metric: ["kg/m"], imperial: ["lb/ft"] },
  massPerArea: { metric: ["kg/m²"], imperial: ["lb/ft²"] },
  density: { metric: ["kg/m³"], imperial: ["lb/ft³"] },
  force: { metric: ["N", "kN"], imperial: ["lbf"] },
  lineLoad: { metric: ["N/m", "kN/m"], imperial: ["lbf/ft"] },
  moment: { metric: ["N·m", "kN·m"], imperial: ["lbf·ft"] },
  pressure: { metric: ["Pa", "kPa", "MPa"], imperial: ["psf", "ksi"] },
  duration: both("s", "min", "h"),
  timePerLength: { metric: ["h/m"], imperial: ["h/ft"] },
  timePerArea: { metric: ["h/m²"], imperial: ["h/ft²"] },
  speed: { metric: ["m/s"], imperial: ["ft/min"] },
  acceleration: { metric: ["m/s²"], imperial: ["ft/s²"] },
  frequency: both("Hz"),
  airFlow: { metric: ["L/s"], imperial: ["cfm"] },
  airLeakage: { metric: ["L/(s·m²)"], imperial: ["cfm/ft²"] },
  airChangeRate: both("1/h"),
  temperature: { metric: ["°C"], imperial: ["°F"] },
  temperatureDifference: { metric: ["K"], imperial: ["F°"] },
  energy: { metric: ["kWh"], imperial: ["BTU"] },
  power: { metric: ["W", "kW"], imperial: ["BTU/h"] },
  heatFlux: { metric: ["W/m²"], imperial: ["BTU/(h·ft²)"] },
  thermalResistance: { metric: ["m²·K/W"], imperial: ["ft²·h·°F/BTU"] },
  thermalConductivity: { metric: ["W/(m·K)"], imperial: ["BTU·in/(h·ft²·°F)"] },
  linearTransmittance: { metric: ["W/(m·K)"], imperial: ["BTU/(h·ft·°F)"] },
  thermalTransmittance: { metric: ["W/(m²·K)"], imperial: ["BTU/(h·ft²·°F)"] },
  specificHeat: { metric: ["J/(kg·K)"], imperial: ["BTU/(lb·°F)"] },
  vapourPermeance: { metric: ["ng/(s·m²·Pa)"], imperial: ["perm"] },
  vapourPermeability: { metric: ["ng/(s·m·Pa)"], imperial: ["perm·in"] },
  vapourResistanceFactor: both(""),
  coverage: { metric: ["m²/L"], imperial: ["ft²/US gal"] },
  voltage: both("V"),
  current: both("A"),
  apparentPower: both("VA", "kVA"),
  illuminance: { metric: ["lx"], imperial: ["fc"] },
  ratio: both("%"),
};

function both(...units: string[]): Record<System, readonly string[]> {
  return { metric: units, imperial: units };
}
