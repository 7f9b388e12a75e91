import { builtinModules } from "node:module";
import { defineConfig } from "eslint/config";
import tseslint from "typescript-eslint";
import { PURE_ROOMS } from "./layers.mjs";

const PURE_FILES = PURE_ROOMS.map((room) => `src/${room}/**/*.ts`);
const TEST_FILES = ["src/**/*.test.ts", "test/**/*.ts"];
/** Files that the page, or a browser that is told what to do, runs. */
const WEB_FILES = ["src/web/**/*.{ts,tsx}", "test/browser/**/*.ts"];
const CONFIG_FILES = ["*.config.{mjs,ts}", ".dependency-cruiser.mjs"];
// These two load the Typst binary and put bytes together for the disk; they leave the river after its last pure stage.
const NODE_FILES = ["src/river/pack.ts", "src/papers/pdf.ts"];

const CLOCK = "Pure code has no clock: take the moment as an argument.";
const DISK = "Pure code has no disk, network or process: take the content as an argument and let cli or server fetch it.";
const SCREEN = "Pure code has no screen or network: return plain data and let web or server show or send it.";
const TIMER = "Pure code does not wait: return a value and let cli, server or web decide when to ask.";
const ABSENT = "Missing is never zero: branch on undefined, and raise an issue or a note that names the missing input.";

/** Syntax that no file uses. */
const SYNTAX = [
  { selector: "ExportAllDeclaration", message: "Name each export; a room's front door is a file with a name of its own." },
  {
    selector: ":matches(Program, Program > ExportNamedDeclaration) > VariableDeclaration[kind='let']",
    message: "No state between calls: use const, or keep the state in an object that the caller makes and passes.",
  },
  { selector: "LogicalExpression[operator=/^(\\?\\?|\\|\\|)$/][right.value=0]", message: ABSENT },
  { selector: "AssignmentExpression[operator=/^(\\?\\?=|\\|\\|=)$/][right.value=0]", message: ABSENT },
];

/** Syntax that no file but a tool's configuration uses. */
const NO_DEFAULT_EXPORT = [
  {
    selector: ":matches(ExportDefaultDeclaration, ExportSpecifier[exported.name='default'])",
    message: "Use a named export, so that the thing has one name everywhere.",
  },
];

const NO_CLOCK = [
  { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: CLOCK },
  { selector: "CallExpression[callee.name='Date']", message: CLOCK },
];

const NO_IDLE_TEST = [
  {
    selector:
      "MemberExpression[object.name=/^(describe|test|it|suite)$/][property.name=/^(skip|only|todo|fails|skipIf|runIf)$/]",
    message: "A test that does not run holds nothing: make it pass, or delete it.",
  },
];

const SCREEN_GLOBALS = ["window", "document", "navigator", "location", "fetch", "XMLHttpRequest", "WebSocket", "self"];
const STORAGE_GLOBALS = ["localStorage", "sessionStorage", "indexedDB"];
const NODE_GLOBALS = ["process", "Buffer", "global", "globalThis", "require", "__dirname", "__filename"];
const TIMER_GLOBALS = ["setTimeout", "setInterval", "setImmediate", "clearTimeout", "clearInterval", "queueMicrotask"];

/** @param {readonly string[]} names @param {string} message */
const banned = (names, message) => names.map((name) => ({ name, message }));

const WORLD_GLOBALS = [
  ...banned(SCREEN_GLOBALS, SCREEN),
  ...banned(STORAGE_GLOBALS, DISK),
  ...banned(TIMER_GLOBALS, TIMER),
  ...banned(["performance"], CLOCK),
  ...banned(["crypto"], "Pure code draws no random numbers: take a seed as an argument."),
];

const WORLD_IMPORTS = [
  { regex: "^(react|react-dom|react-[^/]+)(/|$)", message: SCREEN },
  { regex: "^(libsql|better-sqlite3|kysely|pg|@electric-sql/[^/]+)(/|$)", message: "Pure code knows no database: store does." },
  { regex: "^(hono|@hono/[^/]+|express|fastify|undici|axios)(/|$)", message: SCREEN },
];

const NODE_IMPORTS = [{ regex: `^(node:.*|(${builtinModules.join("|")})(/.*)?)$`, message: DISK }];

export default defineConfig(
  { ignores: ["node_modules/", "dist/", "out/", "coverage/"] },
  { linterOptions: { noInlineConfig: true, reportUnusedDisableDirectives: "error" } },
  tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      eqeqeq: "error",
      "no-var": "error",
      "no-restricted-syntax": ["error", ...SYNTAX, ...NO_DEFAULT_EXPORT],
      "@typescript-eslint/ban-ts-comment": ["error", { "ts-expect-error": true }],
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
      "@typescript-eslint/no-floating-promises": "error",
      // Text is taken apart by code points, which is what measuring and matching it needs.
      "@typescript-eslint/no-misused-spread": ["error", { allow: ["string"] }],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/strict-boolean-expressions": ["error", { allowNumber: false }],
      "@typescript-eslint/switch-exhaustiveness-check": "error",
    },
  },
  {
    files: WEB_FILES,
    languageOptions: { parserOptions: { projectService: false, project: "./tsconfig.web.json", tsconfigRootDir: import.meta.dirname } },
  },
  {
    files: ["src/**/*.{ts,tsx}"],
    rules: { "max-lines": ["error", { max: 300, skipBlankLines: false, skipComments: false }] },
  },
  {
    files: PURE_FILES,
    rules: {
      "no-console": "error",
      "no-restricted-globals": ["error", ...WORLD_GLOBALS, ...banned(NODE_GLOBALS, DISK)],
      "no-restricted-imports": ["error", { patterns: [...WORLD_IMPORTS, ...NODE_IMPORTS] }],
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random", message: "Pure code draws no random numbers: take a seed as an argument." },
        { object: "Date", property: "now", message: CLOCK },
      ],
      "no-restricted-syntax": ["error", ...SYNTAX, ...NO_DEFAULT_EXPORT, ...NO_CLOCK],
    },
  },
  {
    files: NODE_FILES,
    rules: {
      "no-restricted-globals": ["error", ...WORLD_GLOBALS],
      "no-restricted-imports": ["error", { patterns: WORLD_IMPORTS }],
    },
  },
  {
    files: TEST_FILES,
    rules: {
      "max-lines": ["error", { max: 500, skipBlankLines: false, skipComments: false }],
      "no-restricted-syntax": ["error", ...SYNTAX, ...NO_DEFAULT_EXPORT, ...NO_CLOCK, ...NO_IDLE_TEST],
      "@typescript-eslint/no-non-null-assertion": "off",
      // A test may show that the compiler refuses something, if it says what.
      "@typescript-eslint/ban-ts-comment": ["error", { "ts-expect-error": "allow-with-description" }],
    },
  },
  {
    files: CONFIG_FILES,
    rules: { "no-restricted-syntax": ["error", ...SYNTAX] },
  },
);
