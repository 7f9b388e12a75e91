import { describe, expect, it } from "vitest";
import { readKept, useSettings } from "./settings.ts";

describe("settings kept on the device", () => {
  it("are taken where they are well formed, and as at first for the rest", () => {
    const kept = readKept({ system: "imperial", theme: "pink", who: 7, layers: { foam: true, skin: "yes", other: false } });
    expect(kept.system).toBe("imperial");
    expect(kept.theme).toBe("device");
    expect(kept.who).toBe("");
    expect(kept.layers.foam).toBe(true);
    expect(kept.layers.skin).toBe(true);
    expect(Object.keys(kept.layers)).not.toContain("other");
  });

  it("start anew from what is no settings", () => {
    for (const value of [undefined, null, 3, "text", []]) expect(readKept(value)).toEqual(readKept({}));
  });

  it("change one at a time, on a device that keeps nothing too", () => {
    const before = useSettings.getState().layers;
    useSettings.getState().showLayer("foam", true);
    expect(useSettings.getState().layers).toEqual({ ...before, foam: true });
    useSettings.getState().showLayer("foam", before.foam);
  });
});
