import * as f from "./factors.ts";
import type { Factor } from "./factors.ts";
import type { Kind } from "./kinds.ts";

/** One unit of one kind: how it is printed, how else people type it, and how it becomes SI. */
export interface UnitRow {
  readonly print: string;
  readonly also: readonly string[];
  readonly factor: Factor;
  /** Added to the typed number before the factor; only temperatures have one. */
  readonly shift: number;
}

/** SI value of `x` units. */
export function toSi(unit: UnitRow, x: number): number {
  return ((x + unit.shift) * unit.factor.times) / unit.factor.over;
}

/** How many units the SI `value` is. */
export function fromSi(unit: UnitRow, value: number): number {
  return (value * unit.factor.over) / unit.factor.times - unit.shift;
}

function row(print: string, factor: Factor, also = "", shift = 0): UnitRow {
  return { print, factor, also: also === "" ? [] : also.split(" | "), shift };
}

/** A unit with the prefixes milli, none, kilo and mega: all four, so that mW and MW are never taken for each other. */
function prefixed(symbol: string, name: string): readonly UnitRow[] {
  return [
    row(symbol, f.one, `${name} | ${name}s`),
    row(`m${symbol}`, f.thousandth, `milli${name} | milli${name}s`),
    row(`k${symbol}`, f.thousand, `kilo${name} | kilo${name}s`),
    row(`M${symbol}`, f.million, `mega${name} | mega${name}s`),
  ];
}

/**
 * Every unit that is read and written. Alternatives are parted by " | ". A space inside a spelling may also be typed as
 * a dot, a hyphen or nothing; powers may be typed 2, ² or ^2; brackets are ignored (see unitKey.ts).
 */
