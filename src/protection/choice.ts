import { nearest, shown, VeladisError } from "../core/index";

/**
 * The word itself if it is one of the allowed ones.
 *
 * @throws {@link VeladisError} `missing-fact` when nothing was given, else `unknown-option`
 */
export function choice<const Word extends string>(given: unknown, allowed: readonly Word[], what: string): Word {
  if (allowed.includes(given as Word)) return given as Word;
  throw new VeladisError(given === undefined ? "missing-fact" : "unknown-option", {
    expected: what,
    received: shown(given),
    didYouMean: typeof given === "string" ? nearest(given, allowed) : [],
    allowed,
  });
}

/** The truth value itself; there is no default for it. */
export function yesOrNo(given: unknown, what: string): boolean {
  if (typeof given === "boolean") return given;
  throw new VeladisError(given === undefined ? "missing-fact" : "wrong-type", {
    expected: what,
    received: shown(given),
    allowed: ["true", "false"],
  });
}
