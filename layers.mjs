/**
 * The one table of rooms and what each may import besides itself. The dependency rules, the lint rules and the tests
 * are made from it; a new folder in src/ gets its row here first.
 *
 * @type {Readonly<Record<string, readonly string[]>>}
 */
export const SEES = {
  units: [],
  working: ["units"],
  geometry: ["units"],
  physics: ["units", "working", "geometry"],
  catalogue: ["units", "working"],
  job: ["units", "working", "catalogue"],
  build: ["units", "working", "geometry", "catalogue", "job"],
  checks: ["units", "working", "geometry", "physics", "catalogue", "job", "build"],
  takeoff: ["units", "working", "geometry", "catalogue", "job", "build"],
  drawings: ["units", "working", "geometry", "catalogue", "job", "build"],
  price: ["units", "working", "geometry", "catalogue", "job", "build", "takeoff"],
  plan: ["units", "working", "geometry", "catalogue", "job", "build", "takeoff"],
  papers: [
    "units", "working", "geometry", "physics", "catalogue", "job", "build", "checks", "takeoff", "drawings", "price", "plan",
  ],
  river: [
    "units", "working", "geometry", "physics", "catalogue", "job", "build", "checks", "takeoff", "drawings", "price", "plan",
    "papers",
  ],
  store: ["units", "job"],
  server: ["units", "working", "job", "river", "store"],
  cli: ["units", "working", "job", "river", "store"],
  web: ["units", "working", "job", "river"],
};

/** Rooms that may touch the world: disk, clock, network, screen. Every other room is pure. */
export const WORLDLY_ROOMS = ["store", "server", "cli", "web"];

/** Rooms whose code gives the same answer in a browser worker, on the command line and on a server. */
export const PURE_ROOMS = Object.keys(SEES).filter((room) => !WORLDLY_ROOMS.includes(room));
