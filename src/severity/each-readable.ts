import { VeladisError } from "../core/index";
import type { Unjudged } from "./applicable-criteria";
import type { PlacedMachine } from "./placed-machine";

/** What is refused since a scheme cannot judge such a reading, while another may. */
const unreadable: readonly string[] = ["missing-frequency", "not-a-sine", "missing-fact"];

/**
 * An answer for every machine whose scheme can judge a reading, what the other schemes leave unjudged, and the first
 * refusal among them.
 */
export function eachReadable<Answer>(
  machines: readonly PlacedMachine[],
  answerOf: (machine: PlacedMachine) => Answer,
): { readonly answers: readonly Answer[]; readonly unread: readonly Unjudged[]; readonly refusal?: VeladisError } {
  const answers: Answer[] = [];
  const unread: Unjudged[] = [];
  let refusal: VeladisError | undefined;
  for (const machine of machines) {
    try {
      answers.push(answerOf(machine));
    } catch (error) {
      if (!(error instanceof VeladisError) || !unreadable.includes(error.code)) throw error;
      refusal ??= error;
      const { scheme, chosen } = machine;
      const as = [...new Set(chosen.criteria.map((one) => one.as))].join(", ");
      unread.push(Object.freeze({ as, because: `${scheme.standard} (${scheme.edition}) cannot judge this reading` }));
    }
  }
  return { answers, unread, ...(refusal !== undefined && { refusal }) };
}
