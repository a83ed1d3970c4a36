import type { Io } from "../input/io";

/** One command, loaded only when it is asked for. */
export interface Command {
  /** The page that `--help` prints. */
  readonly help: string;
  /** Runs with the arguments behind the command's name; resolves to the exit code. */
  run(args: readonly string[], io: Io): Promise<number>;
}
