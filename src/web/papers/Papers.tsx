import { type ReactElement, useEffect, useState } from "react";
import { Button, Label, ProgressBar } from "react-aria-components";
import type { PackState } from "../../job/api.ts";
import { problemWords } from "../jobs/tell.ts";
import { downloads, server, ServerError } from "../state/server.ts";
import { useSession } from "../state/session.ts";
import { hasChanges } from "../state/sessionData.ts";
import { SaveDialog } from "../saving/SaveDialog.tsx";
import { isUnderWay, packWords } from "./packWords.ts";
import "../controls/controls.css";
import "./papers.css";

/** Makes the pack of the saved revision on the server, shows how far it is, and hands it over as a zip. */
export function Papers(): ReactElement {
  const job = useSession((session) => session.job);
  const base = useSession((session) => session.base);
  const isSaved = useSession((session) => !hasChanges(session));
  const [pack, setPack] = useState<PackState>();
  const [problem, setProblem] = useState("");
  const [isSaving, setIsSaving] = useState(false);
  useFollowed(pack, setPack, setProblem);
  if (job === undefined) return <p className="quiet">Open a job first.</p>;
  const ask = (asked: Promise<PackState>): void => {
    setProblem("");
    asked.then(setPack, (error: unknown) => setProblem(problemWords(error)));
  };
  const own = pack?.job === job.id ? pack : undefined;
  return (
    <div className="papers">
      <h2>The pack</h2>
      <p>
        Everything that leaves the office, as one zip: summary, findings with their workings, drawings as PDF, SVG and DXF, cut list, quantities, price, shop
        plan, and the job file itself. It is made from a saved revision, so that it can always be made again.
      </p>
      {isSaved ? null : (
        <div className="papers-unsaved">
          <p>You have changes that are not saved. The pack is made from revision {base}, without them.</p>
          <Button className="button" onPress={() => setIsSaving(true)}>
            Save first
          </Button>
          <SaveDialog isOpen={isSaving} onClose={() => setIsSaving(false)} />
        </div>
      )}
      <div className="actions">
        <Button className="button is-main" isDisabled={own !== undefined && isUnderWay(own)} onPress={() => ask(server.makePack(job.id, base))}>
          {`Make the pack of revision ${base}`}
        </Button>
        {own !== undefined && isUnderWay(own) ? (
          <Button className="button" onPress={() => ask(server.cancelPack(own.id))}>
            Cancel
          </Button>
        ) : null}
      </div>
      {own === undefined ? null : <PackProgress pack={own} />}
      {problem === "" ? null : (
        <p className="alert" role="alert">
          {problem}
        </p>
      )}
      <p className="quiet">Cornerpost computes. No paper in the pack says that a design is approved: licensed people and local authorities decide.</p>
    </div>
  );
}

function PackProgress({ pack }: { readonly pack: PackState }): ReactElement {
  return (
    <>
      <ProgressBar className="progress" value={pack.progress} minValue={0} maxValue={1}>
        <Label className="only-heard">Pack of revision {pack.number}</Label>
        <svg className="progress-bar" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
          <rect className="progress-all" width="100" height="4" />
          <rect className="progress-done" width={pack.progress * 100} height="4" />
        </svg>
      </ProgressBar>
      <p role="status">{packWords(pack)}</p>
      {pack.state === "done" ? (
        <p>
          <a className="button is-main papers-download" href={downloads.pack(pack.id)} download>
            Download the pack of revision {pack.number}
          </a>
        </p>
      ) : null}
    </>
  );
}

/** Often enough to show movement, seldom enough to leave the server its time. */
const EVERY_MS = 500;

/** Asks how the pack stands until it is over; where the question fails, it is asked again. */
function useFollowed(pack: PackState | undefined, setPack: (pack: PackState) => void, setProblem: (says: string) => void): void {
  useEffect(() => {
    if (pack === undefined || !isUnderWay(pack)) return;
    const state = { wanted: true, timer: setTimeout(() => void ask(), EVERY_MS) };
    const ask = async (): Promise<void> => {
      const next = await server.pack(pack.id).catch((error: unknown) => (isGone(error) ? goneWith(pack) : undefined));
      if (!state.wanted) return;
      setProblem(next === undefined ? "The server does not say how far the pack is; asking again." : "");
      if (next === undefined) state.timer = setTimeout(() => void ask(), EVERY_MS);
      else setPack(next);
    };
    return () => {
      state.wanted = false;
      clearTimeout(state.timer);
    };
  }, [pack, setPack, setProblem]);
}

function isGone(error: unknown): boolean {
  return error instanceof ServerError && error.told.code === "not_found";
}

/** A server that was started anew knows of no pack that it was making before. */
function goneWith(pack: PackState): PackState {
  return { ...pack, state: "failed", step: "the server was started anew meanwhile; ask for it once more" };
}
