import { plainNumeral, shown, VeladisError } from "../../core/index";

/** What devices show of a level beyond their range, and people write of it. */
const WORDS = String.raw`\+?(?:[o0]\.?l\.?|ovl|over[ -]?(?:load|range|flow)|(?:above|off)[ -]?(?:range|scale)|inf(?:inity)?)`;

const whole = /* @__PURE__ */ new RegExp(`^(?:${WORDS}|over|[>\u2265].*)$`, "i");
const within = /* @__PURE__ */ new RegExp(
  `(?:^|[\\s,;:|(=])(?:${WORDS}|over(?=\\s*$)|[>\u2265]=?\\s*[.\\d])(?![\\w])`,
  "i",
);

/** Whether all of a text says that a level is over range: `OL`, `over range`, `> 20`. */
export function isOverRange(text: string): boolean {
  return whole.test(text) || (plainNumeral.test(text) && Number(text) === Number.POSITIVE_INFINITY);
}

/**
 * The error for a text that was refused: where it says over range the vibration may be anything, and a gate has to count it.
 *
 * @param error - what it was refused for; given back where nothing in the text says over range
 */
export function overRangeOr(error: unknown, text: string): unknown {
  const written = text.trim();
  if (!(error instanceof VeladisError) || error.code === "sensor-fault") return error;
  // a name before the colon may hold such a word
  const reading = written.slice(written.indexOf(":") + 1).trim() || written;
  if (!isOverRange(reading) && !within.test(reading)) return error;
  return new VeladisError("sensor-fault", {
    expected: "a reading within the range of its device: over range the vibration may be anything",
    received: shown(written),
  });
}
