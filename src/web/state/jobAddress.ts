const PREFIX = "/jobs/";

/** The address of a job's window. */
export function addressOfJob(job: string): string {
  return `${PREFIX}${encodeURIComponent(job)}`;
}

/** The job that a window's path names; undefined where it names none. */
export function jobInPath(path: string): string | undefined {
  if (!path.startsWith(PREFIX) || path.length === PREFIX.length) return undefined;
  try {
    return decodeURIComponent(path.slice(PREFIX.length));
  } catch {
    return undefined;
  }
}
