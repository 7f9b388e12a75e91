import { type ReactElement, useState } from "react";
import { Button } from "react-aria-components";
import { problemWords } from "../jobs/tell.ts";
import { useSession } from "../state/session.ts";
import { BringBack } from "./BringBack.tsx";
import { type Compared, ComparedView } from "./ComparedView.tsx";
import { runBoth } from "./runBoth.ts";
import { VersionChoice } from "./VersionChoice.tsx";
import { fetchVersion, type Which } from "./versions.ts";
import "../controls/controls.css";
import "./compare.css";

/** Compares two revisions or two jobs: what differs in input, findings, parts, money and days. */
export function Compare(): ReactElement {
  const job = useSession((session) => session.job);
  const base = useSession((session) => session.base);
  return job === undefined ? <p className="quiet">Open a job first.</p> : <Comparing key={job.id} job={job.id} base={base} />;
}

function Comparing({ job, base }: { readonly job: string; readonly base: number }): ReactElement {
  const file = useSession((session) => session.file);
  const [before, setBefore] = useState<Which>({ kind: "revision", job, number: base });
  const [after, setAfter] = useState<Which>({ kind: "here" });
  const [state, setState] = useState<State>({ kind: "idle" });
  const compare = async (): Promise<void> => {
    setState({ kind: "working" });
    const [one, other] = await Promise.all([fetchVersion(before, file), fetchVersion(after, file)]);
    const run = await runBoth(one, other);
    setState(run.ok ? { kind: "done", compared: { ...run, versions: [one, other] } } : { kind: "problem", says: run.says });
  };
  const start = (): void => {
    void compare().catch((error: unknown) => setState({ kind: "problem", says: problemWords(error) }));
  };
  return (
    <div className="compare">
      <div className="compare-choice">
        <VersionChoice label="Before" which={before} onChoose={setBefore} />
        <VersionChoice label="After" which={after} onChoose={setAfter} />
        <Button className="button is-main" isDisabled={state.kind === "working"} onPress={start}>
          Compare
        </Button>
      </div>
      {before.kind === "revision" && before.job === job && before.number < base ? <BringBack key={before.number} number={before.number} /> : null}
      <p role="status" className="quiet">
        {state.kind === "working" ? "Working both out." : ""}
      </p>
      {state.kind === "problem" ? (
        <p className="alert" role="alert">
          {state.says}
        </p>
      ) : null}
      {state.kind === "done" ? <ComparedView compared={state.compared} /> : null}
    </div>
  );
}

type State =
  | { readonly kind: "idle" | "working" }
  | { readonly kind: "problem"; readonly says: string }
  | { readonly kind: "done"; readonly compared: Compared };
