import { format } from "../reading/index";
import { signalText } from "./bench-signals";
import type { BenchStep, InjectionStep } from "./bench-step";

type Step = BenchStep | InjectionStep;

/** What a step asks for, and what it is as a signal. */
export function levelTexts({ level, displacement, acceleration, signals = [] }: Step): string[] {
  return [
    ...[level, displacement, acceleration].flatMap((one) => (one === null ? [] : [format(one)])),
    ...signals.map(signalText),
  ];
}

/** What is expected of a step; of one that cannot be done, that. */
export function expectText({ expect, limitedBy }: Step): string {
  return limitedBy.length === 0 ? expect : `NOT POSSIBLE (${limitedBy.join(", ")})`;
}
