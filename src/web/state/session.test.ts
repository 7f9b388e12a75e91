import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { revision, serverWith } from "../../../test/serverOfOneJob.ts";
import { contentOf } from "../../job/merge.ts";
import { useSession } from "./session.ts";
import { useSettings } from "./settings.ts";
import { typedFile } from "./typedFile.ts";

const [demo] = DEMO_JOBS;
if (demo === undefined) throw new Error("there is no demo job");

const along = (): string | undefined => typedFile(useSession.getState().file).openings?.[0]?.at.along;
const moveFirst = (text: string, label = "Move"): void =>
  useSession.getState().edit(label, (draft) => {
    const opening = draft.openings?.[0];
    if (opening !== undefined) opening.at.along = text;
  });

describe("the open job", () => {
  beforeEach(() => useSettings.getState().setWho("Pat"));
  afterEach(() => {
    useSession.getState().close();
    vi.unstubAllGlobals();
  });

  it("opens as saved, changes, and goes back by undo", async () => {
    serverWith(demo.text);
    await useSession.getState().open("J1");
    const before = along();
    expect(useSession.getState()).toMatchObject({ job: { id: "J1", title: "Of the test" }, base: 1, canUndo: false });
    moveFirst("1 m");
    expect(along()).toBe("1 m");
    useSession.getState().undo();
    expect(along()).toBe(before);
    expect(useSession.getState().file).toBe(useSession.getState().saved);
    useSession.getState().redo();
    expect(along()).toBe("1 m");
  });

  it("makes one undo step of a gesture, and none of one that is cancelled", async () => {
    serverWith(demo.text);
    await useSession.getState().open("J1");
    const before = along();
    const { beginGesture, endGesture, cancelGesture } = useSession.getState();
    beginGesture("Move D1");
    moveFirst("1 m", "");
    moveFirst("2 m", "");
    endGesture();
    expect(useSession.getState().history.past.map(({ label }) => label)).toEqual(["Move D1"]);
    beginGesture("Move D1");
    moveFirst("3 m", "");
    cancelGesture();
    expect(along()).toBe("2 m");
    useSession.getState().undo();
    expect(along()).toBe(before);
  });

  it("takes back a gesture that is still open, and ends it where something else is done", async () => {
    serverWith(demo.text);
    await useSession.getState().open("J1");
    const before = along();
    const { beginGesture, undo } = useSession.getState();
    beginGesture("Move D1");
    expect(useSession.getState().canUndo, "nothing is changed yet").toBe(false);
    moveFirst("1 m", "");
    expect(useSession.getState().canUndo).toBe(true);
    moveFirst("2 m", "Along of D1");
    expect(useSession.getState().history.past.map(({ label }) => label)).toEqual(["Move D1", "Along of D1"]);
    beginGesture("Move D1");
    moveFirst("3 m", "");
    for (const place of ["2 m", "1 m", before]) {
      undo();
      expect(along()).toBe(place);
    }
  });

  it("saves on its base, and asks who saves before that", async () => {
    const { revisions } = serverWith(demo.text);
    await useSession.getState().open("J1");
    moveFirst("1 m");
    useSettings.getState().setWho("");
    await useSession.getState().save("why");
    expect(useSession.getState().saveProblem).toBeDefined();
    expect(revisions).toHaveLength(1);
    useSettings.getState().setWho("Pat");
    await useSession.getState().save("why");
    expect(useSession.getState()).toMatchObject({ base: 2, saveProblem: undefined, conflict: undefined });
    expect(useSession.getState().saved).toBe(useSession.getState().file);
    expect(contentOf(revisions[1]?.file ?? "")).toEqual(useSession.getState().file);
  });

  it("keeps both sides' changes by merge when someone saved first", async () => {
    const { revisions } = serverWith(demo.text);
    await useSession.getState().open("J1");
    revisions.push(revision(2, JSON.stringify({ ...demo.file, notes: ["theirs"] })));
    moveFirst("1 m");
    await useSession.getState().save("mine");
    expect(useSession.getState().conflict).toMatchObject({ latest: { number: 2 }, why: "mine", conflicts: [] });
    await useSession.getState().resolve({ how: "merge", choices: {} });
    expect(useSession.getState()).toMatchObject({ base: 3, conflict: undefined });
    expect(along()).toBe("1 m");
    expect(typedFile(useSession.getState().file).notes).toEqual(["theirs"]);
  });

  it("takes theirs, or keeps mine over theirs, where that is chosen", async () => {
    const { revisions } = serverWith(demo.text);
    await useSession.getState().open("J1");
    revisions.push(revision(2, JSON.stringify({ ...demo.file, notes: ["theirs"] })));
    moveFirst("1 m");
    await useSession.getState().save("mine");
    await useSession.getState().resolve({ how: "keep" });
    expect(revisions).toHaveLength(3);
    expect(contentOf(revisions[2]?.file ?? "")).toEqual(useSession.getState().file);
    revisions.push(revision(4, JSON.stringify({ ...demo.file, notes: ["theirs again"] })));
    moveFirst("2 m");
    await useSession.getState().save("mine");
    await useSession.getState().resolve({ how: "take" });
    expect(useSession.getState().base).toBe(4);
    expect(typedFile(useSession.getState().file).notes).toEqual(["theirs again"]);
  });

  it("follows a save by others at once while nothing is changed here, and only tells of it else", async () => {
    const { revisions } = serverWith(demo.text);
    await useSession.getState().open("J1");
    revisions.push(revision(2, JSON.stringify({ ...demo.file, notes: ["theirs"] })));
    await useSession.getState().heardSave("J1", 2, "Kim");
    expect(useSession.getState().base).toBe(2);
    moveFirst("1 m");
    await useSession.getState().heardSave("J1", 3, "Kim");
    expect(useSession.getState()).toMatchObject({ base: 2, newer: { number: 3, who: "Kim" } });
    expect(along()).toBe("1 m");
  });

  it.each([
    ["the slower one", ["J1", "J2"], ["J2", "J1"]],
    ["one that fails late", ["J0", "J2"], ["J2", "J0"]],
    ["an earlier question for itself", ["J0", "J2", "J2"], ["J2", "J0", "J2"]],
  ])("is the later of jobs opened in quick succession, whatever comes of %s", async (_, opened, answered) => {
    const asked: { readonly job: string; readonly answer: () => void }[] = [];
    vi.stubGlobal("fetch", (address: string) => {
      const job = address.slice("/api/jobs/".length);
      if (address.startsWith("/api/price-books")) return new Promise(() => undefined);
      const body = job === "J0" ? { code: "not_found", path: "", facts: {} } : { ...revision(1, demo.text), job };
      return new Promise((resolve) => {
        asked.push({ job, answer: () => resolve(new Response(JSON.stringify(body), { status: job === "J0" ? 404 : 200 })) });
      });
    });
    const opening = opened.map((job) => useSession.getState().open(job));
    expect(useSession.getState()).toMatchObject({ opening: "J2", job: undefined });
    for (const job of answered) {
      const at = asked.findIndex((one) => one.job === job);
      asked.splice(at, 1)[0]?.answer();
      await new Promise((resolve) => setTimeout(resolve));
    }
    await Promise.all(opening);
    expect(useSession.getState()).toMatchObject({ opening: undefined, job: { id: "J2" }, failed: undefined });
  });

  it("stays closed when it is closed before it came, and takes nothing of a save of the job before it", async () => {
    serverWith(demo.text);
    const opening = useSession.getState().open("J1");
    useSession.getState().close();
    await opening;
    expect(useSession.getState().job).toBeUndefined();
    await useSession.getState().open("J1");
    moveFirst("1 m");
    const saving = useSession.getState().save("why");
    await useSession.getState().open("J9");
    await saving;
    expect(useSession.getState()).toMatchObject({ job: undefined, base: 0, saving: false });
  });
});

