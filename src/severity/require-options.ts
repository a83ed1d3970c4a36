import { requireChoice, requireKnownOptions, VeladisError } from "../core/index";

const FORM = 'options such as { scheme: "iso-10816-3-2009", machine: "group 1 rigid" }';

/** Refuses another word than the three; a mistyped one would be taken for the last. */
function requireAssume(assume: unknown): void {
  if (assume !== undefined)
    requireChoice(assume, ["nothing", "usual case", "lowest limits"], "what may be assumed", { parameter: "assume" });
}

/**
 * The options themselves if they are an object with no keys but these, and what may be assumed is one of the three.
 *
 * @param known - a table whose keys are those that may stand there
 * @throws {@link VeladisError} `missing-option` where there are none, `wrong-type`, `unknown-option`
 */
export function requireOptions<T extends object>(options: T, known: object): T {
  requireKnownOptions(options, known, { what: "an option of a judgement", form: FORM });
  requireAssume((options as { assume?: unknown }).assume);
  // null would be left out by one criterion and be refused by another
  if ((options as { crestFactor?: unknown }).crestFactor === null) {
    throw new VeladisError("wrong-type", {
      expected: "a crest factor (peak over RMS) of 1 or more",
      received: "null",
    });
  }
  return options;
}
