import { useEffect, useState } from "react";
import { flushSync } from "react-dom";

/** True while the window is being printed. Told before the pages are counted: what is put in later is not printed. */
export function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const tell = ({ type }: Event): void => flushSync(() => setPrinting(type === "beforeprint"));
    addEventListener("beforeprint", tell);
    addEventListener("afterprint", tell);
    return () => {
      removeEventListener("beforeprint", tell);
      removeEventListener("afterprint", tell);
    };
  }, []);
  return printing;
}
