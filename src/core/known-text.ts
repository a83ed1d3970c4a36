import { type Provenance, provenances } from "./provenance";
import type { Source } from "./source";

/** How a value of this source is known, in words; of a confirmed one with who confirmed it, when and on which page. */
export function knownText({ provenance, by, second, on, page }: Source): string {
  if (provenance !== "confirmed" || by === undefined) return provenances[provenance].text;
  const who = second === undefined ? by : `${by} and ${second}`;
  return `confirmed by ${[who, on, page].filter(Boolean).join(", ")}`;
}

/** A source as it is cited: title and place, who confirmed it, what is to be known of it, and the page where it was read. */
export function sourceText(source: Source): string {
  const { title, where, provenance, note, page, disputed } = source;
  const told = disputed && `disputed: ${disputed}`;
  const known = provenance === "confirmed" ? [knownText(source), note] : [note, told, page];
  return [title, where, ...known].filter(Boolean).join("; ");
}

/**
 * How limits are known, in words for one line: what their verification lacks, and who confirmed them, all or in part.
 * Nothing for limits that are all printed.
 *
 * @param confirmed - who confirmed limits among them, as {@link knownText} says it
 */
export function limitsKnown(provenance: Provenance, confirmed: readonly string[] = []): string | undefined {
  const signed = confirmed.join("; ");
  if (provenance === "confirmed") return `limits ${signed || provenances.confirmed.text}`;
  const part = signed === "" ? [] : [`in part ${signed}`];
  const least = provenance === "printed" ? [] : [provenances[provenance].text];
  const all = [...least, ...part];
  return all.length === 0 ? undefined : `limits ${all.join("; ")}`;
}

/** The same for a cell of a table. */
export function limitsCell(provenance: Provenance, confirmed: readonly string[]): string {
  const { cell } = provenances[provenance];
  if (confirmed.length === 0) return cell;
  return provenance === "confirmed" ? confirmed.join("; ") : `${cell}; in part ${confirmed.join("; ")}`;
}

/** Who confirmed limits of these sources, each once. */
export function signaturesOf(sources: readonly Source[]): readonly string[] {
  return [...new Set(sources.filter(({ provenance }) => provenance === "confirmed").map(knownText))];
}

/** What is said of limits for which the printed copy has another value than the table had. */
export function differencesOf(sources: readonly Source[]): readonly string[] {
  const told = sources.filter(({ shipped }) => shipped !== undefined).map(({ note }) => note ?? "");
  return [...new Set(told)].map((text) => `DIFFERS FROM THE TABLE AS SHIPPED: ${text}`);
}
