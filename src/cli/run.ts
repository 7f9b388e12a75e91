import { parseArgs } from "node:util";
import { StageError } from "../river/river.ts";
import { check } from "./check.ts";
import { foam } from "./foam.ts";
import { HELP } from "./help.ts";
import { pack } from "./pack.ts";
import { UserError } from "./readText.ts";
import type { Terminal } from "./terminal.ts";

/** Runs one command line and gives its exit code: 0 done, 1 hindered, 2 where `check` finds a stop. */
export function run(args: readonly string[], terminal: Terminal): number {
  try {
    return command(args, terminal);
  } catch (error) {
    if (error instanceof UserError) terminal.error(`cornerpost: ${error.message}`);
    else if (error instanceof StageError) terminal.error(`cornerpost: ${error.message}\n${NOT_YOUR_FAULT}`);
    else throw error;
    return 1;
  }
}

const NOT_YOUR_FAULT = "This is a fault of the program, not of the job file. Nothing was written.";

function command(args: readonly string[], terminal: Terminal): number {
  const { values, positionals } = parsed(args);
  const [name = "help", ...rest] = positionals;
  if (values.help === true || name === "help") {
    terminal.out(HELP);
    return 0;
  }
  if (name !== "pack" && name !== "check" && name !== "foam") throw new UserError(`there is no command "${name}"; try: cornerpost help`);
  const [jobPath, ...more] = rest;
  if (jobPath === undefined) throw new UserError(`${name} needs a job file: cornerpost ${name} <job file>`);
  if (more.length > 0) throw new UserError(`${name} takes one job file; "${more.join(" ")}" is too much`);
  if (name !== "pack") refuse(values.into, "--into", name);
  if (name !== "foam") refuse(values["build-up"], "--build-up", name);
  if (name === "check") {
    refuse(values.book, "--book", name);
    return check(jobPath, values.working === true, terminal);
  }
  refuse(values.working, "--working", name);
  if (name === "foam") return foam({ jobPath, bookPath: values.book, buildUp: values["build-up"] }, terminal);
  if (values.into === undefined) throw new UserError("pack needs a folder: cornerpost pack <job file> --into <folder>");
  return pack({ jobPath, folder: values.into, bookPath: values.book }, terminal);
}

function refuse(value: string | boolean | undefined, option: string, name: string): void {
  if (value !== undefined) throw new UserError(`${name} does not take ${option}; try: cornerpost help`);
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        into: { type: "string" },
        book: { type: "string" },
        "build-up": { type: "string" },
        working: { type: "boolean" },
        help: { type: "boolean", short: "h" },
      },
    });
  } catch (error) {
    throw new UserError(`${error instanceof Error ? error.message : String(error)}; try: cornerpost help`);
  }
}
