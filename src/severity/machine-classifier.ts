import { withParameters } from "../core/index";
import { parsedType, type ReadingTypeText } from "../reading/index";
import { admittedPlaces } from "./admitted-places";
import { type ClassifierOptions, type CompiledClassifier, compiledClassifier } from "./compiled-classifier";
import type { LadderRow } from "./ladder-rows";
import type { MachineRef } from "./machine-facts";
import { WORSE_PLACE, withoutPlace } from "./place-text";
import type { PlacedMachine } from "./placed-machine";
import { requireOptions } from "./require-options";
import type { SchemeRef } from "./scheme-of";

/** What {@link machineClassifier} can be told besides. */
export interface MachineClassifierOptions extends ClassifierOptions {
  /** The schemes to choose from; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
}

const keys: Readonly<Record<keyof MachineClassifierOptions, true>> = /* @__PURE__ */ Object.freeze({
  at: true,
  crestFactor: true,
  assume: true,
  schemes: true,
});

/** A judge of many readings of one machine by every scheme that its known facts admit. */
export interface MachineClassifier extends CompiledClassifier {
  /** The ids of the schemes that judge, best first; the worst of them governs. */
  readonly schemes: readonly string[];
}

/** A judge of many readings of one machine, with the limits behind it. */
export interface MachineLadder {
  readonly judge: MachineClassifier;
  /** True where something was not judged: the worst zone is possible for every value. */
  readonly isOpen: boolean;
  /** True where nobody said whether the readings are of the housing or the shaft. */
  readonly isPlaceAssumed: boolean;
  /** The limits of all criteria that judge, scheme by scheme. */
  rows(): readonly LadderRow[];
}

/**
 * What {@link machineClassifier} gives, with the limits behind it, for what carries them elsewhere.
 *
 * @throws {@link VeladisError} as {@link machineClassifier}
 */
export function machineLadder(
  machine: MachineRef,
  from: string,
  options: MachineClassifierOptions = {},
): MachineLadder {
  const { schemes, ...rest } = requireOptions(options, keys);
  let found: readonly PlacedMachine[] = [];
  const ladder = compiledClassifier(from, rest, (assume = "lowest limits") => {
    const isDisplacement = parsedType(from).quantity === "displacement";
    found = admittedPlaces(machine, isDisplacement, assume, schemes).flatMap((place) => place?.machines ?? []);
    return found;
  });
  const { judge, schemes: ids, isOpen, rows } = ladder;
  const isBoth = new Set(found.map(({ scheme }) => scheme.place)).size > 1;
  const assumedFacts = isBoth ? Object.freeze([WORSE_PLACE, ...withoutPlace(judge.assumedFacts)]) : judge.assumedFacts;
  const isPlaceAssumed = found.some(({ given }) => given.place === undefined);
  return { judge: Object.freeze(Object.assign(judge, { schemes: ids, assumedFacts })), isOpen, isPlaceAssumed, rows };
}

/**
 * A judge of readings compiled once, by every published scheme that the known facts of a machine admit: the same zone
 * and the same `worst` as {@link judge}, for many values in one reading type. Numbers have no history: a velocity or an
 * acceleration is taken as read on the housing, also where a displacement was converted to it; compile for the
 * displacement itself, or state the place.
 *
 * @param machine - the machine, as data or in words, with its kind at least
 * @param from - what the values are written in, e.g. `"in/s pk"`
 * @param options - `at`, `crestFactor`, `assume` (`"lowest limits"` if not given), `schemes`
 * @throws {@link VeladisError} as {@link judge}; `missing-fact` too for facts between schemes whose zones differ
 * @example
 * ```ts
 * import { machineClassifier } from "veladis/severity";
 *
 * const judge = machineClassifier("motor 1485 r/min rigid", "mm/s rms");
 * judge(2.0); // => "C"
 * judge.schemes; // => ["iso-20816-3-2022", "iso-10816-1-1995-annexB"]
 * judge.assumedFacts[2]; // => "power above 15 kW: not given, assumed"
 * ```
 */
export function machineClassifier(
  machine: MachineRef,
  from: ReadingTypeText,
  options: MachineClassifierOptions = {},
): MachineClassifier {
  return withParameters({ options, from, machine }, () => {
    return machineLadder(machine, from, options).judge;
  });
}