export const UNITS: Readonly<Record<Kind, readonly UnitRow[]>> = {
  length: [
    row("mm", f.thousandth, "millimetre | millimetres | millimeter | millimeters"),
    row("cm", f.hundredth, "centimetre | centimetres | centimeter | centimeters"),
    row("m", f.one, "metre | metres | meter | meters"),
    row("km", f.thousand, "kilometre | kilometres | kilometer | kilometers"),
    row("µm", f.millionth, "um | micron | microns"),
    row("in", f.inch, '" | inch | inches | ins'),
    row("ft", f.foot, "' | foot | feet"),
    row("yd", f.yard, "yard | yards"),
    row("mi", f.mile, "mile | miles"),
    row("mil", f.mil, "mils | thou"),
  ],
  area: [
    row("m²", f.one, "sq m | square metre | square metres | square meter | square meters"),
    row("cm²", quadrat(f.hundredth), "sq cm"),
    row("mm²", quadrat(f.thousandth), "sq mm"),
    row("ft²", f.squareFoot, "sq ft | sf | square foot | square feet"),
    row("in²", f.squareInch, "sq in | square inch | square inches"),
    row("yd²", f.squareYard, "sq yd | square yard | square yards"),
  ],
  volume: [
    row("m³", f.one, "cu m | cubic metre | cubic metres | cubic meter | cubic meters"),
    row("L", f.thousandth, "litre | litres | liter | liters | dm3"),
    row("mL", f.millionth, "millilitre | millilitres | milliliter | milliliters | cm3 | cc"),
    row("mm³", cube(f.thousandth), "cu mm"),
    row("ft³", f.cubicFoot, "cu ft | cf | cubic foot | cubic feet"),
    row("in³", f.cubicInch, "cu in | cubic inch | cubic inches"),
    row("yd³", f.cubicYard, "cu yd | cubic yard | cubic yards"),
    row("US gal", f.usGallon, "gal | gallon | gallons | US gallon | US gallons"),
    row("US qt", f.usQuart, "qt | quart | quarts"),
    row("US fl oz", f.usFluidOunce, "fl oz"),
    row("bd ft", f.boardFoot, "bdft | bf | board foot | board feet"),
  ],
  secondMoment: [
    row("m⁴", f.one),
    row("cm⁴", quadrat(quadrat(f.hundredth))),
    row("mm⁴", quadrat(quadrat(f.thousandth))),
    row("in⁴", f.inchToFourth),
  ],
  angle: [row("°", f.degree, "deg | degree | degrees"), row("rad", f.one, "radian | radians"), row("mrad", f.thousandth)],
  mass: [
    row("kg", f.one, "kilogram | kilograms | kilo | kilos"),
    row("g", f.thousandth, "gram | grams"),
    row("t", f.thousand, "tonne | tonnes | metric ton | metric tons"),
    row("lb", f.pound, "lbs | lbm | pound | pounds"),
    row("oz", f.ounce, "ounce | ounces"),
    row("short ton", f.shortTon, "short tons | US ton | US tons"),
  ],
  massPerLength: [row("kg/m", f.one), row("g/m", f.thousandth), row("lb/ft", f.poundPerFoot, "lbs/ft | plf")],
  massPerArea: [
    row("kg/m²", f.one),
    row("g/m²", f.thousandth, "gsm"),
    row("lb/ft²", f.poundPerSquareFoot, "lbs/ft2 | lb/sq ft | lbs/sq ft | psf"),
    row("oz/yd²", f.ouncePerSquareYard, "oz/sq yd"),
    row("oz/ft²", f.ouncePerSquareFoot, "oz/sq ft"),
  ],
  density: [
    row("kg/m³", f.one),
    row("g/cm³", f.thousand, "g/cc | kg/L | g/mL"),
    row("lb/ft³", f.poundPerCubicFoot, "lbs/ft3 | lb/cu ft | lbs/cu ft | pcf"),
    row("lb/yd³", f.poundPerCubicYard, "lbs/yd3 | lb/cu yd"),
  ],
  force: [
    ...prefixed("N", "newton"),
    row("kgf", f.kilogramForce),
    row("lbf", f.poundForce),
    row("kip", f.kip, "kips | klbf"),
  ],
  lineLoad: [
    row("N/m", f.one),
    row("kN/m", f.thousand, "N/mm"),
    row("lbf/ft", f.poundForcePerFoot, "plf"),
    row("lbf/in", f.poundForcePerInch),
    row("kip/ft", f.kipPerFoot, "kips/ft | klf"),
  ],
  moment: [
    row("N·m", f.one),
    row("kN·m", f.thousand),
    row("lbf·ft", f.poundForceFoot, "ft lbf | ft lb | lb ft"),
    row("lbf·in", f.poundForceInch, "in lbf | in lb | lb in"),
    row("kip·ft", f.kipFoot, "kip ft | ft kip"),
    row("kip·in", f.kipInch, "in kip"),
  ],
  pressure: [
    ...prefixed("Pa", "pascal"),
    row("N/m²", f.one),
    row("kN/m²", f.thousand),
    row("N/mm²", f.million),
    row("GPa", f.milliard),
    row("hPa", f.hundredPascal),
    row("mbar", f.hundredPascal, "millibar | millibars"),
    row("bar", f.bar, "bars"),
    row("atm", f.atmosphere),
    row("psi", f.psi, "lbf/in2 | lb/in2"),
    row("psf", f.psf, "lbf/ft2 | lb/ft2 | lb/sq ft"),
    row("ksi", f.ksi),
    row("inH₂O", f.inchOfWater, "in H2O | in wg | in wc | in w g | in w c | inches wg | inches wc | inch wg | inwc"),
    row("mmH₂O", f.millimetreOfWater, "mm H2O | mm wg"),
    row("inHg", f.inchOfMercury, "in Hg"),
  ],
  duration: [
    row("s", f.one, "sec | secs | second | seconds"),
    row("min", f.minute, "mins | minute | minutes"),
    row("h", f.hour, "hr | hrs | hour | hours"),
    row("d", f.day, "day | days"),
    row("wk", f.week, "wks | week | weeks"),
  ],
  timePerLength: [
    row("h/m", f.hour, "hr/m | hours/m"),
    row("min/m", f.minute),
    row("s/m", f.one),
    row("h/ft", f.hourPerFoot, "hr/ft | hours/ft"),
    row("min/ft", f.minutePerFoot),
  ],
  timePerArea: [
    row("h/m²", f.hour, "hr/m2 | hours/m2"),
    row("min/m²", f.minute),
    row("s/m²", f.one),
    row("h/ft²", f.hourPerSquareFoot, "hr/ft2 | hours/ft2 | h/sq ft | hr/sq ft"),
    row("min/ft²", f.minutePerSquareFoot, "min/sq ft"),
  ],
  speed: [
    row("m/s", f.one),
    row("km/h", f.kilometrePerHour, "kph | kmh"),
    row("mph", f.milePerHour, "mi/h"),
    row("ft/min", f.footPerMinute, "fpm"),
    row("ft/s", f.foot, "fps"),
  ],
  acceleration: [row("m/s²", f.one), row("ft/s²", f.foot), row("g_n", f.standardGravity, "gn")],
  frequency: [row("Hz", f.one, "hertz"), row("kHz", f.thousand), row("rpm", f.perMinute, "rev/min")],
  airFlow: [
    row("m³/s", f.one),
    row("L/s", f.thousandth, "lps"),
    row("m³/h", f.cubicMetrePerHour, "m3/hr | cmh"),
    row("m³/min", f.perMinute),
    row("cfm", f.cubicFootPerMinute, "ft3/min | cu ft/min"),
  ],
  airLeakage: [
    row("m³/(s·m²)", f.one, "m/s"),
    row("L/(s·m²)", f.thousandth, "L/s/m2"),
    row("m³/(h·m²)", f.cubicMetrePerHour, "m3/h/m2"),
    row("cfm/ft²", f.cfmPerSquareFoot, "cfm/sq ft"),
  ],
  airChangeRate: [row("1/h", f.perHour, "ACH | ac/h | per hour | air changes per hour | h-1"), row("1/s", f.one)],
  temperature: [
    row("°C", f.one, "C | degC | deg C | degrees C | celsius | degrees celsius"),
    row("°F", f.fahrenheitDegree, "F | degF | deg F | degrees F | fahrenheit | degrees fahrenheit", -32),
    row("K", f.one, "kelvin", -273.15),
  ],
  temperatureDifference: [
    row("K", f.one, "kelvin | kelvins | °C | C° | C | degC | deg C"),
    row("F°", f.fahrenheitDegree, "°F | F | degF | deg F"),
  ],
  energy: [
    ...prefixed("J", "joule"),
    row("kWh", f.kilowattHour, "kW h"),
    row("Wh", f.hour, "W h"),
    row("BTU", f.btu, "BTUs"),
  ],
  power: [
    ...prefixed("W", "watt"),
    row("BTU/h", f.btuPerHour, "BTU/hr | BTUH"),
    row("MBH", f.thousandBtuPerHour, "kBTU/h | kBTU/hr"),
    row(
      "ton",
      f.tonOfCooling,
      "tons | TR | ton of cooling | tons of cooling | tons cooling | ton cooling" +
        " | ton of refrigeration | tons of refrigeration",
    ),
    row("hp", f.horsepower, "horsepower"),
  ],
  heatFlux: [row("W/m²", f.one), row("kW/m²", f.thousand), row("BTU/(h·ft²)", f.btuPerHourSquareFoot, "BTU/h/ft2 | BTU/hr/ft2 | BTU/hr ft2")],
  thermalResistance: [
    row("m²·K/W", f.one, "K m2/W | RSI | m2 °C/W | m2 C/W"),
    row(
      "ft²·h·°F/BTU",
      f.imperialR,
      "ft2 h F/BTU | h ft2 F/BTU | h ft2 °F/BTU | ft2 hr F/BTU | ft2 hr °F/BTU | hr ft2 F/BTU | hr ft2 °F/BTU" +
        " | ft2 F h/BTU | ft2 °F h/BTU | °F ft2 h/BTU | F ft2 h/BTU | sq ft hr F/BTU",
    ),
  ],
  thermalConductivity: conductivity(),
  linearTransmittance: conductivity(),
  thermalTransmittance: [
    row("W/(m²·K)", f.one, "W/m2/K | W/m2 °C | W/m2 C"),
    row("BTU/(h·ft²·°F)", f.imperialU, "BTU/h ft2 F | BTU/hr ft2 F | BTU/hr ft2 °F | BTU/h/ft2/F | BTU/h/ft2/°F | BTU/ft2 h F"),
  ],
  specificHeat: [
    row("J/(kg·K)", f.one, "J/kg/K | J/kg °C"),
    row("kJ/(kg·K)", f.thousand, "kJ/kg/K | kJ/kg °C"),
    row("BTU/(lb·°F)", f.btuPerPoundFahrenheit, "BTU/lb F | BTU/lb/F | BTU/lb/°F"),
  ],
  vapourPermeance: [
    row("ng/(s·m²·Pa)", f.nanogram, "ng/Pa s m2 | ng/m2 s Pa | ng/s Pa m2 | ng/Pa m2 s"),
    row("kg/(s·m²·Pa)", f.one, "kg/Pa s m2 | kg/m2 s Pa"),
    row("perm", f.usPerm, "perms | US perm | US perms"),
  ],
  vapourPermeability: [
    row("ng/(s·m·Pa)", f.nanogram, "ng/Pa s m | ng/m s Pa"),
    row("kg/(s·m·Pa)", f.one, "kg/Pa s m | kg/m s Pa"),
    row("perm·in", f.usPermInch, "perm inch | perm inches"),
  ],
  vapourResistanceFactor: [row("", f.one)],
  coverage: [
    row("m²/L", f.squareMetrePerLitre, "m2/litre | m2/liter | sq m/L"),
    row("m²/m³", f.one),
    row("ft²/US gal", f.squareFootPerGallon, "ft2/gal | sq ft/gal | ft2/gallon | sq ft/gallon | sf/gal"),
  ],
  voltage: prefixed("V", "volt"),
  current: prefixed("A", "ampere").concat(row("amp", f.one, "amps")),
  apparentPower: prefixed("VA", "volt-ampere"),
  illuminance: [row("lx", f.one, "lux"), row("fc", f.footcandle, "footcandle | footcandles")],
  ratio: [row("", f.one), row("%", f.hundredth, "percent | per cent | pct"), row("‰", f.thousandth, "per mille")],
};

function conductivity(): readonly UnitRow[] {
  return [
    row("W/(m·K)", f.one, "W/m/K | W/m °C | W/m C"),
    row("mW/(m·K)", f.thousandth, "mW/m/K"),
    row("BTU·in/(h·ft²·°F)", f.imperialKInch, "BTU in/h ft2 F | BTU in/hr ft2 F | BTU in/hr ft2 °F"),
    row("BTU/(h·ft·°F)", f.imperialK, "BTU/h ft F | BTU/hr ft F | BTU/hr ft °F"),
  ];
}

function quadrat(factor: Factor): Factor {
  return { times: factor.times ** 2, over: factor.over ** 2, definition: `(${factor.definition}) squared` };
}

function cube(factor: Factor): Factor {
  return { times: factor.times ** 3, over: factor.over ** 3, definition: `(${factor.definition}) cubed` };
}
