import { requireKnownOptions, requireList, shown, VeladisError, withParameters } from "../core/index";
import { type ClassifyOptions, classify } from "./classify";
import { type JudgeOptions, judge } from "./judge";
import type { Judgement } from "./judgement";
import { type CriterionLimits, type LimitsForOptions, limitsFor } from "./limits-for";
import type { Machine } from "./machine";
import type { MachineRef } from "./machine-facts";
import { defineMachineKind, kindName, type OwnMachineKind } from "./own-kind";
import { type OwnMachine, ownMachineReader } from "./own-machine";
import type { ReadingRef } from "./readings";
import type { KindOf, SchemeRef } from "./scheme-of";
import { type Selection, selectSchemes } from "./select-schemes";
import type { Verdict } from "./verdict-of";

/** What a toolkit of judging is made of. */
export interface SeverityToolkitParts<Name extends string = string> {
  readonly machineKinds: readonly OwnMachineKind<Name>[];
}

/** Options with a machine of a kind of your own. */
export type OwnMachineOptions<Options extends { readonly machine?: MachineRef }, Name extends string> = Omit<
  Options,
  "machine"
> & { readonly machine?: OwnMachine<Name> | string };

/** Judging that knows kinds of machine of your own besides the built-in ones. */
export interface SeverityToolkit<Name extends string> {
  /** As {@link judge}; a kind with schemes of its own is judged by those, unless others are given. */
  judge(reading: ReadingRef, machine: OwnMachine<Name> | string, options?: JudgeOptions): Verdict;
  /** As {@link classify}. */
  classify<const S extends SchemeRef>(
    reading: ReadingRef,
    options: OwnMachineOptions<ClassifyOptions<S>, Name>,
  ): Judgement<KindOf<S>>;
  /** As {@link limitsFor}. */
  limitsFor<const S extends SchemeRef>(
    options: OwnMachineOptions<LimitsForOptions<S>, Name>,
  ): readonly CriterionLimits<KindOf<S>>[];
  /** As {@link selectSchemes}. */
  selectSchemes(machine: OwnMachine<Name> | string): Selection;
  /** As {@link parseMachine}: a machine that all other functions read; `assumedFacts` names the kind of your own. */
  parseMachine(line: string): Machine;
}

/**
 * Judging that knows kinds of machine of your own. Nothing is registered anywhere; all other functions read what they did.
 * What a kind is judged as is named first in `assumedFacts`.
 *
 * @param parts - what {@link defineMachineKind} takes or gave
 * @throws {@link VeladisError} as {@link defineMachineKind}; `out-of-range` for two kinds of one name; later, for a fact that
 *   contradicts what the kind says, and all that {@link judge} refuses
 * @example
 * ```ts
 * import { severityToolkit } from "veladis/severity";
 *
 * const kit = severityToolkit({
 *   machineKinds: [
 *     {
 *       name: "pellet mill",
 *       also: ["pelletiser"],
 *       judgedAs: "gear drive",
 *       facts: { support: "rigid" },
 *       source: { title: "Hollowmere site rule 9, invented", provenance: "memory" },
 *     },
 *   ],
 * });
 * kit.parseMachine("pelletiser 160 kW 1480 r/min").type; // => "gear drive"
 * const verdict = kit.judge("4.1 mm/s rms", "pellet mill 160 kW 1480 r/min");
 * verdict.assumedFacts[0]; // => 'type gear drive: for "pellet mill", a kind of your own (Hollowmere site rule 9, invented)'
 * kit.judge("4.1 mm/s rms", "pellet mill on springs 160 kW 1480 r/min"); // throws out-of-range
 * ```
 */
export function severityToolkit<const Name extends string>(parts: SeverityToolkitParts<Name>): SeverityToolkit<Name> {
  return withParameters({ parts }, () => {
    const { machineKinds } = requireKnownOptions(
      parts,
      { machineKinds: true },
      {
        what: "a part of a toolkit of judging",
        form: "parts such as { machineKinds: [...] }",
        place: { parameter: "parts" },
      },
    );
    const place = { parameter: "parts", option: "machineKinds" };
    const kinds = requireList(machineKinds, "kinds of machine as a list", place).map((kind) => defineMachineKind(kind));
    const names = kinds.flatMap(({ name, also = [] }) => [name, ...also].map(kindName));
    const twice = names.find((name, i) => names.indexOf(name) !== i);
    if (twice !== undefined) {
      throw new VeladisError("out-of-range", {
        ...{ expected: "names that differ in one toolkit", received: shown(twice) },
        ...place,
      });
    }
    const read = ownMachineReader(kinds);
    const plain = (machine: unknown): Machine => read(machine as MachineRef).machine;
    const toOptions = <Options extends { readonly machine?: unknown }>(options: Options): Options =>
      options?.machine === undefined ? options : { ...options, machine: plain(options.machine) };
    return Object.freeze({
      judge: (reading: ReadingRef, machine: unknown, options: JudgeOptions = {}) => {
        const { machine: own, kind } = read(machine as MachineRef);
        const schemes = kind?.schemes;
        return judge(reading, own, schemes === undefined || options?.schemes ? options : { ...options, schemes });
      },
      classify: (reading: ReadingRef, options: ClassifyOptions) => classify(reading, toOptions(options)),
      limitsFor: (options: LimitsForOptions) => limitsFor(toOptions(options)),
      selectSchemes: (machine: unknown) => selectSchemes(plain(machine)),
      parseMachine: (line: string) => {
        if (typeof line === "string") return plain(line);
        throw new VeladisError("wrong-type", {
          ...{ expected: "a machine in words", received: shown(line) },
          parameter: "line",
        });
      },
    }) as unknown as SeverityToolkit<Name>;
  });
}
