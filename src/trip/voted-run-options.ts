import { inPlace, shown, VeladisError } from "../core/index";
import { requireNames } from "./require-names";
import { type RunOptions, requireRunOptions } from "./run-options";
import { orderedCommands } from "./trip-commands";
import { requireVotedCommand, type VotedCommand } from "./voted-commands";

/** One for all channels, or one a channel by its name. */
export type EachOr<Option> = Option | { readonly [name: string]: Option };

/** What a run of several channels may be told besides their levels. */
export interface VotedRunOptions extends Pick<RunOptions, "nan" | "excursions"> {
  /** What the levels are written in, if not in unit and detector of the thresholds: for all channels, or for each by name. */
  readonly as?: EachOr<NonNullable<RunOptions["as"]>>;
  /** Frequency of the vibration, where `as` is of another quantity than a threshold: for all channels, or for each by name. */
  readonly at?: EachOr<NonNullable<RunOptions["at"]>>;
  /** What is done while the histories run, in any order. */
  readonly commands?: readonly VotedCommand[];
}

/** The options of a run, told apart by channel. */
export interface VotedRun {
  readonly faults: boolean;
  readonly excursions: boolean;
  /** In order of time. */
  readonly commands: readonly VotedCommand[];
  /** How the levels of each channel are written. */
  readonly written: ReadonlyMap<string, Pick<RunOptions, "as" | "at">>;
}

/** An option by channel: `{ hertz: 25 }` is a frequency, `{ hertz: "25 Hz" }` one for a channel of that name. */
function byChannel<Option>(
  given: EachOr<Option> | undefined,
  names: readonly string[],
  what: string,
): (name: string) => Option | undefined {
  const isEach =
    typeof given === "object" && given !== null && !Object.values(given).some((one) => typeof one === "number");
  if (!isEach) return () => given as Option | undefined;
  const each = given as { readonly [name: string]: Option };
  const missing = names.find((name) => !Object.hasOwn(each, name) || each[name] === undefined);
  inPlace({ parameter: "options" }, () => requireNames(names, each, false));
  if (missing === undefined) return (name) => each[name];
  throw new VeladisError("missing-option", {
    expected: `${what} of ${shown(missing)}, or one for all channels`,
    received: "nothing",
    parameter: "options",
    option: what.split(":")[0] as string,
  });
}

/**
 * The options of a run of several channels; every one counts, or is refused by its name.
 *
 * @throws {@link VeladisError} `unknown-option`, `missing-option`, `out-of-range`, `negative`
 */
export function votedRun(options: VotedRunOptions, names: readonly string[]): VotedRun {
  const { as, at, commands, ...rest } = requireRunOptions(options);
  const typeOf = byChannel(as, names, "as: what the levels are written in,");
  const frequencyOf = byChannel(at, names, "at: the frequency of the vibration");
  const written = new Map(
    names.map((name) => {
      const [type, frequency] = [typeOf(name), frequencyOf(name)];
      return [name, { ...(type !== undefined && { as: type }), ...(frequency !== undefined && { at: frequency }) }];
    }),
  );
  return {
    faults: rest.nan !== undefined,
    excursions: rest.excursions === true,
    commands: orderedCommands(commands, (command) => requireVotedCommand(command, names)),
    written,
  };
}
