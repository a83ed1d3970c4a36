import { lazily, shown, VeladisError } from "../core/index";
import { twoValues } from "./two-values";

const POWER = "(?:kW|MW|W|hp|PS|kVA|MVA)";

/** `2 x 45 kW`, `2x45 kW`. */
const several = /* @__PURE__ */ lazily(
  () => new RegExp(`\\b(\\d+)\\s*[x×*]\\s*(\\d+(?:\\.\\d+)?)\\s*(${POWER})\\b`, "i"),
);

/** `rigid/flexible`, `flexible - rigid`. */
const either = /\b(rigid|flexible)(?:ly)?\s*[/|&+–—-]\s*(rigid|flexible)(?:ly)?\b/i;

/** `90 kW/2980 r/min`, `2980 r/min/90 kW`: the slash parts two facts, and is no unit's. */
const parted = /* @__PURE__ */ lazily(
  () => new RegExp(`(\\d\\s*(?:${POWER}|r/min|U/min|rpm|min-1))\\s*/\\s*(?=\\d)`, "gi"),
);

/** `point on generator`, `reading at the engine`. */
const part = /\b(?:point|reading|measured)\s+(?:on|at)\s+(?:the\s+)?(generator|engine)\b/gi;

/**
 * A line of a nameplate with its marks in the form that the words are read in: a slash between two facts as a comma, a point
 * on a part as the part.
 *
 * @throws {@link VeladisError} `syntax` for a power of several machines, and for a support that is both
 */
export function plainMarks(line: string): string {
  const [written = "", count = "", digits = "", unit = ""] = several().exec(line) ?? [];
  if (written !== "") {
    const whole = Number((Number(count) * Number(digits)).toPrecision(12));
    throw new VeladisError("syntax", {
      expected: `the power of the machine that is judged: "${digits} ${unit}" where it is one of ${count}, "${whole} ${unit}" where they are one`,
      received: shown(written),
    });
  }
  const [both = "", one = "", other = ""] = either.exec(line) ?? [];
  if (both !== "" && one.toLowerCase() !== other.toLowerCase())
    throw twoValues("support", shown(one), shown(other), shown(both));
  return line.replace(parted(), "$1, ").replace(part, 'part "$1"');
}
