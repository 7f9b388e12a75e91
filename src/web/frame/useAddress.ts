import { useEffect } from "react";
import { addressOfJob, jobInPath } from "../state/jobAddress.ts";
import { useLeaving } from "../state/leaving.ts";
import { useSession } from "../state/session.ts";

/** Keeps the window's address and the open job in step, so that a job can be bookmarked and a reload stays on it. */
export function useAddress(): void {
  const job = useSession(({ job: open }) => open?.id);
  useEffect(() => {
    const follow = (): void => {
      const named = jobInPath(location.pathname);
      const open = useSession.getState().job?.id;
      if (useLeaving.getState().go(named === undefined ? "no job" : { job: named })) return;
      if (open !== undefined) history.pushState(null, "", addressOfJob(open));
    };
    follow();
    addEventListener("popstate", follow);
    return () => removeEventListener("popstate", follow);
  }, []);
  useEffect(() => {
    if (job === undefined) return undefined;
    if (location.pathname !== addressOfJob(job)) history.pushState(null, "", addressOfJob(job));
    return () => {
      if (useSession.getState().job === undefined && location.pathname !== "/") history.pushState(null, "", "/");
    };
  }, [job]);
}
