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

/**
 * How many characters a label at the beginning of a text takes that is none of a table of limits: `ATEX category 2`,
 * `category 2G`, `insulation class F`.
 */
export function otherLabelLength(text: string): number {
  return others().exec(text)?.[0].length ?? 0;
}
