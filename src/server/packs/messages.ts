/** What a worker makes a pack from. */
export interface PackOrder {
  readonly jobText: string;
  readonly bookText: string;
}

/** What a worker tells of the pack that it makes. */
export type FromWorker =
  | { readonly kind: "progress"; readonly step: string; readonly share: number }
  | { readonly kind: "done"; readonly zip: Uint8Array<ArrayBuffer> }
  | { readonly kind: "failed"; readonly why: string };
