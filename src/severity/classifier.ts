import { withParameters } from "../core/index";
import type { ReadingTypeText } from "../reading/index";
import { type Classifier, type ClassifierOptions, compiledClassifier } from "./compiled-classifier";
import type { MachineRef } from "./machine-facts";
import { placedMachine } from "./placed-machine";
import { requireCriterion } from "./require-criterion";
import { requireOptions } from "./require-options";
import type { Scheme } from "./scheme";
import { type KindOf, type SchemeRef, schemeOf } from "./scheme-of";

const keys: Readonly<Record<keyof ClassifierOptions, true>> = /* @__PURE__ */ Object.freeze({
  at: true,
  crestFactor: true,
  assume: true,
});

/**
 * A judge of readings compiled once, for many values of one machine.
 *
 * Called with a number it gives the zone that {@link classify} gives for the same reading, without allocating;
 * `.index` gives its number, `.array` the numbers for a Float64Array.
 *
 * @param scheme - the id of a built-in scheme, or a scheme
 * @param machine - the machine, as data or in words
 * @param from - what the values are written in, e.g. `"in/s pk"`
 * @param options - `at`, `crestFactor`, `assume` as for {@link classify}
 * @throws {@link VeladisError} as {@link classify}; later, for a value that is no amplitude, `negative`,
 *   `not-a-number`, `not-finite`
 * @example
 * ```ts
 * import { classifier } from "veladis/severity";
 *
 * const judge = classifier("iso-10816-3-2009", "group 2 rigid", "mm/s rms");
 * judge(2.8); // => "B"
 * judge(2.9); // => "C"
 * judge.zones; // => ["A", "B", "C", "D"]
 * judge.limits; // => [1.4, 2.8, 4.5]
 * [...judge.array(Float64Array.of(1, 2, 3, 5))]; // => [0, 1, 2, 3]
 * ```
 */
export function classifier<const S extends SchemeRef>(
  scheme: S,
  machine: MachineRef,
  from: ReadingTypeText,
  options: ClassifierOptions = {},
): Classifier<KindOf<S>> {
  return withParameters({ options, scheme, from, machine }, () => {
    const table: Scheme = schemeOf(scheme);
    requireCriterion(table);
    const { judge } = compiledClassifier(from, requireOptions(options, keys), (assume) => [
      placedMachine(table, machine, assume),
    ]);
    return Object.freeze(Object.assign(judge, { scheme: table.id })) as Classifier<KindOf<S>>;
  });
}
