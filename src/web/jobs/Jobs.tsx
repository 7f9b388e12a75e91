import { type ReactElement, useEffect } from "react";
import { Button, Label, ProgressBar } from "react-aria-components";
import type { JobRow } from "../../job/api.ts";
import { hearLive } from "../state/live.ts";
import { useLeaving } from "../state/leaving.ts";
import { downloads, server } from "../state/server.ts";
import { useSession } from "../state/session.ts";
import { Backup } from "./Backup.tsx";
import { ImportFiles } from "./ImportFiles.tsx";
import { NewJob } from "./NewJob.tsx";
import { whenText } from "./newJob.ts";
import { PriceBooks } from "./PriceBooks.tsx";
import { useAsked } from "./useAsked.ts";
import "../controls/controls.css";
import "./jobs.css";

interface Shown {
  /** Called when a job is on its way. */
  readonly onOpened?: () => void;
}

/** The list of jobs, but for the time that one of them takes to open. */
export function Jobs({ onOpened }: Shown): ReactElement {
  const opening = useSession((session) => session.opening !== undefined);
  if (!opening) return <JobList onOpened={onOpened} />;
  return (
    <ProgressBar isIndeterminate>
      <Label className="quiet">Opening…</Label>
    </ProgressBar>
  );
}

/** Open a job, start a new one from another, import and export. Nothing is ever deleted. */
function JobList({ onOpened }: { readonly onOpened: (() => void) | undefined }): ReactElement {
  const [asked, again] = useAsked(server.jobs);
  const go = useLeaving((leaving) => leaving.go);
  useEffect(() => hearLive(again), [again]);
  const goTo = (job: string): void => {
    if (go({ job })) onOpened?.();
  };
  if (asked.kind === "waiting") return <p role="status">Asking the server for the jobs.</p>;
  if (asked.kind === "problem") {
    return (
      <div className="jobs">
        <p className="alert" role="alert">
          {asked.says}
        </p>
        <Button className="button" onPress={again}>
          Ask again
        </Button>
      </div>
    );
  }
  const { answer: rows } = asked;
  return (
    <div className="jobs">
      <NewJob rows={rows} onMade={goTo} />
      <JobTable rows={rows} onOpen={goTo} />
      <ImportFiles onImported={again} />
      <PriceBooks />
      <Backup />
    </div>
  );
}

function JobTable({ rows, onOpen }: { readonly rows: readonly JobRow[]; readonly onOpen: (job: string) => void }): ReactElement {
  const current = useSession((session) => session.job?.id);
  return (
    <section aria-label="All jobs">
      <h2>Jobs</h2>
      <div className="working-wide">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">Job</th>
              <th scope="col">Last save</th>
              <th scope="col">Revision</th>
              <th scope="col">File</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ id, demo, latest }) => {
              const title = latest.title ?? "without a title";
              return (
                <tr key={id}>
                  <th scope="row" className="job-title">
                    <Button className="job-open" onPress={() => onOpen(id)} aria-label={`Open ${title}`}>
                      {title}
                    </Button>
                    <span className="quiet">
                      {[demo ? "demo" : "", latest.readable ? "" : "cannot be read yet", id === current ? "open here" : ""].filter((text) => text !== "").join(" · ")}
                    </span>
                  </th>
                  <td>
                    <span className="figures">{whenText(latest.when)}</span> {latest.who}
                    <br />
                    <span className="quiet">{latest.why}</span>
                  </td>
                  <td className="figures">{latest.number}</td>
                  <td>
                    <a className="button job-export" href={downloads.jobFile(id)} download aria-label={`Export the file of ${title}`}>
                      Export
                    </a>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </section>
  );
}
