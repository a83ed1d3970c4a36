/** What can be wrong with a proposal. */
export const setpointWarnings = /* @__PURE__ */ Object.freeze({
  "unverified limits or rules": "limits or rules that were not checked against a printed copy",
  "shaft rule": "the rule for shafts knows no bearing, and its handbook names no standard",
  "ceiling below limit": "the highest setting of the table is below the limit that the setpoint is set from",
  "differing copy": "a confirmed copy of the standard prints another limit than the table as shipped has",
  "several schemes": "the facts given admit several schemes, and the lowest limits of them are used",
  "assumed facts": "facts of the machine were not given, and taken for their lower limits",
  "unknown place": "the place of a displacement was not given, and the lower of housing and shaft is taken",
  "set aside": "something given of the machine plays no part",
  "which peak": "limits are in peak: which one the table means, true or 1.414 x RMS, or that it leaves that open",
  "single baseline": "the baseline is one reading, without scatter",
  "no baseline": "there is no baseline",
  "poor baseline": "the baseline itself carries a warning",
  "mixed modes": "the medians of the operating modes in the baseline differ",
  "multiple limited": "a multiple of the baseline is above all that the rules allow, and was lowered",
  "multiple above the rule": "a multiple of the baseline gives a higher setpoint than the rule without it",
  "multiple below zone C": "a multiple of the baseline gives a trip within zone A or B",
  "trip by multiple": "the trip follows the baseline, against the rule that it follows the integrity of the machine",
  "raised setpoint": "what is left unprotected while setpoints are raised",
  "no limits": "there is no scheme and no limit of the maker, so no trip is proposed",
  "no shutdown": "the scheme as it is here has no limit for a shutdown of this class",
  "other quantities":
    "another quantity is limited too, and this one leaves it unguarded or guards it at running speed only",
  "baseline of zero": "the baseline is zero, as a dead sensor or a stopped machine reads",
  "baseline in zone C": "the machine already runs above the upper limit of zone B",
  "baseline in zone D": "the machine already runs above the upper limit of zone C",
  "alarm at once": "the machine is already above the alarm",
  "trip at once": "the machine is already above the trip",
  "asked at once": "the machine is already above the setpoint that was asked for",
  "asked stays set": "once set, what was asked for would not clear at the level that the machine runs at",
  "asked above the rules": "the setpoint that was asked for is above all that the rules allow",
  "alarm perhaps at once": "within the uncertainty of its baseline the machine may already be above the alarm",
  "trip perhaps at once": "within the uncertainty of its baseline the machine may already be above the trip",
  "uncertain setpoint": "baseline or limits have an uncertainty of their own, and so has what is set from them",
  "alarm not below trip": "the alarm is at or above the trip, so that the machine trips without a warning before it",
  "alarm stays set": "once set, the alarm would not clear at the level that the machine runs at",
  "readings at trip": "readings of the baseline have already reached the trip",
  "trip stays set": "once set, the trip would not clear at the level that the machine runs at",
  "alarm in noise": "the alarm lies below the noise floor of the sensor",
  "alarm in scatter": "the alarm lies within the scatter of the baseline",
  "trip beyond full scale": "the trip lies beyond what sensor or loop can carry",
  "little of span": "the trip lies so low in the range of its loop that most of its resolution is wasted",
  "little margin": "there is little margin between alarm and trip",
  "outside band": "the running frequency is outside or at the edge of the device's band",
  "unknown frequency": "without a running speed the device's band cannot be checked",
  "long delay": "the delay is longer than suits the machine",
  "coarse steps": "the steps of the device are coarse beside the setpoint",
  "beyond device": "the device cannot hold the setpoint",
} as const);

/** The code of a warning: a key of {@link setpointWarnings}. */
export type SetpointWarningCode = keyof typeof setpointWarnings;

/** A warning with the numbers of the case. */
export interface SetpointWarning {
  readonly code: SetpointWarningCode;
  readonly text: string;
}

/** What the signal path can carry. */
export interface SensorLimits {
  /** Smallest level that means anything, e.g. `"0.1 mm/s rms"`. */
  readonly noiseFloor?: string;
  /** Largest level the sensor carries, e.g. `"50 g pk"`. */
  readonly fullScale?: string;
  /** Range of the current loop behind it, e.g. `"0 to 25.4 mm/s rms"`. */
  readonly loop?: string;
}
