import { VeladisError } from "../../core/index";

/** Options that belong to a verdict. */
interface OfVerdict {
  readonly background?: string | undefined;
  readonly "fail-from"?: string | undefined;
}

/**
 * Refuses what belongs to a verdict where nothing is judged.
 *
 * @throws {@link VeladisError} `missing-option`
 */
export function requireJudging(values: OfVerdict, judging: boolean): void {
  for (const option of ["background", "fail-from"] as const) {
    if (judging || values[option] === undefined) continue;
    throw new VeladisError("missing-option", {
      expected: `--machine, --scheme or --limits beside --${option}: without them nothing is judged`,
      received: `--${option} alone`,
    });
  }
}
