import { spawn } from "node:child_process";
import { once } from "node:events";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { newFolder } from "../../test/engines.ts";
import { lockFolder } from "./folderLock.ts";

const ADDRESS = "http://127.0.0.1:4310";

it("gives a folder to one at a time, and tells the second where the first is", () => {
  const folder = join(newFolder(), "new");
  const lock = lockFolder(folder);
  expect(() => lockFolder(folder)).toThrow(expect.objectContaining({ code: "folder_in_use", address: undefined }));
  lock.tellAddress(ADDRESS);
  expect(() => lockFolder(folder)).toThrow(expect.objectContaining({ code: "folder_in_use", address: ADDRESS }));
  expect(() => lockFolder(folder)).toThrow(ADDRESS);
  lock.release();
  lockFolder(folder).release();
});

it("says so where the folder is no folder", () => {
  const path = join(newFolder(), "file");
  writeFileSync(path, "");
  expect(() => lockFolder(path)).toThrow(expect.objectContaining({ code: "unreachable" }));
});

it("is free again the moment that the process that held it was killed, whatever it left behind", async () => {
  const folder = newFolder();
  const program = `
    import { register } from "tsx/esm/api";
    register();
    const { lockFolder } = await import("./src/store/folderLock.ts");
    globalThis.lock = lockFolder(${JSON.stringify(folder)});
    globalThis.lock.tellAddress(${JSON.stringify(ADDRESS)});
    process.stdout.write("held");
    setInterval(() => undefined, 1000);`;
  const holder = spawn(process.execPath, ["--input-type=module", "-e", program], { stdio: ["ignore", "pipe", "inherit"] });
  await once(holder.stdout, "data");
  expect(() => lockFolder(folder)).toThrow(expect.objectContaining({ code: "folder_in_use", address: ADDRESS }));
  holder.kill("SIGKILL");
  await once(holder, "exit");
  const lock = lockFolder(folder);
  // The address of the dead one is not told.
  expect(() => lockFolder(folder)).toThrow(expect.objectContaining({ address: undefined }));
  lock.release();
});
