// The thread in which the server makes packs.
import { register } from "tsx/esm/api";

register();
await import("../src/server/packWorker.ts");
