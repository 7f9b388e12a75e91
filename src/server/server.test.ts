import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../test/demoJobs.ts";
import { ENGINES, newFolder } from "../../test/engines.ts";
import { serverAt } from "../../test/serverUnderTest.ts";
import type { ServerUnderTest } from "../../test/serverUnderTest.ts";
import { addressOf, ANSWERS, apiError, liveEvent, ROUTES } from "../job/api.ts";
import type { PackState } from "../job/api.ts";
import { contentOf, mergeFiles } from "../job/merge.ts";
import { writePack } from "../river/pack.ts";
import { filesIn } from "../../test/filesIn.ts";

const { name, text, bookText, book } = DEMO_JOBS[0]!;
const ANN = { who: "Ann", why: "moved the door" };
const BOB = { who: "Bob", why: "" };
const of = (job: string, number = 1) => ({ job, number });

describe.each(ENGINES)("a server on $engine", ({ newPlace }) => {
  it("gives the demo jobs, keeps new ones, and every revision", async () => {
    const { get, send } = await serverAt(await newPlace());
    const { jobs } = ANSWERS.jobs.parse((await get(ROUTES.jobs)).json);
    expect(jobs.map(({ id, demo }) => [id, demo]).toSorted()).toEqual(DEMO_JOBS.map((demo) => [demo.name, true]));
    const made = await send("POST", ROUTES.jobs, { file: text, ...ANN });
    expect(made.status).toBe(201);
    const { job } = ANSWERS.revision.parse(made.json);
    const saved = await send("POST", addressOf(ROUTES.revisions, { job }), { base: 1, file: `${text} `, ...BOB });
    const latest = await get(addressOf(ROUTES.job, { job }));
    expect(ANSWERS.revision.parse(latest.json)).toMatchObject({ number: 2, parent: 1, file: `${text} `, ...BOB });
    expect([saved.status, ANSWERS.saved.parse(saved.json)]).toEqual([201, { saved: true, revision: latest.json }]);
    expect((await get(addressOf(ROUTES.revision, of(job, 1)))).json).toEqual(made.json);
    const { revisions } = ANSWERS.revisions.parse((await get(addressOf(ROUTES.revisions, { job }))).json);
    expect(revisions.map(({ number, who, why }) => [number, who, why])).toEqual([[2, "Bob", ""], [1, ANN.who, ANN.why]]);
    const file = await get(addressOf(ROUTES.file, { job }));
    expect([file.text, file.headers["content-disposition"]]).toEqual([`${text} `, `attachment; filename="${job}.job.json"`]);
  });

  it("lets two people save at once: the later is told what changed, and keeps, takes or merges", async () => {
    const { get, send } = await serverAt(await newPlace());
    const saves = addressOf(ROUTES.revisions, { job: name });
    const edited = (...parts: readonly (readonly [string, string])[]): string => parts.reduce((all, [from, to]) => all.replace(from, to), text);
    const [title, contact] = [/"title": "[^"]*"/.exec(text)![0], /"drawnBy": "[^"]*"/.exec(text)![0]];
    const ann = edited([title, '"title": "Ann\'s"']);
    const bob = edited([title, '"title": "Bob\'s"'], [contact, '"drawnBy": "Bob"']);
    expect((await send("POST", saves, { base: 1, file: ann, ...ANN })).status).toBe(201);
    const second = await send("POST", saves, { base: 1, file: bob, ...BOB });
    expect(second.status).toBe(200);
    const told = ANSWERS.saved.parse(second.json);
    if (told.saved) throw new Error("Ann saved first");
    expect(told.latest).toMatchObject({ number: 2, file: ann, who: "Ann" });
    expect(told.changes.map(({ path }) => path)).toEqual(["job.title"]);
    expect(told.conflicts).toMatchObject([{ path: "job.title", mine: "Bob's", theirs: "Ann's" }]);
    const merged = mergeFiles(contentOf(text), contentOf(bob), contentOf(told.latest.file), { "job.title": "theirs" });
    if (!merged.ok) throw new Error("the conflict was settled");
    const settled = await send("POST", saves, { base: 2, file: JSON.stringify(merged.file), ...BOB });
    expect(settled.status).toBe(201);
    expect(ANSWERS.revision.parse((await get(addressOf(ROUTES.job, { job: name }))).json)).toMatchObject({ number: 3, title: "Ann's", readable: true });
    expect(JSON.stringify(merged.file)).toContain('"drawnBy":"Bob"');
  });

  it("tells every open window of saves, and of none that came second", async () => {
    const server = await serverAt(await newPlace());
    const [one, two] = [await windowOn(server), await windowOn(server)];
    const saves = addressOf(ROUTES.revisions, { job: name });
    await server.send("POST", saves, { base: 1, file: text, ...ANN });
    await server.send("POST", saves, { base: 1, file: text, ...BOB });
    await server.send("POST", ROUTES.import, { files: [{ name: "book", file: bookText }], ...BOB });
    for (const heard of [one, two]) {
      await expect.poll(heard).toEqual([
        { kind: "saved", job: name, revision: 2, who: "Ann" },
        { kind: "price book", book: book.id, revision: 2, who: "Bob" },
      ]);
    }
  });

  it("keeps the revisions of price books, which come in by import alone", async () => {
    const { get, send } = await serverAt(await newPlace());
    expect(ANSWERS.priceBooks.parse((await get(ROUTES.priceBooks)).json).books.map(({ id }) => id)).toContain(book.id);
    const files = [bookText, "{}"].map((file) => ({ name: "book", file }));
    expect(ANSWERS.import.parse((await send("POST", ROUTES.import, { files, ...ANN })).json).imported.map(({ became }) => became)).toEqual(["price book", "nothing"]);
    expect(ANSWERS.priceBook.parse((await get(addressOf(ROUTES.priceBook, { book: book.id }))).json)).toMatchObject({ number: 2, parent: 1, file: bookText, who: "Ann" });
    const posted = await send("POST", ROUTES.priceBooks, { base: 2, file: bookText, ...ANN });
    expect([posted.status, apiError.parse(posted.json).code]).toEqual([405, "wrong_method"]);
  });

  it("imports job files and price books, drafts too, and says what became of each", async () => {
    const { get, send } = await serverAt(await newPlace());
    const draft = text.replace('"units"', '"unitz"');
    const files = [
      { name: "a.job.json", file: text },
      { name: "<img src=x onerror=alert(1)>", file: draft },
      { name: "book", file: bookText },
      { name: "bad book", file: bookText.replace('"currency"', '"currenzy"') },
      { name: "something", file: "GIF89a" },
      { name: "else", file: '{"format":"other"}' },
    ];
    const { imported } = ANSWERS.import.parse((await send("POST", ROUTES.import, { files, ...ANN })).json);
    expect(imported.map((one) => [one.name, one.became])).toEqual(
      files.map(({ name: called }, at) => [called, ["job", "job", "price book", "nothing", "nothing", "nothing"][at]]),
    );
    expect(imported.map((one) => ("issues" in one ? one.issues.length > 0 : false))).toEqual([false, true, false, true, true, true]);
    expect(imported.slice(3)).toMatchObject([{ format: "price book", issues: [{ path: "currency" }, { path: "currenzy" }] }, { format: "other" }, { format: "other" }]);
    const [, kept] = imported;
    if (kept?.became !== "job") throw new Error("the draft is kept");
    expect(ANSWERS.revision.parse((await get(addressOf(ROUTES.job, { job: kept.job }))).json)).toMatchObject({ file: draft, readable: false });
  });

  it("makes the pack of a revision as a zip, with progress, the same files as on the command line", async () => {
    const { get, send } = await serverAt(await newPlace());
    const asked = await send("POST", addressOf(ROUTES.makePack, of(name)));
    expect(asked.status).toBe(202);
    const { id } = ANSWERS.pack.parse(asked.json);
    const early = await get(addressOf(ROUTES.packFile, { pack: id }));
    expect([early.status, apiError.parse(early.json).code]).toEqual([409, "not_ready"]);
    const seen: PackState[] = [];
    await expect.poll(async () => {
      const state = ANSWERS.pack.parse((await get(addressOf(ROUTES.pack, { pack: id }))).json);
      seen.push(state);
      return state.state;
    }, { timeout: 25_000, interval: 50 }).toBe("done");
    const shares = seen.map(({ progress }) => progress);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(seen.some(({ progress }) => progress > 0 && progress < 1)).toBe(true);
    const zip = await get(addressOf(ROUTES.packFile, { pack: id }));
    expect([zip.headers["content-type"], zip.headers["content-disposition"]]).toEqual(["application/zip", `attachment; filename="${name}-1.zip"`]);
    const files = unzipSync(zip.bytes);
    const folder = newFolder();
    const written = writePack(text, bookText, folder);
    if (!written.ok) throw new Error("the demo job has issues");
    expect(Object.keys(files).toSorted()).toEqual(written.written.map((path) => `pack/${path}`).toSorted());
    for (const [path, bytes] of filesIn(folder)) expect(bytes.equals(files[`pack/${path}`]!), path).toBe(true);
    expect(strFromU8(files["pack/pack.pdf"]!.subarray(0, 5), true)).toBe("%PDF-");
  });

  it("goes on answering while it makes a pack, and stops making it when told", async () => {
    const { get, send } = await serverAt(await newPlace());
    const ids: string[] = [];
    for (let n = 0; n < 3; n += 1) ids.push(ANSWERS.pack.parse((await send("POST", addressOf(ROUTES.makePack, of(name)))).json).id);
    expect((await get(ROUTES.jobs)).status).toBe(200);
    for (const pack of ids.toReversed()) {
      expect(ANSWERS.pack.parse((await send("DELETE", addressOf(ROUTES.pack, { pack }))).json).state).toBe("cancelled");
      expect((await get(addressOf(ROUTES.packFile, { pack }))).status).toBe(409);
    }
  });

  it("makes no pack of a draft, nor without a price book", async () => {
    const { send } = await serverAt(await newPlace());
    const made = async (file: string): Promise<string> => ANSWERS.revision.parse((await send("POST", ROUTES.jobs, { file, ...ANN })).json).job;
    const draft = await send("POST", addressOf(ROUTES.makePack, of(await made("{"))));
    expect([draft.status, apiError.parse(draft.json).code]).toEqual([422, "has_issues"]);
    const unpriced = await send("POST", addressOf(ROUTES.makePack, of(await made(text.replace(`"${book.id}"`, '"no-such-book"')))));
    expect([unpriced.status, unpriced.json]).toEqual([422, { code: "no_price_book", path: "prices.book", facts: { book: "no-such-book" } }]);
  });

  it("writes a backup into its own folder while it runs, and hands over that file alone", async () => {
    const { get, send, folder } = await serverAt(await newPlace());
    const { path, name: called, bytes } = ANSWERS.backup.parse((await send("POST", ROUTES.backup)).json);
    expect(path).toBe(join(folder, "backups", called));
    expect(bytes).toBeGreaterThan(1000);
    const file = await get(addressOf(ROUTES.backupFile, { name: called }));
    expect([file.status, file.headers["content-disposition"], file.bytes.length]).toEqual([200, `attachment; filename="${called}"`, bytes]);
    expect(file.bytes.equals(readFileSync(path))).toBe(true);
    writeFileSync(join(folder, "backups", "notes.txt"), "secret");
    for (const other of ["none.sqlite", "notes.txt", "..", "../cornerpost.sqlite", "..%2fcornerpost.sqlite", `${called}/../${called}`]) {
      expect((await get(`/api/backups/${encodeURIComponent(other)}`)).status, other).toBe(404);
    }
  });
});

/** A browser's window that listens; gives what it has heard. */
async function windowOn({ address }: ServerUnderTest): Promise<() => readonly unknown[]> {
  const response = await fetch(`${address}${ROUTES.live}`);
  expect(response.headers.get("content-type")).toBe("text/event-stream");
  const state = { text: "" };
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
  const listening = (async () => {
    for (let part = await reader.read(); !part.done; part = await reader.read()) state.text += part.value;
  })();
  listening.catch(() => undefined);
  await expect.poll(() => state.text).toContain("listening");
  return () => [...state.text.matchAll(/^data: (.*)$/gm)].map(([, data]) => liveEvent.parse(JSON.parse(data!)));
}
