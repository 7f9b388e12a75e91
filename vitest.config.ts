import { defineConfig } from "vitest/config";

const BROWSER = "test/browser/**/*.test.ts";

export default defineConfig({
  test: {
    pool: "forks",
    allowOnly: false,
    projects: [
      {
        test: {
          name: "rooms",
          include: ["src/**/*.test.ts", "test/**/*.test.ts"],
          exclude: [BROWSER],
          globalSetup: ["test/postgres.ts"],
          testTimeout: 30_000,
          maxWorkers: 2,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: "browser",
          include: [BROWSER],
          globalSetup: ["test/browser/setup.ts"],
          // A browser, a server and a worker share the machine already: one file after the other, and time to wait for states.
          testTimeout: 240_000,
          hookTimeout: 120_000,
          maxWorkers: 1,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
