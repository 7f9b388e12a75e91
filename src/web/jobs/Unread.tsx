import { type ReactElement, useCallback, useEffect } from "react";
import { Button, Input, Label, TextField } from "react-aria-components";
import { issueText } from "../../job/issue.ts";
import { hearLive } from "../state/live.ts";
import { downloads, server } from "../state/server.ts";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import type { UnreadText } from "../state/typedFile.ts";
import { whenText } from "./newJob.ts";
import { useAsked } from "./useAsked.ts";
import "../controls/controls.css";
import "./jobs.css";

interface Shown {
  readonly job: string;
  readonly unread: UnreadText;
}

/** A job whose text is no job file: why, the text as typed, and two ways on. Nothing is edited here, so nothing is lost. */
export function Unread({ job, unread: { text, issues } }: Shown): ReactElement {
  const base = useSession((session) => session.base);
  return (
    <div className="jobs">
      <section aria-label="Why" role="alert" className="alert">
        <h2>Revision {base} cannot be read as a job</h2>
        <ul className="plain-list">
          {issues.map((issue, at) => (
            <li key={at}>{issueText(issue)}</li>
          ))}
        </ul>
      </section>
      <section aria-label="The text">
        <h2>The text as it was saved</h2>
        <pre className="unread-text" role="region" aria-label="Text of the file" tabIndex={0}>
          {text}
        </pre>
        <p className="quiet">To mend it, take it out, correct the place named above, and import it: it becomes a job of its own.</p>
        <a className="button job-export" href={downloads.jobFile(job)} download>
          Take the text out
        </a>
      </section>
      <Earlier job={job} base={base} />
    </div>
  );
}

/** Earlier revisions that can be read, each to be saved once more as the next one. */
function Earlier({ job, base }: { readonly job: string; readonly base: number }): ReactElement {
  const [asked, again] = useAsked(useCallback(() => server.revisions(job), [job]));
  const who = useSettings((settings) => settings.who);
  const setWho = useSettings((settings) => settings.setWho);
  const goBack = useSession((session) => session.goBack);
  const saving = useSession((session) => session.saving);
  const problem = useSession((session) => session.saveProblem);
  useEffect(() => hearLive(again), [again]);
  const earlier = asked.kind === "answer" ? asked.answer.filter(({ number, readable }) => number < base && readable) : [];
  return (
    <section aria-label="Earlier revisions">
      <h2>Earlier revisions</h2>
      {asked.kind === "problem" ? <p className="alert">{asked.says}</p> : null}
      {asked.kind === "answer" && earlier.length === 0 ? <p>None of this job can be read.</p> : null}
      {earlier.length === 0 ? null : (
        <>
          <p className="quiet">Going back saves the earlier text as the next revision; this one stays among the revisions.</p>
          <TextField className="field unread-who" value={who} onChange={setWho} maxLength={80}>
            <Label className="field-name">Who goes back</Label>
            <Input className="field-input" autoComplete="name" />
          </TextField>
          <ul className="plain-list">
            {earlier.map(({ number, who: saver, when, why }) => (
              <li key={number}>
                <Button className="button" isDisabled={saving} onPress={() => void goBack(number)}>
                  Go back to revision {number}
                </Button>{" "}
                <span className="figures">{whenText(when)}</span> {saver} <span className="quiet">{why}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {problem === undefined ? null : (
        <p className="alert" role="alert">
          {problem}
        </p>
      )}
    </section>
  );
}
