// Copies a database into a new file while others write to it, and looks whether the copy is sound. Runs in a thread of its
// own: the copy takes as long as the disk needs, and the server goes on answering.
import { workerData } from "node:worker_threads";
import Database from "libsql";

/** @type {unknown} */
const given = workerData;
const { from, into } = /** @type {{ from: string, into: string }} */ (given);
const source = new Database(from);
source.pragma("busy_timeout = 5000");
source.prepare("vacuum into ?").run([into]);
source.close();

const copy = new Database(into);
const said = JSON.stringify([copy.pragma("integrity_check"), copy.pragma("foreign_key_check")]);
copy.close();
if (said !== '[[{"integrity_check":"ok"}],[]]') throw new Error(`the copy is not sound: ${said}`);
