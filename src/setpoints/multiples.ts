import { parseNumeral, requireFinite, requireKnownOptions, type Source, shown, VeladisError } from "../core/index";
import { AS_STATED } from "./own-limits";

/** Alarm and trip as so many times the baseline: the user's own choice, since no standard states a multiple. */
export interface BaselineMultiples {
  readonly alarm?: number;
  readonly trip?: number;
}

const FORM = 'multiples of the baseline such as "alarm 1.5 times, trip 3 times" or { alarm: 1.5, trip: 3 }';
const PART = /^(alarm|trip)\s+(\S+?)\s*(?:x|times)?(?:\s+(?:the\s+)?baseline)?$/i;

const keys: Readonly<Record<keyof BaselineMultiples, true>> = /* @__PURE__ */ Object.freeze({
  alarm: true,
  trip: true,
});

/** The source of a number that the user chose. */
export const STATED_MULTIPLES = /* @__PURE__ */ Object.freeze({
  title: "multiples of the baseline given by the user",
  provenance: "memory",
  note: AS_STATED,
} as const satisfies Source);

/** Whether a text begins as multiples of a baseline do. */
export function saysMultiples(text: string): boolean {
  return /^\s*(?:alarm|trip)\s+[\d.]/i.test(text);
}

/** Multiples that a text says. */
function written(text: string): BaselineMultiples {
  const found: { alarm?: number; trip?: number } = {};
  for (const part of text.split(/[,;]/)) {
    const [, word, number] = PART.exec(part.trim()) ?? [];
    const name = word?.toLowerCase() as "alarm" | "trip" | undefined;
    if (name === undefined || number === undefined || found[name] !== undefined)
      throw new VeladisError("syntax", { expected: FORM, received: shown(text), option: "multiples" });
    found[name] = parseNumeral(number, `a multiple of the baseline for the ${name}`);
  }
  return found;
}

/**
 * The multiples themselves, each above 1, that of the trip above that of the alarm.
 *
 * @throws {@link VeladisError} `syntax`, `missing-option`, `unknown-option`, `out-of-range`
 */
export function requireMultiples(given: BaselineMultiples | string): BaselineMultiples {
  const place = { option: "multiples" };
  const multiples = requireKnownOptions(typeof given === "string" ? written(given) : given, keys, {
    what: "a multiple of the baseline",
    form: FORM,
    place,
  });
  const { alarm, trip } = multiples;
  if (alarm === undefined && trip === undefined)
    throw new VeladisError("missing-option", { expected: FORM, received: "nothing", ...place });
  for (const [name, times] of [["alarm", alarm] as const, ["trip", trip] as const]) {
    if (times === undefined || requireFinite(times, `a multiple of the baseline for the ${name}`, place) > 1) continue;
    throw new VeladisError("out-of-range", {
      expected: `a multiple of the baseline above 1 for the ${name}, since the machine runs at 1 times it`,
      received: shown(times),
      ...place,
    });
  }
  if (alarm === undefined || trip === undefined || trip > alarm) return multiples;
  throw new VeladisError("out-of-range", {
    expected: "a multiple for the trip above that for the alarm, so that the machine is warned of before it trips",
    received: `alarm ${alarm} times and trip ${trip} times the baseline`,
    ...place,
  });
}
