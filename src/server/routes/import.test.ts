import { Hono } from "hono";
import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { ENGINES, storeAt } from "../../../test/engines.ts";
import { ANSWERS, ROUTES } from "../../job/api.ts";
import { listJobs } from "../../store/jobs.ts";
import { importRoutes } from "./import.ts";

const { text } = DEMO_JOBS[0]!;

describe.each(ENGINES)("an import on $engine", ({ newPlace }) => {
  it("answers for each file: those before one that cannot be saved stay in and are told", async () => {
    const store = await storeAt(await newPlace());
    const logged: string[] = [];
    const app = new Hono();
    app.onError((_, { json }) => json({}, 500));
    // One id for all: the second job cannot be saved.
    importRoutes(app, { store, newId: () => "same", log: (line) => logged.push(line) });
    const send = async (names: readonly string[]): Promise<Response> =>
      app.request(ROUTES.import, { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify({ files: names.map((name) => ({ name, file: text })), who: "Ann", why: "" }) });
    const answer = await send(["one", "two"]);
    expect(answer.status).toBe(200);
    const { imported } = ANSWERS.import.parse(await answer.json());
    expect(imported).toMatchObject([{ name: "one", became: "job", job: "same" }, { name: "two", became: "nothing", issues: [{ wants: expect.stringMatching(/again/) as string }] }]);
    expect((await listJobs(store)).map(({ id }) => id)).toEqual(["same"]);
    expect(logged).toHaveLength(1);
    expect((await send(["three"])).status, "where nothing was taken, the error is the answer").toBe(500);
  });
});
