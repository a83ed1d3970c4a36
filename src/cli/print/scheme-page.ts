import { differencesOf, provenances, type Source, sourceText, visibleText } from "../../core/index";
import { format } from "../../reading/index";
import { type Criterion, conditionText, type LimitValue, type MachineClass, type Scheme } from "../../severity/index";
import { labelled } from "./labelled";
import { textTable } from "./text-table";

function limitText(limit: LimitValue | undefined, as: Criterion["as"]): string {
  if (limit === null || limit === undefined) return "none";
  if (typeof limit === "number") return format(limit, as, { digits: 4 }).replace(/\.?0+(?= )/, "");
  const root = Math.sqrt(limit.rootOf);
  const law = Number.isInteger(root) ? `${root}/root n` : `root(${limit.rootOf}/n)`;
  return `${law}${limit.atMost === undefined ? "" : `, not over ${limit.atMost}`} ${as}`;
}

/** How a limit is known, for its cell, and whether it is disputed; why stands among the sources. */
function knownCell({ provenance, disputed }: Source): string {
  return provenances[provenance].cell + (disputed === undefined ? "" : ", disputed");
}

/** The highest settings that a table prints beside its limits. */
function ceilingRows({ as, ceilings }: Criterion): string[][] {
  if (ceilings === undefined) return [];
  const { alarm, trip, source } = ceilings;
  const known = [knownCell(source), source.where ?? source.title];
  return [
    ["", "alarm at most", limitText(alarm, as), ...known],
    ["", "trip at most", limitText(trip, as), ...known],
  ];
}
/** Which peak a document means, in words. */
const peakText = {
  true: "a true peak, read in the waveform",
  rms: "1.414 x RMS, no true peak",
  open: "the document leaves open whether a true peak or 1.414 x RMS",
} as const;

function classRows(scheme: Scheme, { named, by, when, criteria }: MachineClass): string[][] {
  const which = conditionText({ ...named, ...when }) || "any";
  const decided = by === undefined ? "" : conditionText(by);
  return criteria.flatMap((criterion, i) => [
    ...Object.entries(criterion.limits).map(([name, limit], k) => {
      const source =
        (criterion.limitSources as Record<string, typeof criterion.source> | undefined)?.[name] ?? criterion.source;
      const first = i === 0 && k === 0;
      const label = scheme.kind === "grades" ? `${name}, up to` : name;
      return [
        first ? which : i === 0 && k === 1 ? decided && `(${decided})` : "",
        label,
        limitText(limit as LimitValue, criterion.as),
        knownCell(source),
        source.where ?? source.title,
      ];
    }),
    ...ceilingRows(criterion),
  ]);
}

/** The sources of the limits and ceilings that there are. */
function sourcesOf({ limits, source, limitSources, ceilings }: Criterion): Source[] {
  const own: Readonly<Record<string, Source | undefined>> = limitSources ?? {};
  const present = Object.entries(limits).filter(([, limit]) => limit !== null && limit !== undefined);
  return [...present.map(([name]) => own[name] ?? source), ...(ceilings === undefined ? [] : [ceilings.source])];
}

/** One scheme on a page: what it is for, every limit, and where they come from. */
export function schemePage(scheme: Scheme): string {
  const { id, kind, standard, edition, title, status, statusNote, replacedBy, scope, band, measuredOn, notes } = scheme;
  const table = textTable(
    [{ title: "class" }, { title: "limit" }, { title: "value", align: "right" }, { title: "known" }, { title: "from" }],
    scheme.classes.flatMap((one) => classRows(scheme, one)),
  );
  const criteria = scheme.classes.flatMap((one) => one.criteria);
  const sources = criteria.flatMap(sourcesOf);
  const facts = [
    labelled("kind", [kind]),
    labelled("status", [`${status}: ${statusNote}${replacedBy === undefined ? "" : `; replaced by ${replacedBy}`}`]),
    labelled("for", [scope]),
    labelled("chosen", scheme.byContract ? ["by name only, where an order has it"] : []),
    labelled("measure", [
      `${measuredOn}; ${band === null ? "band not stated by the source" : `${band[0]} to ${band[1]} Hz`}`,
    ]),
    labelled("peak", scheme.peakMeans === undefined ? [] : [peakText[scheme.peakMeans]]),
    ...Object.entries(scheme.meanings ?? {}).map(([fact, meaning]) => labelled(fact, [meaning as string])),
    labelled("notes", notes ?? []),
    labelled("differs", differencesOf(sources)),
    labelled("sources", [...new Set(sources.map(sourceText))]),
  ];
  return `${visibleText(`${id}: ${standard} (${edition})`)}\n${visibleText(title)}\n\n${table}\n${facts.join("")}`;
}
