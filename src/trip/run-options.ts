import type { ConvertOptions } from "../amplitude/index";
import {
  inPlace,
  requireBoolean,
  requireChoice,
  requireGiven,
  requireKnownKeys,
  shown,
  VeladisError,
} from "../core/index";
import type { ReadingTypeText } from "../reading/index";
import type { TripCommand } from "./trip-commands";

/** What a run of levels may be told besides them. */
export interface RunOptions {
  /** What the levels are written in, if not in unit and detector of the threshold. */
  readonly as?: ReadingTypeText;
  /** Frequency of the vibration, where `as` is of another quantity than the threshold. */
  readonly at?: ConvertOptions["at"];
  /** What is done while the history runs, in any order. */
  readonly commands?: readonly TripCommand[];
  /** Says that NaN among the levels stands for a sensor fault; else it is refused. */
  readonly nan?: "sensor fault";
  /** Reports also the beginning of every on-delay (`timing`) and those that did not run out (`rode out`). */
  readonly excursions?: boolean;
}

const keys: Readonly<Record<keyof RunOptions, true>> = /* @__PURE__ */ Object.freeze({
  as: true,
  at: true,
  commands: true,
  nan: true,
  excursions: true,
});

const FORM = 'options such as { as: "mm/s rms" }';

/**
 * The options themselves, without a key or a word that means nothing.
 *
 * @param known - those that the run takes; all if not given
 */
export function requireRunOptions<Options extends { readonly [Option in keyof RunOptions]?: unknown }>(
  options: Options,
  known: object = keys,
): Options {
  return inPlace({ parameter: "options" }, () => checked(options, known));
}

function checked<Options extends { readonly [Option in keyof RunOptions]?: unknown }>(
  options: Options,
  known: object,
): Options {
  if (typeof requireGiven(options, FORM) !== "object") {
    throw new VeladisError("wrong-type", { expected: FORM, received: shown(options) });
  }
  requireKnownKeys(options, known, "an option of a run");
  if (options.nan !== undefined)
    requireChoice(options.nan, ["sensor fault"], "nan: what NaN among the levels stands for", { option: "nan" });
  if (options.excursions !== undefined) {
    requireBoolean(options.excursions, "excursions: whether those that rode the delay out are reported", {
      option: "excursions",
    });
  }
  if (options.at !== undefined && options.as === undefined) {
    throw new VeladisError("missing-option", {
      expected: "as beside at: what the levels are written in; without it they need no frequency",
      received: "nothing",
      option: "as",
    });
  }
  return options;
}
