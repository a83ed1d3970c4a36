import { shown, VeladisError } from "../../core/index";
import { parseAmplitude, writtenIn } from "../../reading/index";
import { defineScheme, type Scheme, schemeOf } from "../../severity/index";
import { parts } from "./option-values";

const FORM = '--limits with the upper limits of zones A, B and C, such as "2.8, 4.5, 7.1 mm/s rms"';

/**
 * A scheme of four zones with the limits that a text lists; the unit behind the last is that of those without one.
 *
 * @throws {@link VeladisError} `syntax` for another number of limits or units that differ, and as {@link parseAmplitude}
 *   and {@link defineScheme}
 */
export function schemeOfLimits(written: string): Scheme {
  // semicolons where numbers had a decimal comma
  const all = parts(written.replaceAll(";", ","));
  const last = all.at(-1);
  if (all.length !== 3 || last === undefined) {
    throw new VeladisError("syntax", { expected: FORM, received: shown(written), option: "limits" });
  }
  const as = writtenIn(parseAmplitude(last));
  const limits = all.map((text) => parseAmplitude(/[A-Za-z]/.test(text) ? text : `${text} ${as}`));
  if (limits.some((limit) => writtenIn(limit) !== as || limit.level !== undefined || limit.hertz !== undefined)) {
    throw new VeladisError("syntax", { expected: `${FORM}, in one unit`, received: shown(written), option: "limits" });
  }
  const [ab, bc, cd] = limits.map(({ value }) => value) as [number, number, number];
  return schemeOf(
    defineScheme({
      id: "limits-given",
      kind: "zones",
      standard: "limits given with the reading",
      edition: "--limits",
      title: "Limits given with the reading",
      scope: "the machine that is judged",
      measuredOn: "where the reading was taken: not known here",
      band: null,
      classes: [
        {
          criteria: [
            {
              as: as as "mm/s rms",
              limits: { "A/B": ab, "B/C": bc, "C/D": cd },
              // whoever typed them knows where they are from; here nobody does
              source: { title: "limits given with the reading", provenance: "reported" },
            },
          ],
        },
      ],
    }),
  );
}
