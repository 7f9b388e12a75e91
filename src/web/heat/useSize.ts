import { useEffect, useState, type RefObject } from "react";

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The room that an element has, followed as it changes; nothing before it is laid out. */
export function useSize(element: RefObject<HTMLElement | null>): Size {
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });
  useEffect(() => {
    const { current } = element;
    if (current === null) return undefined;
    const watch = new ResizeObserver(() => setSize({ width: current.clientWidth, height: current.clientHeight }));
    watch.observe(current);
    return () => watch.disconnect();
  }, [element]);
  return size;
}
