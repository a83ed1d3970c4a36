import type { Scheme } from "./scheme";

/** A standard with its edition, in short: `ISO 10816-7:2009`; `API 541, edition not stated` where it is not known. */
export function editionText({ standard, edition = "not stated" }: Partial<Scheme>): string {
  return edition.startsWith("not stated") ? `${standard}, edition ${edition}` : `${standard}:${edition}`;
}

/** The same in a sentence: `ISO 10816-7 (2009)`; `Hollowmere rule 7, edition not stated`. */
export function standardText({ standard, edition }: Pick<Scheme, "standard" | "edition">): string {
  return edition.startsWith("not stated") ? `${standard}, edition ${edition}` : `${standard} (${edition})`;
}
