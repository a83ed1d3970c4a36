import { shown, VeladisError } from "../../core/index";
import type { OptionRow } from "./option-row";

/** A fact on the sheet, for those commands that prove a device. */
export const fact = {
  argument: "<name: text>",
  help: "a fact on the sheet, such as a serial number; may be given several times; usual ones not given are lines to fill in",
  example: '"device: serial 0417"',
  several: true,
} as const satisfies OptionRow;

/** What a sheet on a device asks for: told, or filled in by hand. */
const usual = ["nameplate of the machine", "sensor", "device", "settings as found"] as const;

/**
 * Facts as they were told, and those that are left to be filled in by hand.
 *
 * @param proof - what the device is proven with
 * @throws {@link VeladisError} `syntax` for a fact without its name, `out-of-range` for a name that is given twice,
 *   `missing-option` for facts without a sheet
 */
export function sheetFacts(given: readonly string[], proof: string, sheet: string | undefined) {
  if (given.length > 0 && sheet === undefined) {
    throw new VeladisError("missing-option", {
      expected: "--sheet beside --fact: facts stand on a sheet alone",
      received: "--fact alone",
      option: "fact",
    });
  }
  const facts: Record<string, string> = {};
  for (const written of given) {
    const [, name, text] = /^\s*([^:]*\S)\s*:\s*(\S.*)$/s.exec(written) ?? [];
    if (name === undefined || text === undefined) {
      throw new VeladisError("syntax", {
        expected: '--fact with name and text, such as "device: serial 0417"',
        received: shown(written),
        option: "fact",
      });
    }
    if (Object.hasOwn(facts, name)) {
      throw new VeladisError("out-of-range", {
        expected: "each fact of a sheet once",
        received: `${shown(name)} twice`,
        option: "fact",
      });
    }
    Object.defineProperty(facts, name, { value: text.trim(), enumerable: true });
  }
  const named = Object.keys(facts).map((name) => name.toLowerCase());
  const toFill = [...usual, proof, "certificate of it, valid until"].filter((one) => !named.includes(one));
  return {
    facts,
    toFill: toFill.map(
      (one) => `${one}${/sensor|device|shaker|source/.test(one) ? ": maker, type, serial number" : ""}`,
    ),
  };
}
