import { type ReactElement, type SyntheticEvent, useState } from "react";
import { Button, Form, Input, Label, TextField } from "react-aria-components";
import type { JobRow } from "../../job/api.ts";
import { Choose, type OptionGroup } from "../controls/Choose.tsx";
import { server } from "../state/server.ts";
import { useSettings } from "../state/settings.ts";
import { dayOf, newJobText } from "./newJob.ts";
import { problemWords } from "./tell.ts";

interface Made {
  readonly rows: readonly JobRow[];
  readonly onMade: (job: string) => void;
}

/** A new job, started from a demo or from any other job. */
export function NewJob({ rows, onMade }: Made): ReactElement {
  const who = useSettings((settings) => settings.who);
  const setWho = useSettings((settings) => settings.setWho);
  const firstDemo = rows.find(({ demo }) => demo)?.id ?? rows[0]?.id;
  const [from, setFrom] = useState<string>();
  const [title, setTitle] = useState("");
  const [problem, setProblem] = useState("");
  const [isBusy, setIsBusy] = useState(false);
  const start = from ?? firstDemo;
  const make = async (id: string): Promise<void> => {
    const origin = await server.job(id);
    const text = newJobText(origin.file, { title: title.trim(), drawnBy: who.trim(), date: dayOf(new Date()) });
    if (text === undefined) throw new RangeError("That job's file is no job file; choose another to start from.");
    const made = await server.newJob({ file: text, who: who.trim(), why: `Started from ${origin.title ?? id}` });
    onMade(made.job);
  };
  const submit = (event: SyntheticEvent): void => {
    event.preventDefault();
    const missing = title.trim() === "" || who.trim() === "" ? "A new job needs a title and who makes it." : "";
    setProblem(start === undefined ? "There is no job to start from; import one first." : missing);
    if (start === undefined || missing !== "") return;
    setIsBusy(true);
    void make(start)
      .catch((error: unknown) => setProblem(problemWords(error)))
      .finally(() => setIsBusy(false));
  };
  return (
    <section aria-label="New job">
      <h2>New job</h2>
      <Form className="job-form" onSubmit={submit}>
        <Choose label="Start from" groups={startGroups(rows)} chosen={start} onChoose={setFrom} />
        <TextField className="field" value={title} onChange={setTitle} maxLength={200}>
          <Label className="field-name">Title</Label>
          <Input className="field-input" />
        </TextField>
        <TextField className="field" value={who} onChange={setWho} maxLength={80}>
          <Label className="field-name">Your name</Label>
          <Input className="field-input" autoComplete="name" />
        </TextField>
        <Button className="button is-main" type="submit" isDisabled={isBusy}>
          Make the job
        </Button>
      </Form>
      {problem === "" ? null : (
        <p className="alert" role="alert">
          {problem}
        </p>
      )}
    </section>
  );
}

function startGroups(rows: readonly JobRow[]): readonly OptionGroup[] {
  const options = (demo: boolean) => rows.filter((row) => row.demo === demo).map(({ id, latest }) => ({ id, name: latest.title ?? id }));
  return [
    { name: "Demos", options: options(true) },
    { name: "Jobs", options: options(false) },
  ].filter((group) => group.options.length > 0);
}
