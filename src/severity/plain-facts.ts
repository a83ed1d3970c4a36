import {
  dataText,
  type ErrorPlace,
  requireChoice,
  requireKnownOptions,
  requirePositive,
  requireText,
  VeladisError,
} from "../core/index";
import { type Fact, facts, isNumberFact } from "./facts";
import { closedLabels, type FactValue, type KnownFacts, requireShaftHeight } from "./machine";

function checkedNumber(given: unknown, what: string, place: ErrorPlace): FactValue {
  if (!Array.isArray(given)) return requirePositive(given as number, what, place);
  const [low, high] = given;
  if (given.length === 2 && requirePositive(low, what, place) < requirePositive(high, what, place)) {
    return [low, high];
  }
  throw new VeladisError("out-of-range", { expected: what, received: dataText(given), ...place });
}

/** Where the machine stands. */
const MACHINE = { parameter: "options", option: "machine" };

/**
 * The facts of a machine that were given as numbers in the units of {@link facts} and as labels, checked. Nothing is
 * computed of them: a support is stated.
 *
 * @throws {@link VeladisError} `missing-option`, `wrong-type`, `not-positive`, `unknown-option`, `out-of-range`
 */
export function plainFacts(machine: KnownFacts): KnownFacts {
  const form = "facts such as { power: 90 }";
  requireKnownOptions(machine, facts, { what: "a fact about a machine", form, place: MACHINE });
  const known: { [F in Fact]?: FactValue } = {};
  for (const [name, given] of Object.entries(machine) as [Fact, unknown][]) {
    if (given === undefined) continue;
    const place = { ...MACHINE, fact: name };
    const entry: { readonly ask: string; readonly unit?: string } = facts[name];
    const labels: readonly string[] | undefined = closedLabels[name as "type"];
    if (isNumberFact(name)) {
      known[name] = checkedNumber(given, `${entry.ask}: above zero in ${entry.unit}, or [low, high]`, place);
    } else {
      requireText(given as string, entry.ask, place);
      known[name] = labels ? requireChoice(given, labels, entry.ask, place) : (given as string);
    }
  }
  requireShaftHeight(known);
  const { naturalFrequency, application } = known;
  if ((naturalFrequency ?? application) === undefined && (known.support === undefined || known.mounting === undefined))
    return known;
  throw new VeladisError("out-of-range", {
    expected: "the support: only classify finds it by other facts",
    received: dataText(known),
    ...MACHINE,
    fact: "support",
  });
}
