import { cached, requireList, VeladisError } from "../core/index";
import { type Admitted, admittedSchemes } from "./admitted-schemes";
import { isChecked } from "./checked";
import type { Fact } from "./facts";
import type { KnownFacts, Machine } from "./machine";
import { type MachineRef, machineFacts, machineNotes } from "./machine-facts";
import { type MissingFact, matchMachine } from "./match-machine";
import { decidingMissing, missingFacts, usualMissing } from "./missing-facts";
import { withNominalPower } from "./nominal-power";
import { type Assume, type PlacedMachine, placedFacts } from "./placed-machine";
import { requireKind } from "./require-kind";
import type { Scheme } from "./scheme";
import { type SchemeRef, schemeOf, schemesOf } from "./scheme-of";
import { builtInSchemes } from "./schemes/index";
import { requireUnderstood, wordsSetAside } from "./set-aside";
import { usualCaseAmong, usualTexts } from "./usual-case";
import { isForKind } from "./verdict";

/** A machine in each scheme that the known facts admit, at one place. */
export interface AdmittedMachines {
  readonly place: Scheme["place"];
  readonly machines: readonly PlacedMachine[];
  /** The facts that were not given and decide which of the schemes is the one. */
  readonly deciding: readonly Fact[];
}

/** Of the tables for such a machine, those that an order has to name, in words. */
function ofContract(schemes: readonly Scheme[], { type }: KnownFacts, place: Scheme["place"]): string {
  const those = schemes.filter((one) => one.byContract && one.place === place && isForKind(one, type));
  return those.length === 0 ? "" : ` (by name, where the order has it: ${those.map(({ id }) => id).join(", ")})`;
}

/** What is said of a new machine that only limits in service are for; refused where nothing may be assumed. */
function newAside({ condition }: KnownFacts, admitted: readonly Admitted[], assume: Assume, named: string): string[] {
  const isTested = admitted.some(({ scheme }) => scheme.kind === "acceptance");
  if (condition !== "new" || isTested || admitted.length === 0) return [];
  if (assume === "lowest limits") {
    return [`condition new: no acceptance limits for such a machine${named}; judged as in service`];
  }
  throw new VeladisError("out-of-range", {
    expected: `a machine in service, since there are no acceptance limits for such a machine${named}`,
    received: "condition new",
  });
}

/** The questions for what the schemes need to tell rows apart. */
function rowsMissing(admitted: readonly Admitted[]): readonly MissingFact[] {
  return admitted.flatMap(({ scheme, facts }) => matchMachine(scheme, facts).missing);
}

/** What was said of a machine besides its facts, and what it was taken for. */
interface Said {
  readonly given: KnownFacts;
  readonly assumed: readonly string[];
  readonly setAside: readonly string[];
}

function placedIn({ scheme, facts, scope, aside }: Admitted, said: Said, assume: Assume): PlacedMachine {
  const machine = placedFacts(scheme, facts, said.given, assume);
  return Object.freeze({
    ...machine,
    assumedFacts: Object.freeze([...said.assumed, ...scope, ...machine.assumedFacts]),
    setAside: Object.freeze([...said.setAside, ...aside, ...machine.setAside]),
  });
}

/** True for the built-in schemes, all in their order, confirmed or not: they go before one another as ever. */
function isWholeSet(schemes: readonly Scheme[]): boolean {
  return schemes.length === builtInSchemes.length && builtInSchemes.every(({ id }, i) => schemes[i]?.id === id);
}

/** A machine in the schemes that are for it at a place. */
function machinesAt(all: readonly Scheme[], ref: MachineRef, place: Scheme["place"], assume: Assume): AdmittedMachines {
  if (assume !== "lowest limits") requireUnderstood(ref);
  const known = machineFacts(ref);
  const isWhole = isWholeSet(all);
  const schemes = isWhole ? all.filter(({ byContract }) => !byContract) : all;
  if (schemes.some(({ machines }) => machines !== undefined)) requireKind(ref, known);
  const admitted = admittedSchemes(schemes, known, place, isWhole ? "first" : "none");
  const kinds = new Set(admitted.map(({ scheme }) => scheme.kind));
  const deciding = [...new Set(admitted.flatMap((one) => one.deciding))];
  const usual = usualCaseAmong(schemes, known, place);
  // zones and a fan's limits, or a pass, are answers to other questions: no set holds both
  if (assume !== "lowest limits" || kinds.size > 1) {
    const asked = assume === "nothing" && admitted.length > 0 ? usualMissing(usual) : [];
    const rows = asked.length > 0 ? rowsMissing(admitted) : [];
    const missing = [...decidingMissing(deciding), ...rows, ...asked];
    const those = admitted.map(({ scheme }) => scheme);
    if (missing.length > 0) throw missingFacts(missing, withNominalPower(those, known));
  }
  const { assumedFacts: assumed } = machineNotes(ref);
  const said = {
    given: known,
    assumed: [...assumed, ...usualTexts(usual)],
    setAside: [...wordsSetAside(ref), ...newAside(known, admitted, assume, ofContract(all, known, place))],
  };
  const machines = admitted.map((one) => placedIn(one, said, assume));
  return Object.freeze({ place, machines: Object.freeze(machines), deciding: Object.freeze(deciding) });
}

/** What was found for machines of some schemes, remembered by their words or their data. */
function remember(schemes: readonly Scheme[]) {
  return cached((key): AdmittedMachines => {
    const [place, assume, form] = key.split("\n", 3) as [Scheme["place"], Assume, string];
    const said = key.slice(place.length + assume.length + form.length + 3);
    return machinesAt(schemes, form === "words" ? said : (JSON.parse(said) as Machine), place, assume);
  });
}

const ofBuiltIn = /* @__PURE__ */ remember(builtInSchemes as readonly Scheme[]);

const ofLists = /* @__PURE__ */ new WeakMap<readonly SchemeRef[], ReturnType<typeof remember>>();

/** What is remembered for a list that nobody can change, as that of confirmed schemes; undefined for any other. */
function rememberedOf(schemes: readonly SchemeRef[]): ReturnType<typeof remember> | undefined {
  const known = ofLists.get(schemes);
  if (known !== undefined) return known;
  if (!Object.isFrozen(schemes) || !isWholeSet(schemes.map(schemeOf))) return undefined;
  if (!schemes.every((one, i) => one === builtInSchemes[i] || (typeof one === "object" && isChecked(one))))
    return undefined;
  const made = remember(schemes.map(schemeOf));
  ofLists.set(schemes, made);
  return made;
}

const SCHEMES = { parameter: "options", option: "schemes" };

/**
 * A machine in every scheme that its known facts admit for readings at a place; none where no scheme is for it.
 *
 * @throws {@link VeladisError} `missing-fact`, `out-of-range`, `unknown-option`
 */
export function admittedMachines(
  ref: MachineRef,
  place: Scheme["place"],
  assume: Assume,
  schemes?: readonly SchemeRef[],
): AdmittedMachines {
  const found = schemes === undefined ? ofBuiltIn : rememberedOf(requireList(schemes, "schemes as a list", SCHEMES));
  if (found === undefined) {
    const own = schemesOf(schemes as readonly SchemeRef[], SCHEMES);
    return machinesAt(own, ref, place, assume);
  }
  if (typeof ref === "string") return found(`${place}\n${assume}\nwords\n${ref}`);
  machineFacts(ref);
  return found(`${place}\n${assume}\ndata\n${JSON.stringify(ref)}`);
}
