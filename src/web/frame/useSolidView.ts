import { lazy, useCallback, useEffect, useState, type ComponentType, type LazyExoticComponent } from "react";
import type { Solid } from "../solid/Solid.tsx";
// The style comes with the page: one fetch fewer that can fail.
import "../solid/Solid.css";

type SolidView = LazyExoticComponent<ComponentType<Parameters<typeof Solid>[0]>>;

/**
 * The view in three dimensions, which is as large as all the rest: fetched when the window has nothing else to do, so that
 * it is there when the server no longer is. The second value fetches it anew where that failed.
 */
export function useSolidView(): readonly [SolidView, () => void] {
  const [view, setView] = useState(lazyView);
  useEffect(() => {
    // What cannot be fetched now is fetched again, and missed aloud, when it is looked at.
    const ahead = (): void => void fetchView().catch(() => undefined);
    if (!("requestIdleCallback" in globalThis)) {
      const timer = setTimeout(ahead, LATER_MS);
      return () => clearTimeout(timer);
    }
    const idle = requestIdleCallback(ahead);
    return () => cancelIdleCallback(idle);
  }, []);
  return [view, useCallback(() => setView(lazyView), [])];
}

/** For browsers that do not tell when they are idle. */
const LATER_MS = 2000;

function lazyView(): SolidView {
  return lazy(async () => ({ default: (await fetchView()).Solid }));
}

async function fetchView(): Promise<{ readonly Solid: typeof Solid }> {
  try {
    return await import("../solid/Solid.tsx");
  } catch (error) {
    // A browser keeps in mind that a module could not be fetched, and names it: under another address it asks once more.
    const address = /https?:\S+\.js/.exec(String(error))?.[0];
    if (address === undefined) throw error;
    const again: unknown = await import(/* @vite-ignore */ `${address}?again=${performance.now()}`);
    return again as { readonly Solid: typeof Solid };
  }
}
