import { frozen } from "./frozen";

/**
 * Every code a {@link VeladisError} can carry, with what it means.
 *
 * A program branches on the code; a person reads the message.
 */
export const errorCodes = /* @__PURE__ */ frozen({
  "wrong-type": "an argument is not of the kind the function takes",
  syntax: "a text does not have the form it must have",
  "not-a-number": "what should be a number is none",
  "not-finite": "a value or a result is beyond what a number can hold",
  negative: "a value is below zero where the quantity cannot be",
  "not-positive": "a value is zero or below where it must be above zero",
  "out-of-range": "a value is outside its range",
  "unknown-unit": "no unit of the quantity has this name",
  "unknown-detector": "no detector has this name",
  "unknown-frequency-unit": "no unit of frequency or shaft speed has this name",
  "unknown-reference": "no decibel reference has this name",
  "unknown-option": "no option or choice has this name",
  "missing-unit": "a number means nothing without its unit",
  "missing-detector": "an amplitude means nothing without its detector",
  "missing-frequency": "another quantity needs a frequency",
  "missing-reference": "a level in decibels means nothing without its reference",
  "missing-option": "an argument, an option or a setting was left out",
  "missing-fact": "a fact of the machine, the reading or the record that the answer needs was not given",
  "wrong-quantity": "the unit is one of another quantity",
  "wrong-detector": "readings by different detectors do not go together",
  "wrong-frequency": "readings at different frequencies do not go together",
  "not-a-sine": "a crest factor where it cannot be applied",
  "length-mismatch": "two arrays that go together differ in length",
  unreadable: "a file cannot be read",
  unwritable: "a file cannot be written",
  "sensor-fault": "no healthy sensor or loop gives such a signal",
} as const);

/** The code of a {@link VeladisError}: a key of {@link errorCodes}. */
export type VeladisErrorCode = keyof typeof errorCodes;
