import { expose } from "comlink";
import { makeRunner } from "./runner.ts";

expose(makeRunner());
