import type { Paper } from "./paper.ts";
import { cutList } from "./papers/cutList.ts";
import { drawings } from "./papers/drawings.ts";
import { findings } from "./papers/findings.ts";
import { heat } from "./papers/heat.ts";
import { plan } from "./papers/plan.ts";
import { price } from "./papers/price.ts";
import { quantities } from "./papers/quantities.ts";
import { record } from "./papers/record.ts";
import { summary } from "./papers/summary.ts";
import { workings } from "./papers/workings.ts";

/** Every paper of a pack, in the order in which they are bound. */
export const PAPERS: readonly Paper[] = [summary, findings, heat, quantities, cutList, price, plan, workings, drawings, record];
