import { create } from "zustand";
import type { System } from "../../units/format.ts";

export const LAYERS = [
  "skin", "frame", "foam", "batts", "studs", "board1", "board2", "board3", "board4", "trim", "openings", "items", "clearSpaces", "dimensions",
] as const;
export type LayerId = (typeof LAYERS)[number];

export const LAYER_NAMES: Readonly<Record<LayerId, string>> = {
  skin: "Skin",
  frame: "Frame",
  foam: "Foam",
  batts: "Batts",
  studs: "Studs",
  board1: "First boards",
  board2: "Second boards",
  board3: "Third boards",
  board4: "Fourth boards",
  trim: "Trim",
  openings: "Openings",
  items: "Items",
  clearSpaces: "Clear spaces",
  dimensions: "Dimensions",
};

export type Theme = "light" | "dark" | "device";

interface Kept {
  readonly system: System;
  readonly theme: Theme;
  /** Who saves from this device, as typed; "" until told. */
  readonly who: string;
  readonly layers: Readonly<Record<LayerId, boolean>>;
}

export interface Settings extends Kept {
  readonly setSystem: (system: System) => void;
  readonly setTheme: (theme: Theme) => void;
  readonly setWho: (who: string) => void;
  readonly showLayer: (layer: LayerId, shown: boolean) => void;
}

const KEY = "cornerpost-settings";

const FIRST: Kept = {
  system: "metric",
  theme: "device",
  who: "",
  layers: {
    skin: true,
    frame: true,
    foam: false,
    batts: false,
    studs: true,
    board1: false,
    board2: false,
    board3: false,
    board4: false,
    trim: false,
    openings: true,
    items: true,
    clearSpaces: true,
    dimensions: true,
  },
};

/** How the screen shows things to this user on this device; no part of any job. */
export const useSettings = create<Settings>()((set, get) => {
  const put = (changed: Partial<Kept>): void => {
    set(changed);
    const { system, theme, who, layers } = get();
    keep({ system, theme, who, layers });
  };
  return {
    ...kept(),
    setSystem: (system) => put({ system }),
    setTheme: (theme) => put({ theme }),
    setWho: (who) => put({ who }),
    showLayer: (layer, shown) => put({ layers: { ...get().layers, [layer]: shown } }),
  };
});

/** What was kept on this device; the first settings where nothing was, or where it cannot be read. */
function kept(): Kept {
  try {
    const text = localStorage.getItem(KEY);
    return text === null ? FIRST : readKept(JSON.parse(text));
  } catch {
    return FIRST;
  }
}

/** Keeps the settings; a device that keeps nothing goes on without. */
function keep(settings: Kept): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(settings));
  } catch {
    // A private window or a full disk: the settings last as long as the window.
  }
}

/** Takes what is well formed of what was kept, and the first settings for the rest. */
export function readKept(value: unknown): Kept {
  if (typeof value !== "object" || value === null) return FIRST;
  const found = value as Readonly<Record<string, unknown>>;
  const { system, theme, who, layers } = found;
  const shown = typeof layers === "object" && layers !== null ? (layers as Readonly<Record<string, unknown>>) : {};
  const layerShown = (layer: LayerId): boolean => {
    const was = shown[layer];
    return typeof was === "boolean" ? was : FIRST.layers[layer];
  };
  return {
    system: system === "imperial" || system === "metric" ? system : FIRST.system,
    theme: theme === "light" || theme === "dark" || theme === "device" ? theme : FIRST.theme,
    who: typeof who === "string" ? who.slice(0, 80) : FIRST.who,
    layers: Object.fromEntries(LAYERS.map((layer) => [layer, layerShown(layer)])) as Record<LayerId, boolean>,
  };
}
