import type { Source } from "../../core/index";

/** A source whose numbers were read in the publication itself, on the page named. */
export function printed(title: string, where: string, page: string, note: string): Source {
  return Object.freeze({ title, where, provenance: "printed", page, note });
}

/** A source whose numbers were read in a named document of a maker, public body or handbook that quotes it. */
export function quoted(title: string, where: string, page: string, note: string): Source {
  return Object.freeze({ title, where, provenance: "quoted", page, note });
}

/** A source whose numbers were read on a page of which it is unknown how it was made. */
export function reported(title: string, where: string, page: string, note: string): Source {
  return Object.freeze({ title, where, provenance: "reported", page, note });
}

/** A rule of the trade without a source. */
export function practice(title: string, where: string, note: string): Source {
  return Object.freeze({ title, where, provenance: "practice", note });
}

/** A source whose numbers are recalled and were not checked against a printed copy. */
export function memory(title: string, where: string, note = "not checked against a printed copy"): Source {
  return Object.freeze({ title, where, provenance: "memory", note });
}

/** The source of a limit of which more than one value is printed, with what else is and which was taken. */
export function disputed(source: Source, text: string): Source {
  return Object.freeze({ ...source, disputed: text }) as Source;
}
