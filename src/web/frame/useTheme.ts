import { useEffect } from "react";
import { useSettings } from "../state/settings.ts";
import { useMedia } from "./useMedia.ts";

/** Sets light or dark on the page: as chosen, or as the device has it. */
export function useTheme(): void {
  const theme = useSettings((settings) => settings.theme);
  const deviceIsDark = useMedia("(prefers-color-scheme: dark)");
  const shown = theme === "device" ? (deviceIsDark ? "dark" : "light") : theme;
  useEffect(() => {
    document.documentElement.dataset["theme"] = shown;
  }, [shown]);
}
