import { useEffect } from "react";
import { useSession } from "../state/session.ts";

const PREFIX = "/jobs/";

/** Keeps the window's address and the open job in step, so that a job can be bookmarked and a reload stays on it. */
export function useAddress(): void {
  const job = useSession(({ job: open }) => open?.id);
  useEffect(() => {
    const follow = (): void => {
      const named = location.pathname.startsWith(PREFIX) ? decodeURIComponent(location.pathname.slice(PREFIX.length)) : "";
      const session = useSession.getState();
      if (named === "") session.close();
      else if (named !== session.job?.id) void session.open(named);
    };
    follow();
    addEventListener("popstate", follow);
    return () => removeEventListener("popstate", follow);
  }, []);
  useEffect(() => {
    const address = `${PREFIX}${encodeURIComponent(job ?? "")}`;
    if (job !== undefined && location.pathname !== address) history.pushState(null, "", address);
  }, [job]);
}
