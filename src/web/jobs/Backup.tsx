import { type ReactElement, useState } from "react";
import { Button } from "react-aria-components";
import type { Backup as Made } from "../../job/api.ts";
import { downloads, server } from "../state/server.ts";
import { problemWords } from "./tell.ts";

/** Makes a backup of all jobs and price books on the server, and hands it over. */
export function Backup(): ReactElement {
  const [made, setMade] = useState<Made>();
  const [problem, setProblem] = useState("");
  const [isMaking, setIsMaking] = useState(false);
  const make = async (): Promise<void> => {
    setIsMaking(true);
    setProblem("");
    try {
      setMade(await server.backUp());
    } catch (error) {
      setProblem(problemWords(error));
    }
    setIsMaking(false);
  };
  return (
    <section aria-label="Backup">
      <h2>Backup</h2>
      <p className="quiet">All jobs and price books with all their revisions, in one file. The server puts it back by its command restore.</p>
      <Button className="button" isDisabled={isMaking} onPress={() => void make()}>
        {isMaking ? "Making a backup" : "Make a backup"}
      </Button>
      <div role="status">
        {made === undefined ? null : (
          <p>
            The backup lies on the server as <span className="backup-path">{made.path}</span>.{" "}
            <a className="button job-export" href={downloads.backup(made.name)} download>
              Download the backup
            </a>
          </p>
        )}
      </div>
      {problem === "" ? null : (
        <p className="alert" role="alert">
          {problem}
        </p>
      )}
    </section>
  );
}
