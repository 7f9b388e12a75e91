// How pictures are lettered: the face of all drawings and the width of its letters.
export { FONT_FAMILY, CAPITAL, textWidth } from "./sheet/text.ts";
