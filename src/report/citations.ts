import { knownText, type Source, sourceText } from "../core/index";
import { AS_STATED, type Proposal, type Reason } from "../setpoints/index";

/** A source as a sheet cites it, with how it is known. */
function citedText(source: Source): string {
  const { title, where, provenance, page, note, disputed } = source;
  if (provenance === "confirmed") return sourceText(source);
  const own = title === "common practice, no source" || note === AS_STATED;
  const known = own ? undefined : knownText(source);
  return [title, where, known, note, disputed && `disputed: ${disputed}`, page]
    .filter((part) => part !== undefined && part !== "")
    .join("; ");
}

/** Reasons with the number of their source, and the sources in that order. */
interface Citations {
  readonly reasons: readonly { readonly about: string; readonly text: string }[];
  /** Each source once; the first is number 1. */
  readonly sources: readonly string[];
}

/** Reasons under what they are about, each with the number of its source behind it. */
function citations(groups: readonly (readonly [about: string, reasons: readonly Reason[]])[]): Citations {
  const sources: string[] = [];
  const reasons = groups.flatMap(([about, list]) =>
    list.map(({ text, source }) => {
      const cited = citedText(source);
      if (!sources.includes(cited)) sources.push(cited);
      return { about, text: `${text} [${sources.indexOf(cited) + 1}]` };
    }),
  );
  return { reasons, sources };
}

/** The reasons of a proposal, each rule once. */
export function proposalCitations({ alarm, trip, raised, statistical, delay, hysteresis }: Proposal): Citations {
  const besides = statistical === null || alarm?.reasons[0] === statistical.reasons[0] ? [] : statistical.reasons;
  return citations([
    ["ALARM", alarm?.reasons ?? []],
    ["TRIP", trip?.reasons ?? []],
    ["raised", raised?.reasons ?? []],
    ["statistical", besides],
    ["delay", delay.reasons],
    ["hysteresis", hysteresis.reasons],
  ]);
}
