import { builtInSchemes, type Scheme } from "../../severity/index";

/** What tables and their classes say of themselves: remarks on how to read them, whatever the reading. */
export function tableNotes(schemes: readonly Scheme[] = Object.values(builtInSchemes)): ReadonlySet<string> {
  return new Set(
    schemes.flatMap(({ notes = [], classes }) => [
      ...notes,
      ...classes.flatMap(({ note }) => (note === undefined ? [] : [note])),
    ]),
  );
}
