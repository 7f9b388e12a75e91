// What tells how much foam a build-up needs: the front door for the river's help.
export { barrierOf } from "./envelope/findings/vapourFindings.ts";
export { yearlyHeatOf } from "./envelope/heat/yearlyHeat.ts";
export { type CriterionAnswer, faceAnswers, type FaceAnswers, SURFACE_CRITERIA } from "./envelope/help/faceAnswers.ts";
