import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { revision, serverWith } from "../../../test/serverOfOneJob.ts";
import type { JobFile } from "../../job/file.ts";
import { useSession } from "./session.ts";
import { hasChanges } from "./sessionData.ts";
import { useSettings } from "./settings.ts";
import { typedFile } from "./typedFile.ts";

const [demo] = DEMO_JOBS;
if (demo === undefined) throw new Error("there is no demo job");

const theirs = (note: string): string => JSON.stringify({ ...demo.file, notes: [note] });
const notes = (): readonly string[] | undefined => typedFile(useSession.getState().file).notes;
const write = (note: string): void => useSession.getState().edit("Note", (draft) => void (draft.notes = [note]));
const changes = (): boolean => hasChanges(useSession.getState());

describe("what is undone when two work on a job", () => {
  beforeEach(() => useSettings.getState().setWho("Pat"));
  afterEach(() => {
    useSession.getState().close();
    vi.unstubAllGlobals();
  });

  it("is theirs, where theirs was taken and mine dropped: mine comes back on the new base", async () => {
    const { revisions } = serverWith(demo.text);
    await useSession.getState().open("J1");
    write("mine");
    revisions.push(revision(2, theirs("theirs")));
    await useSession.getState().save("mine");
    await useSession.getState().resolve({ how: "take" });
    expect(useSession.getState()).toMatchObject({ base: 2, conflict: undefined, canUndo: true });
    expect([notes(), changes()]).toEqual([["theirs"], false]);
    useSession.getState().undo();
    expect([notes(), changes()]).toEqual([["mine"], true]);
    await useSession.getState().save("mine after all");
    expect(JSON.parse(revisions[2]?.file ?? "") as JobFile).toMatchObject({ notes: ["mine"] });
  });

  it("is their save and then what I did before it, where theirs came while I had nothing to save", async () => {
    const { revisions } = serverWith(demo.text);
    await useSession.getState().open("J1");
    write("mine");
    await useSession.getState().save("mine");
    revisions.push(revision(3, theirs("theirs")));
    await useSession.getState().heardSave("J1", 3, "Kim");
    expect(useSession.getState()).toMatchObject({ base: 3, newer: undefined });
    expect(notes()).toEqual(["theirs"]);
    expect(useSession.getState().history.past.map(({ label }) => label)).toEqual(["Note", "revision 3 by A"]);
    useSession.getState().undo();
    expect(notes()).toEqual(["mine"]);
    useSession.getState().undo();
    expect(notes()).toEqual(typedFile(demo.file).notes);
  });

  it("goes on from what was changed and changed back as from no change", async () => {
    const { revisions } = serverWith(demo.text);
    await useSession.getState().open("J1");
    write("mine");
    expect(changes()).toBe(true);
    useSession.getState().edit("Note", (draft) => void (draft.notes = [...(typedFile(demo.file).notes ?? [])]));
    expect(useSession.getState().file).not.toBe(useSession.getState().saved);
    expect(changes()).toBe(false);
    revisions.push(revision(2, theirs("theirs")));
    await useSession.getState().heardSave("J1", 2, "Kim");
    expect(useSession.getState()).toMatchObject({ base: 2, newer: undefined });
  });

  it("keeps in mind what it hears while its own save is not answered", async () => {
    serverWith(demo.text, (revisions) => {
      revisions.push(revision(3, theirs("theirs")));
      void useSession.getState().heardSave("J1", 3, "Kim");
    });
    await useSession.getState().open("J1");
    write("mine");
    await useSession.getState().save("mine");
    await expect.poll(() => useSession.getState().base).toBe(3);
    expect(notes()).toEqual(["theirs"]);
  });

  it("brings an earlier revision back as a step, and refuses one that is no job file", async () => {
    const { revisions } = serverWith(demo.text);
    revisions.push(revision(2, "[]"), revision(3, theirs("theirs")));
    await useSession.getState().open("J1");
    await expect(useSession.getState().bringBack(2)).rejects.toThrow("Revision 2 is no job file.");
    await useSession.getState().bringBack(1);
    expect([useSession.getState().base, notes(), changes()]).toEqual([3, typedFile(demo.file).notes, true]);
    useSession.getState().undo();
    expect([notes(), changes()]).toEqual([["theirs"], false]);
  });
});
