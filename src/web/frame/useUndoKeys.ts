import { useEffect } from "react";
import { useSession } from "../state/session.ts";

/** Undo and redo by key everywhere but in a field, whose own typing they take back, and behind a dialog, where nobody sees what they do. */
export function useUndoKeys(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      const command = event.ctrlKey || event.metaKey;
      const typing = event.target instanceof Element && event.target.closest("input, textarea, select, [contenteditable]") !== null;
      const key = event.key.toLowerCase();
      if (!command || typing || event.altKey || (key !== "z" && key !== "y") || document.querySelector('[role="dialog"]') !== null) return;
      event.preventDefault();
      const { undo, redo } = useSession.getState();
      if (key === "y" || event.shiftKey) redo();
      else undo();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, []);
}
