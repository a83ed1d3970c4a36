import { frozen } from "../core/index";

/** What a conversion can take for granted, and what that means. */
export const assumptions = /* @__PURE__ */ frozen({
  sine: "peak, RMS and average are related as for one sine wave (peak = 1.414 x RMS = 1.571 x average)",
  "crest-factor": "peak and RMS are related by the stated crest factor",
  "one-frequency":
    "all of the vibration is one sine at the stated frequency; an overall of several is converted wrongly",
} as const);

/** Something a conversion took for granted: a key of {@link assumptions}. */
export type Assumption = keyof typeof assumptions;
