import { exitCodes } from "../print/exit-codes";
import type { OptionRows } from "./option-row";

/** An exit code and what it says, for help, the reference and the guide. */
export interface ExitText {
  readonly code: number;
  readonly says: string;
  /** What it says where lines or rows are refused one by one, by `--keep-going`. */
  readonly kept?: string;
  /** The options without one of which a command never ends with it. */
  readonly options?: readonly string[];
}

/** What the exit codes of all commands say. */
export const exitTexts: readonly ExitText[] = [
  { code: exitCodes.done, says: "answered" },
  {
    code: exitCodes.reached,
    says: "answered, and what --fail-from names is reached: any possible zone that bad or worse, a verdict that is not reliable, such a verdict of a check, or the limit of a gap; or a finding as bad as --fail-on names or worse",
    options: ["fail-from", "fail-on"],
  },
  {
    code: exitCodes.refused,
    says: "refused: explained on standard error; of many lines or rows one at least, and the others are answered",
    kept: "with --keep-going refused lines or rows are reported and do not count",
  },
  { code: exitCodes.closed, says: "the reader of standard output went away before the end (| head)" },
];

/** What a command with these options may end with. */
export function exitTextsOf(options: OptionRows): readonly ExitText[] {
  return exitTexts
    .filter(({ options: needed }) => needed?.some((name) => Object.hasOwn(options, name)) ?? true)
    .map(({ kept, ...row }) => (kept !== undefined && Object.hasOwn(options, "keep-going") ? { ...row, kept } : row));
}

/** An exit code in words, with what `--keep-going` changes. */
export function exitSays({ says, kept }: ExitText): string {
  return kept === undefined ? says : `${says}; ${kept}`;
}
