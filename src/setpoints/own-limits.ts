import { type ConvertedAmplitude, convertedAt, notedAmplitude } from "../amplitude/index";
import { requireGiven, requireKnownKeys, requirePositive, requireText, type Source, VeladisError } from "../core/index";
import { type Amplitude, union } from "../reading/index";
import { uncertainAmplitude } from "../uncertainty/index";
import type { SetpointLimit, SetpointLimits } from "./setpoint-limits";

/** Limits of the machine's maker or the site, where no scheme shall apply. */
export interface OwnLimits {
  /** Upper limit of unrestricted operation (zone B), e.g. `"4.5 mm/s rms"`. */
  readonly "B/C": string | Amplitude;
  /** Upper limit of zone C. */
  readonly "C/D": string | Amplitude;
  /** Where they come from. */
  readonly source: string;
}

/** What is said of limits for whose source there is the user's word alone. */
export const AS_STATED = "as stated by the user";

const keys: Readonly<Record<keyof OwnLimits, true>> = /* @__PURE__ */ Object.freeze({
  "B/C": true,
  "C/D": true,
  source: true,
});

/** Limits of the maker or the site, in the type of the setpoints. */
export function limitsOfSite(own: OwnLimits, type: string, hertz: number | undefined): SetpointLimits {
  requireGiven(own, 'limits such as { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "maker" }', {});
  requireKnownKeys(own, keys, "a limit of the site");
  const source: Source = {
    title: requireText(own.source, "the source of the limits, as text", { option: "source" }),
    provenance: "memory",
    note: AS_STATED,
  };
  const limit = (name: "B/C" | "C/D"): SetpointLimit => {
    const words = `${name} of ${own.source}`;
    const stated = notedAmplitude(uncertainAmplitude(requireGiven(own[name], `a limit ${name} with its unit`)), words);
    const amplitude: ConvertedAmplitude = convertedAt(stated, type, hertz);
    requirePositive(amplitude.value, `a limit ${name} above zero`, { option: "value" });
    return { amplitude, text: words, source };
  };
  const [lower, upper] = [limit("B/C"), limit("C/D")];
  if (lower.amplitude.value < upper.amplitude.value) {
    const assumed = union(lower.amplitude.assumed, upper.amplitude.assumed);
    const compared = [lower, upper].map(({ text }) => ({ text, source }));
    const none = { leftOut: [], atSpeedOnly: [], speedVaries: false, schemes: [], assumedFacts: [], setAside: [] };
    return { kind: "zones", lower, upper, ceilings: null, compared, assumed, ...none };
  }
  throw new VeladisError("out-of-range", {
    expected: "a limit C/D above the limit B/C",
    received: `${upper.amplitude.value} and ${lower.amplitude.value} ${type}`,
  });
}
