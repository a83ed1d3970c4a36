import {
  attempt,
  frozen,
  inPlace,
  provenanceShape,
  requireChoice,
  requireGiven,
  requireKnownOptions,
  requireList,
  requireShape,
  requireText,
  type Source,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { knownFacts, type Machine } from "./machine";
import { knownPhrases, phraseAt } from "./machine-phrases";
import { type MachineType, machineTypes } from "./machine-types";
import { parseMachine } from "./parse-machine";
import type { SchemeRef } from "./scheme-of";

/** A kind of machine of your own: which built-in kind it is judged as, and what holds for every machine of it. */
export interface OwnMachineKind<Name extends string = string> {
  /** Its name, letters and blanks, such as `"pellet mill fan"`. */
  readonly name: Name;
  /** Other names that people write, read without regard to case. */
  readonly also?: readonly string[];
  /** The built-in kind whose tables are for it. */
  readonly judgedAs: MachineType;
  /** The tables that judge it; those for the built-in kind if not given. */
  readonly schemes?: readonly SchemeRef[];
  /** Facts of every machine of this kind, such as its class: `{ group: "2", support: "rigid" }`. */
  readonly facts?: Omit<Machine, "type" | "assumedFacts" | "notUnderstood">;
  /** Who says that it is judged so. */
  readonly source: Source;
}

const keys: Readonly<Record<keyof OwnMachineKind, true>> = /* @__PURE__ */ Object.freeze({
  name: true,
  also: true,
  judgedAs: true,
  schemes: true,
  facts: true,
  source: true,
});

const FORM = "a kind of machine with name, judgedAs and source";
const NAME = "a name of a kind of machine of its own: 3 to 40 letters, blanks and hyphens";

/** A name as names are compared: small letters, one blank between words. */
export function kindName(name: string): string {
  return name
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, " ");
}

/** A name that no built-in words have or hold, and that says no fact which would be lost with it. */
function requireFreeKind(name: string, option: string): string {
  const place = { parameter: "kind", option };
  const given = requireText(requireGiven(name, NAME, place), NAME, place);
  if (!/^[a-zA-Z\u00c0-\u024f](?:[ -]?[a-zA-Z\u00c0-\u024f]){2,39}$/.test(given)) {
    throw new VeladisError("syntax", { expected: NAME, received: shown(given), ...place });
  }
  const plain = ` ${kindName(given)} `;
  const isTaken =
    phraseAt(given)?.length === given.length || knownPhrases().some((one) => ` ${kindName(one)} `.includes(plain));
  if (isTaken) {
    throw new VeladisError("out-of-range", {
      expected: "a name of its own for a kind of machine: this one is built in, or part of one that is",
      received: shown(given),
      ...place,
    });
  }
  // a word that says a fact behind a comma says it here too
  const said = [given, ...given.split(/[ -]/)].flatMap((text) => {
    const read = attempt(() => knownFacts(parseMachine(text)));
    return read.ok ? Object.keys(read.value).filter((fact) => fact !== "type") : ["a fact in doubt"];
  });
  if (said.length === 0) return given;
  throw new VeladisError("out-of-range", {
    expected: `a name of a kind of machine that says no other fact: give ${said[0]} under facts`,
    received: shown(given),
    ...place,
  });
}

/**
 * A kind of machine of your own, checked and frozen, for {@link severityToolkit}.
 *
 * @throws {@link VeladisError} `unknown-option`, `missing-option`, `wrong-type`, `syntax`, and `out-of-range` for a name that
 *   is built in, is part of one that is, or says another fact (`rigid press`)
 * @example
 * ```ts
 * import { defineMachineKind } from "veladis/severity";
 *
 * const source = { title: "Hollowmere site rule 9, invented", provenance: "memory" } as const;
 * const kind = defineMachineKind({ name: "pellet mill", judgedAs: "gear drive", source });
 * kind.judgedAs; // => "gear drive"
 * defineMachineKind({ name: "gearbox", judgedAs: "gear drive", source }); // throws out-of-range
 * ```
 */
export function defineMachineKind<const Name extends string>(kind: OwnMachineKind<Name>): OwnMachineKind<Name> {
  return withParameters({ kind }, () => {
    requireKnownOptions(kind, keys, { what: "a part of a kind of machine", form: FORM, place: { parameter: "kind" } });
    const { name, also = [], judgedAs, schemes, facts = {}, source } = kind;
    requireFreeKind(name, "name");
    const others = requireList(also, "other names as a list", { parameter: "kind", option: "also" });
    for (const one of others) requireFreeKind(one, "also");
    const all = [name, ...others].map(kindName);
    const twice = all.find((one, i) => all.indexOf(one) !== i);
    if (twice !== undefined) {
      throw new VeladisError("out-of-range", {
        ...{ expected: "names of a kind of machine that differ", received: shown(twice) },
        ...{ parameter: "kind", option: "also" },
      });
    }
    requireChoice(judgedAs, Object.keys(machineTypes), "the built-in kind that it is judged as", {
      parameter: "kind",
      option: "judgedAs",
    });
    if ("type" in facts || "assumedFacts" in facts || "notUnderstood" in facts) {
      throw new VeladisError("unknown-option", {
        expected: "facts without type: the kind says it",
        received: shown(Object.keys(facts).find((one) => /type|assumed|not/.test(one))),
        ...{ parameter: "kind", option: "facts" },
      });
    }
    knownFacts({ ...facts, type: judgedAs });
    inPlace({ parameter: "kind", option: "source" }, () =>
      requireShape(source, { title: "text", provenance: provenanceShape }, "source"),
    );
    return frozen({
      name,
      also: [...others],
      judgedAs,
      ...(schemes !== undefined && {
        schemes: [...requireList(schemes, "schemes as a list", { parameter: "kind", option: "schemes" })],
      }),
      facts: { ...facts },
      source: { ...source },
    });
  });
}
