import type { Check, Finding } from "../check.ts";
import { makeContext } from "../context.ts";
import { studyEnvelope } from "../envelope.ts";
import { findingMaker } from "../finding.ts";
import { sayIn } from "../say.ts";
import { heatFindings } from "./findings/heatFindings.ts";
import { surfaceFindings } from "./findings/surfaceFindings.ts";
import { vapourFindings } from "./findings/vapourFindings.ts";
import { dampRooms } from "./moisture/rooms.ts";
import { SENTENCES } from "./sentences.ts";

/** Heat and moisture through the real sections of the box. See docs/checks/envelope.md. */
export const envelope: Check = {
  id: "envelope",
  asks: "What heat does the box lose through its real sections, and do surfaces and layers stay dry?",
  needs: ["rooms", "site.monthly", "site.winterDesign", "faces", "buildUps", "openings"],
  leavesOut:
    "faces that no section shows in the room beside them: a face that bounds two rooms is cut once; heat along the third direction: corners of three faces, corner fittings, fasteners, ends of studs, small openings; air that leaks or is moved; sun, sky and ground; vapour carried by air; heat and moisture stored; coats and trim. Posts and rails are taken as closed hollows of their mass, doors and windows by a usual transmittance",
  decides: "the designer of record and the local energy code, with the data of the products bought",
  isSlow: true,
  run(build, context = makeContext()) {
    const make = findingMaker("envelope", SENTENCES, sayIn(build.job.units));
    const study = studyEnvelope(build, context);
    const { rooms, unstated } = dampRooms(build);
    const isHeated = rooms.length + unstated.length > 0;
    const missing: readonly Finding[] = [
      ...(isHeated ? [] : [make("no heated room", {}, { verdict: "note", at: "rooms", about: [] })]),
      ...unstated.map(({ placed, field, environment }) => make("humidity not stated", { room: placed.name, field }, { verdict: "note", at: `${environment}/humidity`, about: [environment] })),
      ...(isHeated && build.job.site.monthly === undefined ? [make("months not stated", {}, { verdict: "note", at: "months", about: [] })] : []),
    ];
    return [...missing, ...heatFindings(build, study, make), ...surfaceFindings(build, study, rooms, make), ...vapourFindings(build, rooms, make)];
  },
};
