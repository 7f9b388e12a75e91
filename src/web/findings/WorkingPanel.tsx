import { type ReactElement, type ReactNode, useEffect, useState } from "react";
import { Button } from "react-aria-components";
import type { WorkingOf } from "../../river/screen.ts";
import { TitledDialog } from "../controls/TitledDialog.tsx";
import { workingOf, type FoundWorking } from "../state/river.ts";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import { WorkingTables } from "./WorkingTables.tsx";

interface Asked {
  /** Which number. */
  readonly of: WorkingOf;
  /** What the number is, as the dialog's title. */
  readonly title: string;
}

/** A number that opens its working in a dialog. */
export function WorkingButton({ of, title, children }: Asked & { readonly children: ReactNode }): ReactElement {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <>
      <Button className="number figures" aria-label={`${textOf(children)}: show the working of ${title}`} onPress={() => setIsOpen(true)}>
        {children}
      </Button>
      {isOpen ? <WorkingPanel of={of} title={title} onClose={() => setIsOpen(false)} /> : null}
    </>
  );
}

/** The working of a number in a dialog. */
export function WorkingPanel({ of, title, onClose }: Asked & { readonly onClose: () => void }): ReactElement {
  return (
    <TitledDialog title={`Working: ${title}`} isOpen onClose={onClose} wide>
      <WorkingOfNumber of={of} />
    </TitledDialog>
  );
}

/** The working of a number of the last run, asked for again after each run. */
export function WorkingOfNumber({ of, level = 3 }: { readonly of: WorkingOf; readonly level?: 3 | 6 }): ReactElement {
  const screen = useSession((session) => session.screen);
  const stale = useSession((session) => session.stale);
  const slowStale = useSession((session) => session.slowStale);
  const system = useSettings((settings) => settings.system);
  const [answer, setAnswer] = useState<Answer>({ kind: "waiting" });
  const { kind } = of;
  const id = "id" in of ? of.id : "";
  useEffect(() => {
    let wanted = true;
    workingOf(of).then(
      (found) => {
        if (wanted) setAnswer(found === undefined ? { kind: "gone" } : { kind: "found", ...found });
      },
      (error: unknown) => {
        if (wanted) setAnswer({ kind: "failed", message: error instanceof Error ? error.message : String(error) });
      },
    );
    return () => {
      wanted = false;
    };
  }, [kind, id, screen]);
  switch (answer.kind) {
    case "waiting":
      return <p role="status">Looking the working up.</p>;
    case "gone":
      return <p>The latest run has no such number any more.</p>;
    case "failed":
      return <p className="alert">Could not show the working: {answer.message}</p>;
    case "found":
      return (
        <div className={(answer.isSlow ? slowStale : stale) ? "is-stale" : ""}>
          <WorkingTables working={answer.working} system={system} level={level} />
        </div>
      );
  }
}

type Answer =
  | { readonly kind: "waiting" | "gone" }
  | { readonly kind: "failed"; readonly message: string }
  | ({ readonly kind: "found" } & FoundWorking);

function textOf(children: ReactNode): string {
  return typeof children === "string" || typeof children === "number" ? String(children) : "";
}
