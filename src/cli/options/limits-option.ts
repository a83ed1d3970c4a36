import { plainNumerals, VeladisError } from "../../core/index";
import { limitsListed } from "../../reading/index";
import { defineScheme, parseMachine, type Scheme, schemeOf } from "../../severity/index";
import { namedScheme } from "./named-scheme";
import type { OptionRow } from "./option-row";

/** The option that gives limits in the place of a scheme. */
export const limits = {
  argument: "<A/B, B/C, C/D>",
  help: "upper limits of zones A, B and C, of the maker or the site, in the place of a scheme; of the shaft where the machine says shaft",
  example: '"2.6, 4.2, 6.8 mm/s rms"',
} as const satisfies OptionRow;

const FORM = '--limits with the upper limits of zones A, B and C, such as "2.8, 4.5, 7.1 mm/s rms"';

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
