import type { Finding } from "../src/checks/checks.ts";
import type { River } from "../src/river/river.ts";

/** The comparison of a check that has the least room left, as a share of its limit where that is not zero. */
interface Tightest {
  readonly finding: string;
  readonly margin: number;
  readonly unit: string;
}

/** What a demo job is held to: `examples/<name>.headline.json`. */
export interface HeadlineNumbers {
  readonly parts: number;
  readonly verdicts: Readonly<Record<Finding["verdict"], number>>;
  readonly massKg: number;
  readonly foamM3: number;
  readonly labourHours: number;
  readonly priceCents: number;
  readonly currency: string;
  readonly missingPrices: number;
  readonly deliveryDay: string;
  readonly tightest: Readonly<Record<string, Tightest>>;
}

/** The headline numbers of a river. */
export function headlineNumbers({ build, findings, quote, headline }: River): HeadlineNumbers {
  const { stops, watches, notes, passes, mass, priceCents, currency, missingPrices, deliveryDay } = headline;
  return {
    parts: build.parts.length,
    verdicts: { stop: stops, watch: watches, note: notes, pass: passes },
    massKg: Number(mass.toFixed(3)),
    foamM3: Number(build.parts.reduce((sum, { shape }) => sum + (shape.kind === "fill" ? shape.volume : 0), 0).toFixed(6)),
    labourHours: Number(quote.labourHours.value.toFixed(4)),
    priceCents,
    currency,
    missingPrices,
    deliveryDay,
    tightest: tightestOf(findings),
  };
}

function tightestOf(findings: readonly Finding[]): Readonly<Record<string, Tightest>> {
  const tightest = new Map<string, { readonly room: number; readonly said: Tightest }>();
  for (const { id, check, comparison } of findings) {
    if (comparison === undefined) continue;
    const { margin, right } = comparison;
    const room = right.value === 0 ? margin : margin / Math.abs(right.value);
    const known = tightest.get(check);
    if (known !== undefined && known.room <= room) continue;
    tightest.set(check, { room, said: { finding: id, margin: Number(margin.toPrecision(6)), unit: right.unit } });
  }
  return Object.fromEntries([...tightest].map(([check, { said }]) => [check, said]));
}
