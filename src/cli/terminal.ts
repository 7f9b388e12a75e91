/** Where a command writes: what was asked for, and what went wrong. */
export interface Terminal {
  readonly out: (line: string) => void;
  readonly error: (line: string) => void;
}
