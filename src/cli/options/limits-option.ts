import { plainNumerals, shown, VeladisError } from "../../core/index";
import { parseAmplitude, writtenIn } from "../../reading/index";
import { defineScheme, parseMachine, type Scheme, schemeOf } from "../../severity/index";
import { namedScheme } from "./named-scheme";
import type { OptionRow } from "./option-row";
import { parts } from "./option-values";

/** The option that gives limits in the place of a scheme. */
export const limits = {
  argument: "<A/B, B/C, C/D>",
  help: "upper limits of zones A, B and C, of the maker or the site, in the place of a scheme; of the shaft where the machine says shaft",
  example: '"2.6, 4.2, 6.8 mm/s rms"',
} as const satisfies OptionRow;

const FORM = '--limits with the upper limits of zones A, B and C, such as "2.8, 4.5, 7.1 mm/s rms"';

/**
 * Limits that a text lists, each with its unit; the unit behind the last is that of those without one.
 *
 * @throws {@link VeladisError} `syntax` for another number of limits or units that differ, `not-a-number` where some commas may
 *   stand before decimals, `out-of-range` for limits that are not above zero and ascending, and as {@link parseAmplitude}
 */
export function limitsListed(written: string, counts: readonly number[], form: string) {
  // semicolons where numbers had a decimal comma
  const all = parts(written.replaceAll(";", ","));
  const last = all.at(-1);
  if (!counts.includes(all.length) || last === undefined) {
    throw new VeladisError("syntax", { expected: form, received: shown(written), option: "limits" });
  }
  if (/\d,\d/.test(written) && /;|,\s/.test(written)) {
    throw new VeladisError("not-a-number", {
      expected: "limits that are read one way: numbers with a point for decimals, a comma and a space between them",
      received: shown(written),
      option: "limits",
    });
  }
  const as = writtenIn(parseAmplitude(last));
  const limits = all.map((text) => parseAmplitude(/[A-Za-z]/.test(text) ? text : `${text} ${as}`));
  if (limits.some((limit) => writtenIn(limit) !== as || limit.level !== undefined || limit.hertz !== undefined)) {
    throw new VeladisError("syntax", { expected: `${form}, in one unit`, received: shown(written), option: "limits" });
  }
  if (limits.some(({ value }, i) => !(value > (limits[i - 1]?.value ?? 0)))) {
    throw new VeladisError("out-of-range", {
      expected: "ascending limits above zero",
      received: shown(written),
      option: "limits",
    });
  }
  return { as, limits };
}

/**
 * A scheme of four zones with the limits that a text lists.
 *
 * @param machine - in words; limits of a machine whose readings are of the shaft are for the shaft
 * @throws {@link VeladisError} as {@link limitsListed} and {@link defineScheme}
 */
function schemeOfLimits(written: string, machine: string): Scheme {
  const { as, limits } = limitsListed(written, [3], FORM);
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
      ...(machine.trim() !== "" && parseMachine(machine).place === "shaft" && { place: "shaft" as const }),
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

/** What names the limits to judge by. */
interface LimitsTold {
  readonly limits: string | undefined;
  readonly scheme: string | undefined;
  readonly confirmed: readonly string[];
  readonly "decimal-comma"?: boolean;
}

/**
 * Refuses limits beside the scheme whose place they take.
 *
 * @throws {@link VeladisError} `unknown-option`
 */
export function requireLimitsAlone({ limits, scheme, confirmed }: LimitsTold): void {
  if (limits === undefined || (scheme === undefined && confirmed.length === 0)) return;
  throw new VeladisError("unknown-option", {
    expected: "--limits in the place of --scheme and --confirmed",
    received: scheme === undefined ? "--confirmed too" : "--scheme too",
    option: "limits",
  });
}

/**
 * The scheme of limits that are given, in the place of one that is named; undefined where none are.
 *
 * @throws {@link VeladisError} `unknown-option` for both, and as {@link schemeOfLimits}
 */
export function limitsAlone(told: LimitsTold, machine: string): Scheme | undefined {
  const { limits } = told;
  if (limits === undefined) return undefined;
  requireLimitsAlone(told);
  return schemeOfLimits(told["decimal-comma"] ? plainNumerals(limits, { decimal: "," }) : limits, machine);
}

/** The limits that are given, else the scheme that is named; undefined where neither is. */
export async function givenScheme(
  told: LimitsTold,
  machine: string,
  schemes: readonly Scheme[] | undefined,
): Promise<Scheme | undefined> {
  const { scheme } = told;
  return limitsAlone(told, machine) ?? (scheme === undefined ? undefined : namedScheme(scheme, schemes));
}
