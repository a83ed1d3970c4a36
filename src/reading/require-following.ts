import { same, shown, VeladisError } from "../core/index";
import type { Amplitude } from "./amplitude";
import { parsedType } from "./parsed-type";
import { linearOf } from "./scaled";

function refuse(option: "value" | "crestFactor", told: number, given: number): never {
  throw new VeladisError("out-of-range", {
    expected: `a ${option === "value" ? "value" : "crest factor"} of ${told}, as the last step of its history says; a reading that was changed is another one, without that history`,
    received: shown(given),
    ...{ parameter: "reading", option },
  });
}

/**
 * The reading itself if its value and its crest factor follow from the last step of its history: what is judged must be
 * what the steps tell of.
 *
 * @throws {@link VeladisError} `out-of-range`
 */
export function requireFollowing(reading: Amplitude): Amplitude {
  const { history, value, crestFactor } = reading;
  const last = history?.at(-1);
  if (last === undefined) return reading;
  const { reference } = parsedType(last.type);
  const told = reference === 0 ? last.value : linearOf(last.value, reference);
  if (!same(told, value)) refuse("value", told, value);
  const { crestFactor: known } = last;
  if (known !== undefined && crestFactor !== undefined && !same(known, crestFactor)) {
    refuse("crestFactor", known, crestFactor);
  }
  return reading;
}
