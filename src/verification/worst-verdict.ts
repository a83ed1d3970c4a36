import type { Decision } from "./decision";

type Verdict = Decision["verdict"];

/** How bad each verdict is. */
export const badness = { pass: 0, undecided: 1, fail: 2 } as const satisfies Record<Verdict, number>;

/** The worst of the verdicts of one check or several. */
export function worstVerdict(checks: readonly Pick<Decision, "verdict">[]): Verdict {
  return checks.reduce<Verdict>((worst, { verdict }) => (badness[verdict] > badness[worst] ? verdict : worst), "pass");
}
