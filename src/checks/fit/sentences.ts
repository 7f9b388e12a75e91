import { itemSentences } from "./itemSentences.ts";
import { liningSentences } from "./liningSentences.ts";
import { openingSentences } from "./openingSentences.ts";

/** Every code of this check, its facts, and the sentence made from them. Facts hold metres. */
export const SENTENCES = { ...openingSentences, ...itemSentences, ...liningSentences } as const;
