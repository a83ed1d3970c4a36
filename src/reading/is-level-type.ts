import { cached, isAnswered } from "../core/index";
import { parsedType } from "./parsed-type";

/** What a difference of two levels is written in: it has no reference. */
const DIFFERENCE = "dB";

/**
 * Whether what a step is written in is decibels: a level, or a difference of levels. What comes before a reading (`"mA"`,
 * `"mV rms"`) or is none (`"%"`, `"g·mm"`) is not.
 */
export const isLevelType: (type: string) => boolean = /* @__PURE__ */ cached(
  (type) => type === DIFFERENCE || (isAnswered(() => parsedType(type)) && parsedType(type).reference !== 0),
);
