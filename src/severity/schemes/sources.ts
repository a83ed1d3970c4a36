import type { Source } from "../../core/index";

/** A source whose numbers were read on the page named. */
export function published(title: string, where: string, page: string, note: string): Source {
  return Object.freeze({ title, where, provenance: "published", page, note });
}

/** A source whose numbers are recalled and were not checked against a printed copy. */
export function memory(title: string, where: string, note = "not checked against a printed copy"): Source {
  return Object.freeze({ title, where, provenance: "memory", note });
}
