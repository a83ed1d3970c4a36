import { lazily } from "../core/index";

const NAME = "(?:category|cat\\.?|class|cl\\.?|group|gr\\.?|grade)";

/** What such a label is of where its name does not stand alone: an area with explosive gas or dust, an insulation. */
const OF =
  "(?:ATEX|IECEx|explosion(?:[\\s-]+protection)?|gas|dust|equipment|apparatus|insulation|insul\\.?|ins\\.?|thermal|temperature|temp\\.?|protection|efficiency|corrosivity|overvoltage|accuracy|pressure)";

const others = /* @__PURE__ */ lazily(
  () =>
    new RegExp(
      `^(?:${OF}[\\s-]+(?:equipment[\\s-]+)?${NAME}[\\s:=]+[^\\s,;()[\\]|"]+|${NAME}[\\s:=]+(?:[123]\\s?[GD](?![\\p{L}\\d])|[^\\s,;()[\\]|"]+[\\s(]+(?:ATEX|IECEx|insulation)(?![\\p{L}])))`,
      "iu",
    ),
);

/** A serial number, how many phases, the letter of an insulation: `S/N 4711`, `3~`, `class F`. */
const marks =
  /^(?:(?:S\/N|SN|ser(?:ial)?\.?\s*(?:no\.?|nr\.?|number)?)[\s:=#]+[A-Z\d][\w/-]*|[13]\s?~(?=[\s,;]|$)|class[\s:=]+[FH](?![\w-]))/i;

/** The number of a standard or a document: `ISO 10816-3`, `DIN EN 10816-3:2009`. */
const standards = /^(?:(?:ISO|EN|DIN|VDI|API|AGMA)[\s/-]+)+\d{3,}[\w:-]*/i;

/** How many characters the number of a standard at the beginning of a text takes. */
export function standardLength(text: string): number {
  return standards.exec(text)?.[0].length ?? 0;
}

/**
 * How many characters a label at the beginning of a text takes that is none of a table of limits: `ATEX category 2`,
 * `category 2G`, `insulation class F`, `S/N 4711`, `ISO 10816-3`.
 */
export function otherLabelLength(text: string): number {
  return others().exec(text)?.[0].length ?? (marks.exec(text)?.[0].length || standardLength(text));
}
