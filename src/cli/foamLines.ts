import type { FoamHelp, FoamNeed, Variant } from "../river/foamHelp.ts";
import { formatLength, formatQuantity, type System } from "../units/format.ts";
import { formatMoney } from "../units/money.ts";

/** The help for one build-up as lines of text: what is needed, the curve, other framing. */
export function foamLines({ buildUp, faces, foam, present, least, greatest, needs, curve, variants, currency, leavesOut }: FoamHelp, system: System): readonly string[] {
  const length = (value: number): string => formatLength(value, system);
  const row = (head: string, variant: Variant): readonly string[] => [cells([head, ...numbersOf(variant, system, currency)]), ...objections(variant)];
  const width = (variant: Variant): string => (Math.abs(variant.foam - present) < SAME ? `${length(variant.foam)} (now)` : length(variant.foam));
  return [
    `${buildUp}: ${foam}, ${length(present)} on ${faces.join(", ")}; from ${length(least)} to ${length(greatest)} fits`,
    "",
    "least foam that keeps the faces' own sections",
    ...needs.map((need) => `  ${ASKS[need.criterion].padEnd(58)}${answerOf(need, greatest, system)}`),
    "",
    cells(headings(system)),
    ...curve.flatMap((variant) => row(width(variant), variant)),
    ...coldestLines(curve, present, system),
    "",
    `with ${length(present)} of foam`,
    ...variants.flatMap((variant) => [`  ${variant.name}`, ...row("", variant)]),
    "",
    `Not looked at: ${leavesOut}.`,
    "Licensed people and local authorities decide.",
    "",
  ];
}

/** Thicknesses that differ by less are the same, m. */
const SAME = 5e-4;

const ASKS: Readonly<Record<FoamNeed["criterion"], string>> = {
  "dew point in a month": "above the dew point in every month",
  "mould in a month": "below 80 % humidity at the surface in every month",
  "dew point at the design hour": "above the dew point at the winter design hour",
  "own vapour barrier": "its own vapour barrier",
};

/** Rounded up to what a tape shows, so that what is printed passes. */
function answerOf({ least }: FoamNeed, greatest: number, system: System): string {
  if (least.kind === "not asked") return "not asked: no heated room states its humidity, or the site no months";
  if (least.kind === "none") return `no thickness up to ${formatLength(greatest, system)}`;
  const again = least.failsAgain === undefined ? "" : `; fails again at ${formatLength(least.failsAgain, system)}`;
  return `${least.kind === "any" ? "any" : `from ${roundedUp(least.thickness, system)}`}${again}`;
}

function roundedUp(thickness: number, system: System): string {
  const step = system === "metric" ? 1e-3 : 0.0254 / 16;
  return formatLength(Math.ceil(thickness / step - 1e-6) * step, system);
}

/** Where it is coldest now, and what could not be looked at. */
function coldestLines(curve: readonly Variant[], present: number, system: System): readonly string[] {
  const now = curve.find(({ foam }) => Math.abs(foam - present) < SAME)?.numbers;
  const leftOut = new Set(curve.flatMap(({ numbers }) => numbers?.leftOut ?? []));
  return [
    ...(now?.coldest === undefined ? [] : [`  coldest with ${formatLength(present, system)}: ${now.coldest.section}, ${now.coldest.room}`]),
    ...(leftOut.size === 0 ? [] : [`  sections left out, because they could not be cut or solved: ${[...leftOut].join("; ")}`]),
  ];
}

const WIDTHS = [16, 8, 26, 11, 14, 18, 0];

function headings(system: System): readonly string[] {
  return ["foam", "factor", `U, ${transmittance(1, system)[1]}`, "loss", "heat a year", "price with tax", "fails"];
}

function cells(texts: readonly string[]): string {
  return `  ${texts.map((text, at) => text.padEnd(WIDTHS[at] as number)).join("")}`.trimEnd();
}

function numbersOf({ numbers }: Variant, system: System, currency: FoamHelp["currency"]): readonly string[] {
  if (numbers === undefined) return ["cannot be built"];
  const { coldest, faces, loss, yearlyHeat, priceCents, criteria } = numbers;
  const failed = criteria.filter(({ holds }) => !holds).map(({ criterion }) => criterion);
  return [
    coldest === undefined ? "-" : coldest.factor.toFixed(3),
    range(faces.map(({ transmittance }) => transmittance), system),
    loss === undefined ? "-" : `${loss.toFixed(1)} W/K`,
    yearlyHeat === undefined ? "-" : formatQuantity("energy", yearlyHeat, system, { unit: "kWh", digits: 4 }),
    formatMoney(priceCents, currency),
    failed.length === 0 ? "" : failed.join(", "),
  ];
}

/** From the lowest to the highest, without their unit. */
function range(values: readonly number[], system: System): string {
  if (values.length === 0) return "-";
  const [low, high] = [Math.min(...values), Math.max(...values)].map((value) => transmittance(value, system)[0]);
  return low === high ? `${low}` : `${low} to ${high}`;
}

function transmittance(value: number, system: System): readonly [number: string, unit: string] {
  const [number = "", unit = ""] = formatQuantity("thermalTransmittance", value, system, { digits: 3 }).split(" ");
  return [number, unit];
}

/** The first ones, and how many more there are. */
const SHOWN = 2;

function objections({ objections: all }: Variant): readonly string[] {
  const more = all.length > SHOWN ? [`    and ${all.length - SHOWN} more`] : [];
  return [...all.slice(0, SHOWN).map(({ verdict, says }) => `    ${verdict}: ${says}`), ...more];
}
