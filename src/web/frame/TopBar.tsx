import { useEffect, type ReactElement, type ReactNode } from "react";
import { Button, ToggleButton, ToggleButtonGroup } from "react-aria-components";
import type { JobFile } from "../../job/file.ts";
import { useLine } from "../state/live.ts";
import { useSession } from "../state/session.ts";
import { hasChanges } from "../state/sessionData.ts";
import { useSettings, type Theme } from "../state/settings.ts";
import { typedFile } from "../state/typedFile.ts";
import "../style/print.css";

interface Bar {
  /** Goes to the list of jobs, or back from it; undefined where there is nowhere to go. */
  readonly onList: (() => void) | undefined;
  /** True over the list of jobs. */
  readonly listed?: boolean;
  /** The open job's own acts. */
  readonly children?: ReactNode;
}

/** The bar over everything: which job, how it stands, and what concerns the whole window. */
export function TopBar({ onList, listed = false, children }: Bar): ReactElement {
  const { job, base, file, stale, canUndo, canRedo, history, undo, redo } = useSession();
  const changed = useSession(hasChanges);
  const isDown = useLine((line) => line.isDown);
  const lastLabel = (history.gesture ?? history.past.at(-1))?.label ?? "";
  usePrintedFoot(job === undefined || listed ? "Cornerpost" : `${job.title} · ${onPapers(file)}`);
  const nextLabel = history.future.at(-1)?.label ?? "";
  return (
    <header className="f-top">
      <svg className="f-home" viewBox="0 0 32 32" width="28" height="28" role="img" aria-label="Cornerpost">
        <path className="f-post" d="M8 4v24h4V12h16V8H12V4z" />
        <path className="f-opening" d="M16 16h12v12H16z" />
      </svg>
      {onList !== undefined && (
        <Button className="button" onPress={onList}>
          {listed ? "Back to the job" : "Jobs"}
        </Button>
      )}
      {job !== undefined && !listed && (
        <div className="f-job">
          <h1>
            <bdi>{job.title}</bdi>
          </h1>
          <p role="status">
            Revision {base}
            {changed ? ", changed since" : ", saved"}
            {stale ? ", working" : ""}
          </p>
          <p className="only-printed">On papers: {onPapers(file)}</p>
        </div>
      )}
      <p className="f-down" role="status">
        {isDown ? "No connection to the server" : ""}
      </p>
      <span className="f-acts">
        {job !== undefined && !listed && (
          <>
            <Button className="button" isDisabled={!canUndo} onPress={undo} aria-label={`Undo ${lastLabel}`.trim()}>
              Undo
            </Button>
            <Button className="button" isDisabled={!canRedo} onPress={redo} aria-label={`Redo ${nextLabel}`.trim()}>
              Redo
            </Button>
          </>
        )}
        {children}
        <UnitsSwitch />
        <ThemeSwitch />
      </span>
    </header>
  );
}

/** Revision and date as the papers of the job carry them. */
function onPapers(file: JobFile): string {
  const { job } = typedFile(file) as { readonly job?: { readonly revision?: unknown; readonly date?: unknown } };
  return `revision ${String(job?.revision)}, ${String(job?.date)}`;
}

/** Puts a text at the foot of every printed page, where style sheets alone reach. */
function usePrintedFoot(text: string): void {
  useEffect(() => {
    const { style } = document.documentElement;
    style.setProperty("--printed-foot", JSON.stringify(text));
    return () => {
      style.removeProperty("--printed-foot");
    };
  }, [text]);
}

function UnitsSwitch(): ReactElement {
  const { system, setSystem } = useSettings();
  return (
    <ToggleButtonGroup
      className="f-switch"
      aria-label="Units shown"
      disallowEmptySelection
      selectedKeys={[system]}
      onSelectionChange={(keys) => setSystem(keys.has("imperial") ? "imperial" : "metric")}
    >
      <ToggleButton className="button" id="metric" aria-label="Metric">
        mm
      </ToggleButton>
      <ToggleButton className="button" id="imperial" aria-label="Feet and inches">
        ft in
      </ToggleButton>
    </ToggleButtonGroup>
  );
}

const THEMES: readonly Theme[] = ["device", "light", "dark"];
const THEME_NAMES: Readonly<Record<Theme, string>> = { device: "Auto", light: "Light", dark: "Dark" };

function ThemeSwitch(): ReactElement {
  const { theme, setTheme } = useSettings();
  const next = THEMES[(THEMES.indexOf(theme) + 1) % THEMES.length] as Theme;
  return (
    <Button className="button f-theme" aria-label={`Colours: ${THEME_NAMES[theme]}; change to ${THEME_NAMES[next]}`} onPress={() => setTheme(next)}>
      {THEME_NAMES[theme]}
    </Button>
  );
}
