import { shown, VeladisError } from "../core/index";

/** The refusal of two values where a machine has one, both written as they shall stand there alone. */
export function twoValues(what: string, first: string, second: string, received = "both"): VeladisError {
  return new VeladisError("syntax", { expected: `one ${what}, ${first} or ${second}: give one`, received });
}

/** As {@link twoValues}, of a label. */
export function twoLabels(fact: string, first: string, second: string): VeladisError {
  return twoValues(fact, shown(`${fact} ${first}`), shown(`${fact} ${second}`));
}

/** As {@link twoValues}, of a number with its unit and a bare one. */
export function twoNumbers(what: string, written: string, bare: string, received?: string): VeladisError {
  return twoValues(what, shown(written), `${shown(bare)} with its unit`, received);
}

/** The refusal of a line that says two values of one fact. */
export function contradiction(what: string, a: string, b: string): VeladisError {
  return new VeladisError("syntax", {
    expected: `one ${what} in the description of a machine`,
    received: `${shown(a)} and ${shown(b)}`,
  });
}
