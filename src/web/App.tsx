import { useState, type ReactElement } from "react";
import { Jobs } from "./jobs/Jobs.tsx";
import "./frame/frame.css";
import { JobWindow } from "./frame/JobWindow.tsx";
import { Told } from "./frame/Told.tsx";
import { TopBar } from "./frame/TopBar.tsx";
import { useAddress } from "./frame/useAddress.ts";
import { useLive } from "./frame/useLive.ts";
import { useShownUnits } from "./frame/useShownUnits.ts";
import { useStay } from "./frame/useStay.ts";
import { useTheme } from "./frame/useTheme.ts";
import { useUndoKeys } from "./frame/useUndoKeys.ts";
import { LeavingDialog } from "./saving/LeavingDialog.tsx";
import { useSession } from "./state/session.ts";

/** The window: the list of jobs, or the job that is open. */
export function App(): ReactElement {
  useTheme();
  useAddress();
  useLive();
  useShownUnits();
  useStay();
  useUndoKeys();
  const job = useSession((session) => session.job);
  const [listed, setListed] = useState(false);
  const leaving = <LeavingDialog onStay={() => setListed(false)} onLeft={() => setListed(false)} />;
  if (job !== undefined && !listed) {
    return (
      <div className="f-app">
        <JobWindow onList={() => setListed(true)} />
        {leaving}
      </div>
    );
  }
  return (
    <div className="f-app">
      <TopBar onList={job === undefined ? undefined : () => setListed(false)} listed />
      <Told />
      <main className="f-page">
        <Jobs onOpened={() => setListed(false)} />
      </main>
      {leaving}
    </div>
  );
}
