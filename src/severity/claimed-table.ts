import { isConfirmedCopy } from "./confirmed-copy";
import { folded } from "./label";
import type { MachineClass, Scheme } from "./scheme";

/** A class as text, without where its limits come from; keys in one order, since a person writes them in any. */
function limitsText(one: MachineClass): string {
  return JSON.stringify(one, (key, value: unknown) => {
    if (key === "source" || key === "limitSources" || key === "note") return undefined;
    if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
    return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}

/**
 * The scheme among others whose standard and edition another one bears with rows that it does not have: who reads the
 * answer would take its limits for those of the standard. Undefined where there is none, and for confirmed copies.
 */
export function claimedTable(scheme: Scheme, all: readonly Scheme[]): Scheme | undefined {
  const key = ({ standard, edition }: Scheme): string => `${folded(standard)}:${folded(edition)}`;
  const claimed = all.filter((one) => key(one) === key(scheme));
  if (claimed.length === 0) return undefined;
  if (claimed.some((one) => isConfirmedCopy({ ...one, id: scheme.id }, scheme))) return undefined;
  const rows = new Set(claimed.flatMap(({ classes }) => classes.map(limitsText)));
  return scheme.classes.every((one) => rows.has(limitsText(one)))
    ? undefined
    : (claimed.find(({ kind, place }) => kind === scheme.kind && place === scheme.place) ?? claimed[0]);
}
