import { sourceText, VeladisError, visibleText } from "../core/index";
import type { Frequency } from "../frequency/index";
import { parsedType } from "../reading/index";
import { type Assume, type MachineRef, machineLadder, type SchemeRef, schemeLadder } from "../severity/index";
import { columnList, type LimitRow } from "./limit-columns";
import { limitOfBound } from "./raised-limit";
import { toldOf } from "./zone-remark";

/** A machine whose readings are judged, by the name that the readings have for it. */
export interface NamedMachine {
  readonly name: string;
  /** The machine, as data or in words, with its kind at least. */
  readonly machine: MachineRef;
  /** The running frequency of this machine, where its limits are of another quantity than the readings, or others too. */
  readonly at?: Frequency;
  /** The one scheme to judge it by, such as limits of its maker; those that its facts admit, if not given. */
  readonly scheme?: SchemeRef;
}

/** A machine that is refused, and why: by the library, or before, as one of two with the same name. */
export interface RefusedMachine {
  readonly name: string;
  readonly error: VeladisError;
}

/** What is the same for all machines of a table of limits. */
export interface JudgedAlike {
  /** What the readings are judged in. */
  readonly from: string;
  readonly at?: Frequency;
  readonly crestFactor?: number;
  readonly assume?: Assume;
  readonly schemes?: readonly SchemeRef[];
  /** What the readings have assumed before they are judged. */
  readonly assumedBefore?: string;
  /** True where the frequency is that of the row. */
  readonly isByRow?: boolean;
  /** True for readings that were displacements: whether of housing or shaft, the machine must say. */
  readonly wasDisplacement?: boolean;
}

const empty = /* @__PURE__ */ (() =>
  Object.freeze(Object.fromEntries(columnList.map(([key]) => [key, null]))) as unknown as LimitRow)();

function rowsOf({ name, machine, at: own, scheme }: NamedMachine, alike: JudgedAlike): readonly LimitRow[] {
  const { from, at = own, crestFactor, assume, schemes, assumedBefore, wasDisplacement = false } = alike;
  if (own !== undefined && (alike.at !== undefined || alike.isByRow === true)) {
    throw new VeladisError("wrong-frequency", {
      expected: "one frequency, of the machine or of all",
      received: "both",
      option: "at",
    });
  }
  const told = {
    ...(at !== undefined && { at }),
    ...(crestFactor !== undefined && { crestFactor }),
    assume: assume === undefined ? "lowest limits" : assume,
  };
  const { judge, isOpen, isPlaceAssumed, rows } =
    scheme === undefined
      ? machineLadder(machine, from, { ...told, ...(schemes !== undefined && { schemes }) })
      : schemeLadder(scheme, machine, from, told);
  if (wasDisplacement && isPlaceAssumed) {
    throw new VeladisError("missing-fact", {
      expected: "the place of the displacement, housing or shaft",
      received: "a machine without one",
      fact: "place",
    });
  }
  const isLevel = parsedType(judge.from).reference !== 0;
  const remarks = [...(assumedBefore ? [`assumed: ${assumedBefore}`] : []), ...toldOf(judge, crestFactor)];
  const assumed = remarks.length === 0 ? null : visibleText(remarks.join("; "));
  const all = rows();
  const deciding = all.filter(({ decides }) => decides === "zone").length;
  return all.map((row) => ({
    machine: name,
    readings: judge.from,
    scheme: row.scheme,
    standard: visibleText(row.standard),
    edition: visibleText(row.edition),
    row: visibleText(row.row),
    as: row.as,
    name: row.name,
    printed: row.printed,
    step: row.step,
    zone: row.zone,
    beyond: row.beyond,
    last: judge.zones.at(-1) as string,
    limit: limitOfBound(row.limit, row.bound, isLevel),
    decides: row.decides,
    open: isOpen ? 1 : 0,
    criterion: row.criterion,
    rows: all.length,
    deciding,
    grade: row.provenance,
    source: visibleText(sourceText(row.source)),
    assumed,
    refused: null,
  }));
}

/** The rows of all machines, one without limits for each that is refused. */
export function limitRows(machines: readonly (NamedMachine | RefusedMachine)[], alike: JudgedAlike) {
  const rows: LimitRow[] = [];
  const refused: RefusedMachine[] = [];
  for (const one of machines) {
    try {
      if ("error" in one) throw one.error;
      rows.push(...rowsOf(one, alike));
    } catch (error) {
      if (!VeladisError.is(error)) throw error;
      refused.push({ name: one.name, error });
      rows.push({
        ...empty,
        machine: one.name,
        readings: parsedType(alike.from).type,
        rows: 1,
        deciding: 0,
        refused: visibleText(error.message),
      });
    }
  }
  return { rows, refused };
}
