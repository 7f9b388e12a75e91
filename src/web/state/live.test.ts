import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { LiveEvent } from "../../job/api.ts";
import { followLive, hearLive, useLine } from "./live.ts";

const SAVED: LiveEvent = { kind: "saved", job: "J1", revision: 2, who: "Kim" };

class Source {
  static readonly CLOSED = 2;
  readyState = 0;
  onopen?: () => void;
  onerror?: () => void;
  onmessage?: (message: { readonly data: string }) => void;
  close(): void {
    this.readyState = Source.CLOSED;
  }
}

class Page extends EventTarget {
  hidden = false;
  show(shown: boolean): void {
    this.hidden = !shown;
    this.dispatchEvent(new Event("visibilitychange"));
  }
}

describe("what others save", () => {
  const sources: Source[] = [];
  const stops: (() => void)[] = [];
  const heard: LiveEvent[] = [];
  const open = (): readonly Source[] => sources.filter(({ readyState }) => readyState !== Source.CLOSED);
  let page = new Page();

  beforeEach(() => {
    page = new Page();
    for (const list of [sources, stops, heard]) list.length = 0;
    vi.stubGlobal("document", page);
    vi.stubGlobal("EventSource", class extends Source {
      constructor() {
        super();
        sources.push(this);
      }
    });
    stops.push(hearLive((event) => heard.push(event)));
  });
  afterEach(() => {
    for (const stop of stops) stop();
    vi.unstubAllGlobals();
  });

  it("reaches everyone who hears over one connection, until they stop", () => {
    const other: LiveEvent[] = [];
    const stop = hearLive((event) => other.push(event));
    stops.push(followLive());
    expect(sources).toHaveLength(1);
    sources[0]?.onopen?.();
    sources[0]?.onmessage?.({ data: JSON.stringify(SAVED) });
    stop();
    sources[0]?.onmessage?.({ data: JSON.stringify(SAVED) });
    expect([heard, other]).toEqual([[SAVED, SAVED], [SAVED]]);
  });

  it("is asked for again after a connection was lost", () => {
    stops.push(followLive());
    sources[0]?.onopen?.();
    sources[0]?.onopen?.();
    expect(heard).toEqual([{ kind: "refresh" }]);
  });

  it("is not followed while the window is hidden, and asked for again when it is shown", () => {
    stops.push(followLive());
    sources[0]?.onopen?.();
    page.show(false);
    expect(open()).toEqual([]);
    page.show(true);
    page.show(true);
    expect(open()).toHaveLength(1);
    expect(heard).toEqual([]);
    open()[0]?.onopen?.();
    expect(heard).toEqual([{ kind: "refresh" }]);
  });

  it("is followed only once shown where the window was opened hidden, and not after the end", () => {
    page.hidden = true;
    const stop = followLive();
    expect(sources).toEqual([]);
    page.show(true);
    open()[0]?.onopen?.();
    expect(heard).toEqual([{ kind: "refresh" }]);
    stop();
    page.show(true);
    expect(open()).toEqual([]);
  });

  it("is known to be cut off, from the break to the next connection", () => {
    stops.push(followLive());
    sources[0]?.onopen?.();
    expect(useLine.getState().isDown).toBe(false);
    sources[0]?.onerror?.();
    expect(useLine.getState().isDown).toBe(true);
    sources[0]?.onopen?.();
    expect(useLine.getState().isDown).toBe(false);
    expect(heard).toEqual([{ kind: "refresh" }]);
  });

  it("is asked for once more where the server refused the connection", () => {
    vi.useFakeTimers();
    stops.push(followLive(), () => vi.useRealTimers());
    sources[0]?.close();
    sources[0]?.onerror?.();
    vi.runAllTimers();
    expect(open()).toHaveLength(1);
    open()[0]?.onopen?.();
    expect([heard, useLine.getState().isDown]).toEqual([[{ kind: "refresh" }], false]);
  });
});
