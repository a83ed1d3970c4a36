import { inPlace, requireText, VeladisError } from "../core/index";
import { exactAmplitude, writtenIn } from "../reading/index";
import type { OwnLimits } from "../setpoints/index";
import { defineScheme, type Machine, type Scheme, schemeOf } from "../severity/index";

/** The id of the scheme that is made of limits on the list. */
export const LIMITS_ON_LIST = "limits-on-the-list";

/**
 * Limits of the maker or the site as a scheme of the zones that they part: A and B together, C and D. They are for the
 * shaft where the machine says so.
 *
 * @throws {@link VeladisError} `wrong-type` for a level in dB and limits in two units, and as {@link defineScheme}
 */
export function limitsAsScheme(limits: OwnLimits, { place }: Machine): Scheme {
  const of = (name: "B/C" | "C/D") => inPlace({ option: name }, () => exactAmplitude(limits[name]));
  const [lower, upper] = [of("B/C"), of("C/D")];
  const as = writtenIn(upper);
  if (writtenIn(lower) !== as || upper.level !== undefined) {
    throw new VeladisError("wrong-type", {
      expected: 'limits B/C and C/D in one linear unit, such as "4.5, 7.1 mm/s rms"',
      received: `${writtenIn(lower)} and ${as}`,
      option: "limits",
    });
  }
  const source = requireText(limits.source, "the source of the limits, as text", { option: "source" });
  return schemeOf(
    defineScheme({
      id: LIMITS_ON_LIST,
      kind: "zones",
      standard: "limits on the list of the plant",
      edition: "as stated there",
      title: source,
      scope: "the machine of the row",
      measuredOn: "where the reading was taken: not known here",
      ...(place === "shaft" && { place }),
      band: null,
      classes: [
        {
          criteria: [
            {
              as: as as "mm/s rms",
              limits: { "B/C": lower.value, "C/D": upper.value },
              // whoever wrote them knows where they are from; here nobody has seen it
              source: { title: source, provenance: "reported", note: "as stated on the list of the plant" },
            },
          ],
        },
      ],
    }),
  );
}
