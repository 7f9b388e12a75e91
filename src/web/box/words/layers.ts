import { under, type WordsTable } from "./words.ts";

const foam: WordsTable = {
  ".row": { name: "Foam", says: "which foam is sprayed" },
  ".thickness": { name: "Thickness", says: "from the inside plane of the sheet; what fills its troughs comes on top" },
};

const boards: WordsTable = {
  "[].row": { name: "Board", says: "which board, plate or panel" },
  "[].lay": { name: "Lay", says: "which way the long side runs", why: "long sides along the studs leave the fewest seams" },
};

const coats: WordsTable = {
  "[].row": { name: "Coating", says: "which paint or coating" },
  "[].coats": { name: "Coats", says: "how many coats, one on the other" },
};

/** Words for build-ups, faces, floor and coatings. */
export const LAYER_WORDS: WordsTable = {
  buildUps: { name: "Build-ups", says: "the layers on a face, from the skin inward" },
  "buildUps{}.what": { name: "In words", says: "what it is for, printed beside its name" },
  "buildUps{}.foam": { name: "Foam", says: "sprayed on the skin", why: "nothing is sprayed" },
  ...under("buildUps{}.foam", foam),
  "buildUps{}.studs": { name: "Studs", says: "upright bars in tracks that carry the boards", why: "boards lie on the foam or on a leaf's own frame" },
  "buildUps{}.studs.row": { name: "Stud", says: "section of the studs" },
  "buildUps{}.studs.track": { name: "Track", says: "section of the tracks; it has to hold the stud" },
  "buildUps{}.studs.pitch": { name: "Pitch", says: "from one stud to the next; board sizes are made for 16 in and 24 in" },
  "buildUps{}.studs.standOff": { name: "Stand-off", says: "gap from the inside plane to the back of the studs, filled with foam", why: "studs stand on the inner flats, which leaves most room" },
  "buildUps{}.studs.cornerPull": { name: "Pulled from corners", says: "clear distance from a corner to the first stud", why: "a foam gun needs about this much to reach into a corner" },
  "buildUps{}.batts": { name: "Batts", says: "wool between the studs, flush with their inner side", why: "foam alone insulates, or nothing does" },
  "buildUps{}.batts.row": { name: "Batt", says: "which wool, how thick, and for which pitch of studs" },
  "buildUps{}.furring": { name: "Furring", says: "bars across the studs, on their inner side", why: "boards lie on the studs themselves" },
  "buildUps{}.furring.row": { name: "Bar", says: "section of the furring" },
  "buildUps{}.furring.pitch": { name: "Pitch", says: "from one bar to the next" },
  "buildUps{}.furring.temporary": { name: "Comes off again", says: "only guides the foam, then comes off", why: "furring stays, unless it is there for the foam gun" },
  "buildUps{}.boards": { name: "Boards", says: "layers of boards, from the studs inward", why: "no boards" },
  ...under("buildUps{}.boards", boards),
  "buildUps{}.paint": { name: "Paint", says: "coats on the last board, first one first", why: "no paint" },
  ...under("buildUps{}.paint", coats),
  faces: { name: "Faces", says: "what is built on each face" },
  ...Object.fromEntries((["left", "right", "roof", "blindEnd", "doorEnd"] as const).flatMap((face) => faceWords(face))),
  "faces.doorEnd.cargoDoors": { name: "Cargo doors", says: "whether they go on working after the conversion" },
  "faces.doorEnd.leafLining": { name: "Lining of the leaves", says: "build-up on the inside of each cargo door leaf", why: "the leaves stay bare" },
  ceilingFirst: { name: "Ceiling boards first", says: "ceiling boards go up first and stand on the wall boards", why: "the wall boards then hold the ceiling's edge up" },
  floor: { name: "Floor", says: "layers from the bare floor up" },
  "floor.laid": { name: "Laid", says: "before the walls, with studs on top, or after them, cut to the finished walls", why: "a floor laid last is not worked on by the other crews" },
  "floor.layers": { name: "Layers", says: "boards, plates and coverings, from the bare floor up", why: "the bare floor stays" },
  ...under("floor.layers", boards),
  "floor.foam": { name: "Foam from below", says: "sprayed against the bare floor between the cross-members", why: "nothing is sprayed from below" },
  ...under("floor.foam", foam),
  coatings: { name: "Coatings", says: "coats on the box's steel", why: "the steel stays as bought" },
  "coatings.outside": { name: "Outside walls", says: "coats on the walls and doors, first one first", why: "no coats" },
  ...under("coatings.outside", coats),
  "coatings.roof": { name: "Roof", says: "coats on top of the roof, first one first", why: "no coats" },
  ...under("coatings.roof", coats),
  "coatings.underside": { name: "Underside", says: "coats under the floor, first one first", why: "no coats" },
  ...under("coatings.underside", coats),
};

function faceWords(face: "left" | "right" | "roof" | "blindEnd" | "doorEnd"): readonly (readonly [string, WordsTable[string]])[] {
  const names = { left: "Left wall", right: "Right wall", roof: "Roof", blindEnd: "Blind end", doorEnd: "Door end" };
  return [
    [`faces.${face}`, { name: names[face], says: "what is built on it" }],
    [`faces.${face}.buildUp`, { name: "Build-up", says: face === "doorEnd" ? "a framed wall inside the cargo doors" : "its layers from the skin inward", why: "nothing is built here" }],
    [`faces.${face}.studsFrom`, { name: "Studs from", says: "the end that the pitch is counted from", why: "either end will do; the last bay takes the rest" }],
  ];
}
