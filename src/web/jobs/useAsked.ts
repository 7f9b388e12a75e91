import { useCallback, useEffect, useState } from "react";
import { problemWords } from "./tell.ts";

/** An answer that is asked for, and again on demand. */
export type Asked<T> =
  | { readonly kind: "waiting" }
  | { readonly kind: "answer"; readonly answer: T }
  | { readonly kind: "problem"; readonly says: string };

/** Asks when shown and whenever `ask` changes; `again` asks anew and keeps the old answer meanwhile. `ask` has to be stable. */
export function useAsked<T>(ask: () => Promise<T>): readonly [Asked<T>, () => void] {
  const [asked, setAsked] = useState<Asked<T>>({ kind: "waiting" });
  const [round, setRound] = useState(0);
  useEffect(() => {
    let wanted = true;
    ask().then(
      (answer) => {
        if (wanted) setAsked({ kind: "answer", answer });
      },
      (error: unknown) => {
        if (wanted) setAsked({ kind: "problem", says: problemWords(error) });
      },
    );
    return () => {
      wanted = false;
    };
  }, [ask, round]);
  const again = useCallback(() => setRound((one) => one + 1), []);
  return [asked, again];
}
