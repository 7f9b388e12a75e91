import { type ReactElement, useState } from "react";
import { Button, FileTrigger } from "react-aria-components";
import { FILE_LIMIT, type Imported } from "../../job/api.ts";
import { server } from "../state/server.ts";
import { useSettings } from "../state/settings.ts";
import { importedWords, problemWords } from "./tell.ts";

/** Takes in job files and price books from this device, and says what became of each. */
export function ImportFiles({ onImported }: { readonly onImported: () => void }): ReactElement {
  const who = useSettings((settings) => settings.who);
  const [became, setBecame] = useState<readonly Imported[]>([]);
  const [problem, setProblem] = useState("");
  const take = async (files: readonly File[]): Promise<void> => {
    const large = files.find(({ size }) => size > FILE_LIMIT);
    if (large !== undefined) {
      setProblem(`${large.name} is larger than a job file may be.`);
      return;
    }
    const read = await Promise.all(files.map(async (file) => ({ name: file.name.slice(0, 255), file: await file.text() })));
    setBecame(await server.importFiles({ files: read, who: who.trim(), why: "Imported" }));
    onImported();
  };
  return (
    <section aria-label="Import">
      <h2>Import</h2>
      <p className="quiet">Job files and price books, as JSON. A job file with issues is kept as a draft.</p>
      <FileTrigger
        acceptedFileTypes={["application/json", ".json"]}
        allowsMultiple
        onSelect={(list) => {
          setProblem(who.trim() === "" ? "Write your name under New job first: an import is a save." : "");
          if (list === null || list.length === 0 || who.trim() === "") return;
          void take([...list]).catch((error: unknown) => setProblem(problemWords(error)));
        }}
      >
        <Button className="button">Choose files to import</Button>
      </FileTrigger>
      {problem === "" ? null : (
        <p className="alert" role="alert">
          {problem}
        </p>
      )}
      <div role="status">
        <ul className="plain-list">
          {became.map((one, index) => {
            const { says, issues } = importedWords(one);
            return (
              <li key={index}>
                {says}
                {issues.length === 0 ? null : (
                  <ul>
                    {issues.map((issue, at) => (
                      <li key={at}>{issue}</li>
                    ))}
                  </ul>
                )}
              </li>
            );
          })}
        </ul>
      </div>
    </section>
  );
}