const BROKEN = demo.text.slice(0, 400);

describe("a job whose text is no job file", () => {
  beforeEach(() => useSettings.getState().setWho("Pat"));
  afterEach(() => {
    useSession.getState().close();
    vi.unstubAllGlobals();
  });

  it.each([
    ["[]", { code: "type", path: "", line: 1 }],
    ["", { code: "json", line: 1, column: 1 }],
    [BROKEN, { code: "json", line: BROKEN.split("\n").length }],
    ['{ "format": "cornerpost-job",\n "units": "metric",\n "units": "imperial" }', { code: "repeated field", path: "units", line: 3 }],
  ])("is kept as typed, with what is wrong, and is neither edited nor saved: %j", async (text, issue) => {
    const { revisions } = serverWith(text);
    await useSession.getState().open("J1");
    expect(useSession.getState()).toMatchObject({ base: 1, unread: { text }, screen: undefined });
    expect(useSession.getState().unread?.issues).toContainEqual(expect.objectContaining(issue));
    await useSession.getState().save("an empty file over it");
    expect(revisions.map(({ file }) => file)).toEqual([text]);
  });

  it("opens all the same where only a byte order mark stands before it", async () => {
    serverWith(`\uFEFF${demo.text}`);
    await useSession.getState().open("J1");
    expect(useSession.getState()).toMatchObject({ unread: undefined, file: demo.file });
  });

  it("goes back to an earlier revision as the next one, and keeps what could not be read", async () => {
    const { revisions } = serverWith(demo.text);
    revisions.push(revision(2, BROKEN));
    await useSession.getState().open("J1");
    useSettings.getState().setWho(" ");
    await useSession.getState().goBack(1);
    expect(useSession.getState().saveProblem).toBeDefined();
    useSettings.getState().setWho("Pat");
    await useSession.getState().goBack(1);
    expect(revisions.map(({ file }) => file)).toEqual([demo.text, BROKEN, demo.text]);
    expect(useSession.getState()).toMatchObject({ base: 3, unread: undefined, file: demo.file, saving: false });
  });

  it("gives way to what someone else saved meanwhile, whether heard of or met while going back", async () => {
    const { revisions } = serverWith(demo.text);
    revisions.push(revision(2, BROKEN));
    await useSession.getState().open("J1");
    revisions.push(revision(3, demo.text));
    await useSession.getState().goBack(1);
    expect(revisions).toHaveLength(3);
    expect(useSession.getState()).toMatchObject({ base: 3, unread: undefined });
    revisions.push(revision(4, "[]"));
    await useSession.getState().heardSave("J1", 4, "Kim");
    expect(useSession.getState()).toMatchObject({ base: 4, unread: { text: "[]" } });
    revisions.push(revision(5, demo.text));
    await useSession.getState().heardSave("J1", 5, "Kim");
    expect(useSession.getState()).toMatchObject({ base: 5, unread: undefined, file: demo.file });
  });
});
