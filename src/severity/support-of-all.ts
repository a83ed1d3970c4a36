import { lazily, shown, VeladisError } from "../core/index";
import type { Machine } from "./machine";

/** Words of a direction or of a point that a support may be of. */
const ADVERB = /^(?:horizontal|vertical|axial|radial|lateral|transverse)ly$/i;
const places = /* @__PURE__ */ lazily(
  () =>
    /(?<![\w-])(?:(?:horizontal|vertical|axial|radial|lateral|transverse)(?:ly)?|n?de|(?:non[\s-])?driven?[\s-]end|free[\s-]end|inboard|outboard)(?![\w-])/gi,
);

/** Words of a soft support, whose limits are the higher ones. */
const soft = /* @__PURE__ */ lazily(
  () => /\b(?:flexib|springs?\b|isolators?\b|resilient|rubber\b|anti[\s-]vibration)/i,
);

/** A place of a support right beside it, or a direction beside a comma: `flexible DE`, `axial, flexible`, `natural 10 Hz A`. */
const beside = /* @__PURE__ */ lazily(() => {
  const direction =
    "(?:(?:horizontal|vertical|axial|radial|lateral|transverse)(?:ly)?|(?<!\\d\\s)[HVAhv]|\\([HVAhva]\\))";
  const place = `(?:${direction}|n?de|(?:non[\\s-])?driven?[\\s-]end|free[\\s-]end|inboard|outboard|left|right|front|rear|back|top|bottom|upper|lower)`;
  const softly =
    "(?:flexib\\w*|(?:on\\s+)?(?:springs?|isolators?|rubber)|resilient\\w*|anti[\\s-]vibration\\s\\w+)(?:\\s+(?:supports?|supported|mounted|mounting|mounts?|foundation|base))?";
  const natural = "natural(?:\\s+frequency)?\\s*[\\d.,]+\\s*\\w+";
  // axial fan: a kind of machine, no direction
  const kind = "\\s+(?:[\\w-]+\\s+){0,2}(?:flow|fan|pump|compressor|turbine|motor|generator|blower|engine|gear)";
  // of one bearing, end, foot or direction among several, in whatever words
  const part =
    "(?:bearings?\\s+(?:no\\.?\\s*)?\\d|(?:one|two|[12])\\s+(?:bearings?|ends?|sides?|feet|foot|directions?)|\\d+\\s+of\\s+\\d|\\d+\\s*%|ode|only|partly|partially)";
  const between = "[\\s:(]+(?:(?:at|in|on|of|the|is|support|supported|mounted)\\s+)*";
  return new RegExp(
    [
      `(?<![\\w-])${place}${between}(?:${softly}|${natural})(?![\\w-])`,
      `(?<![\\w-])(?:${softly}|${natural})${between}${place}(?![\\w-]|${kind})`,
      `(?<![\\w-])${softly}\\s+(?:at|near|under|beside)\\s+\\w+`,
      `(?<![\\w-])${softly}[^,;|]*?(?<![\\w-])${part}`,
      `(?<![\\w-])${softly}\\s*[,;|]\\s*[HVAhva]\\s+only`,
      `(?<![\\w-])${direction}\\s*[,;|]\\s*${softly}(?![\\w-])`,
      `(?<![\\w-])${softly}\\s*[,;|]\\s*${direction}\\s*(?:$|[,;|])`,
    ].join("|"),
    "u",
  );
});

/**
 * Refuses a flexible support beside a direction or a point that was not read with it, as in `axial flexible`, `flexible DE`
 * and `flexible, axially`: it would be taken for all directions, and has the higher limits.
 *
 * @param line - without what was read by direction
 * @throws {@link VeladisError} `syntax`
 */
export function requireSupportOfAll({ support, naturalFrequency, notUnderstood = [] }: Machine, line: string): void {
  if (support !== "flexible" && naturalFrequency === undefined) return;
  const [adjacent] = beside().exec(line.replace(/[A-Za-z]{2,}/g, (word) => word.toLowerCase())) ?? [];
  if (adjacent !== undefined) throw supportOfPart(adjacent.replace(/^[\s,;|]+/, ""));
  if (support !== "flexible") return;
  const left = notUnderstood.flatMap(({ word }) => word.match(places()) ?? []).map((word) => word.toLowerCase());
  if (left.length === 0) return;
  const parts = line.split(/[,;|]/);
  const own = parts.find((part) => soft().test(part) && left.some((word) => part.toLowerCase().includes(word)));
  const words = own?.trim() ?? (left.some((word) => ADVERB.test(word)) ? line.trim() : undefined);
  if (words !== undefined) throw supportOfPart(words);
}

function supportOfPart(words: string): VeladisError {
  return new VeladisError("syntax", {
    expected:
      'a support with its direction, as in "flexible axially, rigid horizontally, rigid vertically"; or, of the whole machine, the support behind a comma, as in "vertical pump 90 kW, flexible"',
    received: shown(words),
  });
}
