import type { ReactElement } from "react";
import type { Verdict } from "../../river/screen.ts";

/**
 * The shapes of verdicts, in a square of 16: told apart without colour. Stop is a full block with a bar across; watch is
 * a block half filled; pass is an open corner with a tick's foot; note is a ring.
 */
const VERDICT_SHAPES: Readonly<Record<Verdict, readonly { readonly d: string; readonly filled: boolean }[]>> = {
  stop: [{ d: "M4 1h8l3 3v8l-3 3H4l-3-3V4zM3.5 6.75v2.5h9v-2.5z", filled: true }],
  watch: [
    { d: "M8 1.5 14.5 8 8 14.5 1.5 8z", filled: false },
    { d: "M1.5 8h13L8 14.5z", filled: true },
  ],
  pass: [{ d: "M2 8.5 6.5 13 14 3.5", filled: false }],
  note: [{ d: "M8 2.5a5.5 5.5 0 1 1 0 11a5.5 5.5 0 1 1 0-11zM8 7v4M8 4.8v.6", filled: false }],
};

/** A verdict's shape, sized as text; the word has to stand beside it or in the name of what holds it. */
export function VerdictMark({ verdict }: { readonly verdict: Verdict }): ReactElement {
  return (
    <svg className={`verdict-mark is-${verdict}`} viewBox="0 0 16 16" width="1.1em" height="1.1em" aria-hidden="true">
      <VerdictShape verdict={verdict} />
    </svg>
  );
}

/** The same for use inside another drawing, 16 by 16 from its own origin. */
export function VerdictShape({ verdict }: { readonly verdict: Verdict }): ReactElement {
  return (
    <>
      {VERDICT_SHAPES[verdict].map(({ d, filled }) => (
        <path
          key={d}
          d={d}
          fill={filled ? "currentColor" : "none"}
          fillRule="evenodd"
          stroke={filled ? "none" : "currentColor"}
          strokeWidth="1.8"
          strokeLinecap="round"
          strokeLinejoin="round"
        />
      ))}
    </>
  );
}
