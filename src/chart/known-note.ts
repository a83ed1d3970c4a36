import { isVerified, limitsKnown, type Provenance } from "../core/index";

/** The table that limits are of, with how they are known, as a sentence of the small print. */
export function knownNote(table: string, provenance: Provenance, confirmed: readonly string[]): string {
  const known = limitsKnown(provenance, confirmed);
  if (known === undefined) return `${table}.`;
  const check = isVerified(provenance) ? "" : ": check them against the standard before relying on them";
  return `${table}, ${known}${check}.`;
}
