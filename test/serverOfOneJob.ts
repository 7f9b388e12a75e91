import { vi } from "vitest";
import type { JobRevision } from "../src/job/api.ts";
import { compareFiles, contentOf } from "../src/job/merge.ts";

/** A revision of the job J1. */
export function revision(number: number, file: string): JobRevision {
  return { job: "J1", number, parent: number === 1 ? null : number - 1, who: "A", why: "w", when: "2027-01-01T00:00:00Z", title: "Of the test", readable: true, file };
}

/**
 * A server of one job in memory, in place of fetch, answering as the wire types say. `written` runs when a save is written
 * and not answered yet.
 */
export function serverWith(first: string, written: (revisions: JobRevision[]) => void = () => undefined): { readonly revisions: JobRevision[] } {
  const revisions = [revision(1, first)];
  const answer = (status: number, body: unknown): Response => new Response(JSON.stringify(body), { status });
  vi.stubGlobal("fetch", (address: string, init: RequestInit = {}): Promise<Response> => {
    const latest = (): JobRevision => revisions.at(-1) as JobRevision;
    if (init.method !== "POST") {
      const numbered = /^\/api\/jobs\/J1\/revisions\/(\d+)$/.exec(address)?.[1];
      const found = address === "/api/jobs/J1" ? latest() : revisions[Number(numbered) - 1];
      return Promise.resolve(found === undefined ? answer(404, { code: "not_found", path: "", facts: {} }) : answer(200, found));
    }
    const { base, file } = JSON.parse(init.body as string) as { readonly base: number; readonly file: string };
    if (base === latest().number) {
      const saved = revision(base + 1, file);
      revisions.push(saved);
      written(revisions);
      return Promise.resolve(answer(201, { saved: true, revision: saved }));
    }
    const was = contentOf((revisions[base - 1] as JobRevision).file);
    const { theirs, conflicts } = compareFiles(was, contentOf(file), contentOf(latest().file));
    return Promise.resolve(answer(200, { saved: false, latest: latest(), changes: theirs, conflicts }));
  });
  return { revisions };
}
