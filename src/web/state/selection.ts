/** What the user has picked; the id is that of the job file, of a part, or of a finding. */
export interface Selection {
  readonly kind: "opening" | "item" | "partition" | "face" | "build-up" | "part" | "finding";
  readonly id: string;
}
