#!/usr/bin/env node
// Starts the server, after building the app's page where it is missing or old.
import { register } from "tsx/esm/api";
import { buildPage } from "./buildPage.mjs";

const ONLY_DATA = ["backup", "restore", "--help", "-h"];
if (!process.argv.slice(2).some((word) => ONLY_DATA.includes(word))) buildPage();

register();
await import("../src/server/main.ts");
