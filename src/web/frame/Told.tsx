import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import { issueText } from "../../job/issue.ts";
import { useSession } from "../state/session.ts";

/** What keeps the last answer from following the file: issues in it, or a stage that could not compute. */
export function Told(): ReactElement | null {
  const { job, screen, issues, failed, slowFailed } = useSession();
  if (failed !== undefined) {
    return job === undefined ? (
      <div className="f-told is-failed" role="alert">
        {failed}
      </div>
    ) : (
      <NotComputed what="Could not compute." why={failed} />
    );
  }
  if (slowFailed !== undefined && issues.length === 0) return <NotComputed what="Could not compute heat and moisture." why={slowFailed} />;
  if (issues.length === 0) return null;
  return (
    <div className="f-told" role="alert">
      <strong>
        {issues.length === 1 ? "One place in the job has" : `${String(issues.length)} places in the job have`} no meaning yet;{" "}
        {screen === undefined ? "nothing is worked out before they are mended" : "the last build that had one is shown"}.
      </strong>
      <ul>
        {issues.map((issue) => (
          <li key={`${issue.path} ${issue.code}`}>{issueText(issue)}</li>
        ))}
      </ul>
    </div>
  );
}

function NotComputed({ what, why }: { readonly what: string; readonly why: string }): ReactElement {
  const rerun = useSession((session) => session.rerun);
  return (
    <div className="f-told is-failed" role="alert">
      <strong>{what}</strong> {why}{" "}
      <Button className="button" onPress={rerun}>
        Try again
      </Button>
    </div>
  );
}
