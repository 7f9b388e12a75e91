import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import chromium from "@sparticuz/chromium";
import type { TestProject } from "vitest/node";
import { buildPage } from "../../bin/buildPage.mjs";

declare module "vitest" {
  interface ProvidedContext {
    /** The browser's program. */
    readonly chromium: string;
    /** Where libraries are found that the machine lacks; "" where it has them all. */
    readonly libraries: string;
  }
}

/** Builds the page and unpacks the browser, once for all files. */
export async function setup(project: TestProject): Promise<void> {
  buildPage();
  const program = await chromium.executablePath();
  const starts = spawnSync(program, ["--version"]).status === 0;
  project.provide("chromium", program);
  project.provide("libraries", starts ? "" : await unpackLibraries(program));
}

/** The browser's package carries the libraries that a bare machine lacks, and unpacks them where it is told that it is on one. */
async function unpackLibraries(program: string): Promise<string> {
  process.env["AWS_LAMBDA_JS_RUNTIME"] = "nodejs22.x";
  rmSync(program);
  await chromium.executablePath();
  return join(tmpdir(), "al2023", "lib");
}
