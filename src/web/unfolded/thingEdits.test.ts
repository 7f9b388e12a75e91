import { describe, expect, it } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import { readJobValue } from "../../job/read.ts";
import type { JobFile } from "../../job/file.ts";
import type { Draft } from "../box/edits.ts";
import { removeThing } from "../box/things.ts";
import { makeScreenRiver, type Rect, type Screen } from "../../river/screen.ts";
import { typedFile, type JobFileDraft } from "../state/typedFile.ts";
import { copyThing, placeThing, surfaceOfThing, takeSize } from "./thingEdits.ts";
import { thingsOf, type Thing } from "./things.ts";

const CASES = DEMO_JOBS.map(({ name, file, job, book }) => ({ name, file, screen: makeScreenRiver().run(job, book) }));

/** Places a thing and gives what the file says afterwards. */
function placed(file: JobFile, screen: Screen, thing: Thing, rect: Rect): JobFile {
  const draft = structuredClone(file) as unknown as JobFileDraft;
  const surface = surfaceOfThing(screen, thing);
  if (surface !== undefined) placeThing(draft, thing, rect, surface);
  return draft as unknown as JobFile;
}

const shifted = ({ u0, u1, v0, v1 }: Rect, u: number, v: number): Rect => ({ u0: u0 + u, u1: u1 + u, v0: v0 + v, v1: v1 + v });

describe.each(CASES)("things of $name", ({ file, screen }) => {
  const things = thingsOf(file, screen);

  it("stand where the build has them", () => {
    for (const { opening, clear } of screen.build.openings) {
      const thing = things.find(({ id }) => id === opening.id);
      for (const edge of ["u0", "u1", "v0", "v1"] as const) expect(thing?.rect[edge]).toBeCloseTo(clear[edge], 9);
    }
    for (const part of screen.build.parts.filter(({ role }) => role === "item")) {
      const thing = things.find(({ id, surface }) => id === part.of && surface === "floor");
      for (const edge of ["u0", "u1", "v0", "v1"] as const) expect(thing?.rect[edge]).toBeCloseTo(part.rect[edge], 9);
    }
    expect(things.filter(({ kind }) => kind === "partition").map(({ id }) => id)).toEqual(typedFile(file).partitions?.map(({ id }) => id) ?? []);
  });

  it("leave the file as typed when they are put where they are", () => {
    for (const thing of things) expect(placed(file, screen, thing, thing.rect)).toEqual(file);
  });

  it("are found again where they were put, to half a millimetre or a thirty-second of an inch", () => {
    for (const thing of things) {
      const to = shifted(thing.rect, 0.1, thing.moves.v ? 0.05 : 0);
      const after = thingsOf(placed(file, screen, thing, to), screen).find(({ id, surface }) => id === thing.id && surface === thing.surface);
      for (const edge of ["u0", "u1", "v0", "v1"] as const) expect(Math.abs((after?.rect[edge] as number) - to[edge])).toBeLessThan(1e-3);
    }
  });

  it("take a pulled edge and leave the one across", () => {
    for (const thing of things.filter(({ pulls }) => pulls.u)) {
      const to = { ...thing.rect, u1: thing.rect.u1 + 0.05 };
      const after = thingsOf(placed(file, screen, thing, to), screen).find(({ id, surface }) => id === thing.id && surface === thing.surface);
      expect(Math.abs((after?.rect.u0 as number) - to.u0)).toBeLessThan(1e-3);
      expect(Math.abs((after?.rect.u1 as number) - to.u1)).toBeLessThan(2e-3);
    }
  });

  it("still make a job that reads when one is copied or taken away", () => {
    for (const { kind, id } of things) {
      const copied = structuredClone(file) as unknown as JobFileDraft;
      const copy = copyThing(copied, kind, id);
      expect(copy === undefined).toBe(kind === "partition");
      expect(copy).not.toBe(id);
      if (kind === "partition") continue;
      expect(readJobValue(copied).ok).toBe(true);
      const gone = structuredClone(file) as unknown as JobFileDraft;
      removeThing(gone as unknown as Draft, kind === "item" ? "items" : "openings", id);
      expect(readJobValue(gone).ok).toBe(true);
    }
  });

  it("are not pulled where their article says the size, and are once it is typed", () => {
    const ofArticle = typedFile(file).openings?.filter(({ article, size }) => article !== undefined && size === undefined).map(({ id }) => id) ?? [];
    for (const { id, kind, pulls } of things) if (kind === "opening") expect(pulls.u, id).toBe(!ofArticle.includes(id));
    for (const thing of things.filter(({ id }) => ofArticle.includes(id))) {
      const draft = structuredClone(file) as unknown as JobFileDraft;
      takeSize(draft, thing);
      expect(readJobValue(draft).ok).toBe(true);
      const after = thingsOf(draft as unknown as JobFile, screen).find(({ id }) => id === thing.id);
      expect(after?.pulls).toEqual({ u: true, v: true });
      expect(Math.abs((after?.rect.u1 as number) - thing.rect.u1)).toBeLessThan(1e-3);
    }
  });
});
