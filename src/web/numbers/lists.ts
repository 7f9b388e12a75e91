import type { Part, ScreenQuoteLine, ScreenWorkItem } from "../../river/screen.ts";
import { formatQuantity, type System } from "../../units/format.ts";
import type { Kind } from "../../units/kinds.ts";

/** Mass by what parts do, heaviest first. Parts that come off before delivery are left out, as they are of the mass. */
export function massByRole(parts: readonly Part[]): readonly { readonly role: string; readonly count: number; readonly mass: number }[] {
  const roles = new Map<string, { count: number; mass: number }>();
  for (const { role, mass, temporary } of parts) {
    if (temporary) continue;
    const sum = roles.get(role) ?? { count: 0, mass: 0 };
    roles.set(role, { count: sum.count + 1, mass: sum.mass + mass });
  }
  return [...roles].map(([role, sum]) => ({ role, ...sum })).toSorted((a, b) => b.mass - a.mass);
}

/** The heaviest parts that stay, heaviest first. */
export function heaviest(parts: readonly Part[], most: number): readonly Part[] {
  return parts.filter(({ temporary }) => !temporary).toSorted((a, b) => b.mass - a.mass).slice(0, most);
}

export interface QuoteGroup {
  readonly group: string;
  readonly amountCents: number;
  readonly lines: readonly ScreenQuoteLine[];
}

/** The lines of a quote in their groups, with what each group comes to. */
export function quoteGroups(lines: readonly ScreenQuoteLine[]): readonly QuoteGroup[] {
  return [...new Set(lines.map(({ group }) => group))].map((group) => {
    const ofGroup = lines.filter((line) => line.group === group);
    return { group, lines: ofGroup, amountCents: ofGroup.reduce((sum, { amountCents }) => sum + amountCents, 0) };
  });
}

/** Units that the price book sells by, in SI and in feet; everything else is counted. */
const MEASURED: Readonly<Record<string, { readonly kind: Kind; readonly si: number; readonly of: string; readonly units: Readonly<Record<System, string>> }>> = {
  "metre of whole bars": { kind: "length", si: 1, of: "of whole bars", units: { metric: "m", imperial: "ft" } },
  "m2 of whole sheets": { kind: "area", si: 1, of: "of whole sheets", units: { metric: "m²", imperial: "ft²" } },
  litre: { kind: "volume", si: 0.001, of: "", units: { metric: "L", imperial: "gal" } },
};

/** How much of a quote line is bought, in the units shown: "21.95 m of whole bars", "2 packs". */
export function amountWords(count: number, per: string, system: System): string {
  const measured = MEASURED[per];
  if (measured === undefined) return `${Number(count.toPrecision(4))} ${count === 1 ? per : `${per}s`}`;
  const { kind, si, of, units } = measured;
  return `${formatQuantity(kind, count * si, system, { unit: units[system] })} ${of}`.trim();
}

/** Work in the order in which it starts. */
export function byStart(items: readonly ScreenWorkItem[]): readonly ScreenWorkItem[] {
  const key = ({ start, finish }: ScreenWorkItem): string => [start, finish].map(({ day, minute }) => `${day} ${String(minute).padStart(4, "0")}`).join(" ");
  return items.toSorted((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0));
}

/** "2027-02-01 07:00". */
export function momentText({ day, minute }: ScreenWorkItem["start"]): string {
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${day} ${two(Math.floor(minute / 60))}:${two(Math.round(minute % 60) % 60)}`;
}
