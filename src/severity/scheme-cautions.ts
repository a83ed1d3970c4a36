import { GUIDE, isVerified, type Provenance, provenances } from "../core/index";
import type { Scheme } from "./scheme";

/** What to do about limits so known. */
function checkText(provenance: Provenance): string {
  return `limits ${provenances[provenance].text}: check them against the standard before relying on them`;
}

const GOVERN = "limits of the machine's maker, site rules, local codes and licensed practice govern";

/** What a reader of a verdict by this scheme is told, by how its least known limit is known. */
export function schemeCautions(scheme: Scheme, provenance: Provenance, note: string | undefined): string[] {
  const { status, replacedBy, notes } = scheme;
  return [
    ...(isVerified(provenance) ? [] : [checkText(provenance)]),
    ...(status === "withdrawn" ? [`withdrawn edition, replaced by ${replacedBy}`] : []),
    ...(status === "guide" ? [GUIDE] : []),
    ...(note === undefined ? [] : [note]),
    ...(notes ?? []),
    GOVERN,
  ];
}
