import { type ReactElement, useCallback } from "react";
import { Choose } from "../controls/Choose.tsx";
import { whenText } from "../jobs/newJob.ts";
import { useAsked } from "../jobs/useAsked.ts";
import { server } from "../state/server.ts";
import { useSession } from "../state/session.ts";
import type { Which } from "./versions.ts";

interface Chosen {
  readonly label: string;
  readonly which: Which;
  readonly onChoose: (which: Which) => void;
}

/** The open job as it stands: stands for it among the ids of jobs, which hold no blank. */
const HERE = "as it stands here";

/** Chooses a job and one of its revisions, or the open job as it stands. */
export function VersionChoice({ label, which, onChoose }: Chosen): ReactElement {
  const open = useSession((session) => session.job);
  const [jobs] = useAsked(server.jobs);
  const rows = jobs.kind === "answer" ? jobs.answer : [];
  const groups = [
    { name: "", options: [{ id: HERE, name: `${open?.title ?? "The job"}, as it stands here` }] },
    { name: "Saved", options: rows.map(({ id, latest }) => ({ id, name: latest.title ?? id, more: `latest revision ${latest.number}` })) },
  ];
  return (
    <fieldset className="field-group">
      <legend>{label}</legend>
      <Choose
        label={`${label}: job`}
        groups={groups}
        chosen={which.kind === "here" ? HERE : which.job}
        onChoose={(id) => {
          const latest = rows.find((row) => row.id === id)?.latest.number;
          onChoose(id === HERE || latest === undefined ? { kind: "here" } : { kind: "revision", job: id, number: latest });
        }}
      />
      {which.kind === "revision" ? (
        <RevisionChoice label={label} job={which.job} number={which.number} onChoose={(number) => onChoose({ ...which, number })} />
      ) : null}
      {jobs.kind === "problem" ? <p className="alert">{jobs.says}</p> : null}
    </fieldset>
  );
}

interface Revisions {
  readonly label: string;
  readonly job: string;
  readonly number: number;
  readonly onChoose: (number: number) => void;
}

function RevisionChoice({ label, job, number, onChoose }: Revisions): ReactElement {
  const ask = useCallback(() => server.revisions(job), [job]);
  const [revisions] = useAsked(ask);
  const heads = revisions.kind === "answer" ? revisions.answer : [];
  const options = heads.map((head) => ({
    id: String(head.number),
    name: `Revision ${head.number}`,
    more: [whenText(head.when), head.who, head.why].filter((text) => text !== "").join(" · "),
  }));
  return (
    <Choose
      label={`${label}: revision`}
      groups={[{ name: "", options: options.length === 0 ? [{ id: String(number), name: `Revision ${number}` }] : options }]}
      chosen={String(number)}
      onChoose={(id) => onChoose(Number(id))}
    />
  );
}
