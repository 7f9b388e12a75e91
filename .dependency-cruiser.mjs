import { SEES } from "./layers.mjs";

const ROOMS = Object.keys(SEES);
const ANY_ROOM = `^src/(${ROOMS.join("|")})/`;
const TEST_FILE = "[.]test[.]ts$";

/**
 * @param {string} room
 * @param {readonly string[]} sees
 * @returns {import("dependency-cruiser").IForbiddenRuleType}
 */
function seesTooFar(room, sees) {
  return {
    name: `${room}-sees-too-far`,
    comment: `${room} may import ${sees.length === 0 ? "no other room" : sees.join(", ")}; see layers.mjs.`,
    severity: "error",
    from: { path: `^src/${room}/` },
    to: { path: "^src/", pathNot: `^src/(${[room, ...sees].join("|")})/` },
  };
}

/** @type {import("dependency-cruiser").IConfiguration} */
export default {
  forbidden: [
    ...Object.entries(SEES).map(([room, sees]) => seesTooFar(room, sees)),
    {
      name: "front-door-only",
      comment: "Enter another room by a file directly in its folder, never by a deeper file.",
      severity: "error",
      from: { path: "^src/([^/]+)/" },
      to: { path: "^src/[^/]+/[^/]+/", pathNot: "^src/$1/" },
    },
    {
      name: "one-check-knows-no-other",
      comment: "What two checks share lies directly in src/checks/, or in physics/ or build/.",
      severity: "error",
      from: { path: "^src/checks/([^/]+)/" },
      to: { path: "^src/checks/[^/]+/", pathNot: "^src/checks/$1/" },
    },
    {
      name: "no-circular",
      comment: "Two files that need each other are one file, or both need a third.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "not-to-test",
      comment: "Code that ships does not lean on tests.",
      severity: "error",
      from: { path: "^src/", pathNot: TEST_FILE },
      to: { path: ["^test/", TEST_FILE] },
    },
    {
      name: "not-to-dev-dependency",
      comment: "Code that ships imports only what package.json lists under dependencies.",
      severity: "error",
      from: { path: "^src/", pathNot: TEST_FILE },
      to: { dependencyTypes: ["npm-dev"] },
    },
    {
      name: "unknown-room",
      comment: "A folder in src/ has a row in layers.mjs, and no file lies in src/ itself.",
      severity: "error",
      from: { path: "^src/", pathNot: ANY_ROOM },
      to: {},
    },
    {
      name: "unknown-room",
      comment: "A folder in src/ has a row in layers.mjs, and no file lies in src/ itself.",
      severity: "error",
      from: {},
      to: { path: "^src/", pathNot: ANY_ROOM },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
  },
};
