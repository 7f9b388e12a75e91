/** One way of writing what many keyboards write: see the table of marks in parse.test.ts. */
export function normaliseText(text: string): string {
  return text
    .replace(/[\u00BC-\u00BE\u2150-\u215E]/g, " $&") // 1½ is one and a half, not eleven halves
    .replace(/[\u2033\u201C\u201D\u201E\u201F\u02BA\u02DD\u02EE\u3003]/g, '"')
    .replace(/[\u2032\u2018\u2019\u201A\u201B\u02B9\u02BC\u02C8\u00B4\u0060]/g, "'")
    .replace(/[\u00BA\u02DA]/g, "°")
    .replace(/10(?=[⁺⁻]?[⁰¹²³⁴-⁹])/g, "10^") // 10⁹ is a power of ten, not 109
    .normalize("NFKC")
    .replace(/''/g, '"')
    .replace(/[\u2044\u2215]/g, "/")
    .replace(/[\u2010-\u2015\u2212\uFE63\uFF0D]/g, "-")
    .replace(/[\u00B5\u03BC]/g, "µ")
    .replace(/\s+/g, " ")
    .trim();
}

/**
 * The text of a unit reduced to what tells it from others: no brackets, no full stops, no carets, one space where a dot,
 * a hyphen or a space stood, none around a slash. "W/(m²·K)", "W/(m^2 K)" and "W / m2-K" give the same key.
 */
export function unitKey(text: string): string {
  return normaliseText(text)
    .replace(/[()[\]^]/g, "")
    .replace(/[·⋅•*.\-×]/g, " ")
    .replace(/ ?per /gi, "/")
    .replace(/\s+/g, " ")
    .replace(/ ?\/ ?/g, "/")
    .trim();
}
