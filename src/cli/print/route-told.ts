import { limitsCell, provenances, sourceText } from "../../core/index";
import type { JudgedRoute, RouteBasis } from "../../plant/index";
import { assumedWords } from "./assumed-words";
import { refusedMachines } from "./route-refused";

/** Machines that are named behind a text; of more their number. */
const MOST_TAGS = 6;

/** What is told once for all readings: a label, and texts with the machines that they are of. */
export interface RouteTold {
  readonly label: string;
  readonly texts: readonly string[];
}

/** Each text once, with the machines that it is of where it is not of all. */
function byMachine(bases: readonly RouteBasis[], textsOf: (basis: RouteBasis) => readonly string[]): string[] {
  const all = new Set(bases.map(({ tag }) => tag)).size;
  const found = new Map<string, Set<string>>();
  for (const basis of bases) {
    for (const text of textsOf(basis)) {
      const tags = found.get(text) ?? new Set();
      found.set(text, tags.add(basis.tag));
    }
  }
  return [...found].map(([text, tags]) => {
    if (tags.size === all && all > 1) return text;
    return tags.size > MOST_TAGS ? `${text} (${tags.size} machines)` : `${text} (${[...tags].join(", ")})`;
  });
}

/** What was assumed of a machine and its readings, in words. */
export function assumedOf({ assumed, assumedFacts }: RouteBasis): readonly string[] {
  return assumedWords({ assumed, assumedFacts, crestFactor: undefined });
}

/** What was not judged, in words. */
export function unjudgedOf({ unjudged }: RouteBasis): readonly string[] {
  return [...new Set(unjudged.map(({ as, because }) => `limits in ${as}: ${because}`))];
}

const chosen = {
  table: "table of the list",
  limits: "limits of the list",
  nameplate: "chosen by the nameplate",
} as const;

/** By what the readings of a machine are judged, in words. */
function judgedBy({ standards, chosenBy, provenance, confirmed }: RouteBasis): string {
  // of limits on the list nobody here knows more than what it states; their source says so
  const known = chosenBy === "limits" ? "" : `; ${limitsCell(provenance, confirmed)}`;
  return `${standards.join(" and ")}; ${chosen[chosenBy]}${known}`;
}

/** What refused readings leave unknown, in words. */
function refusedWords(judged: JudgedRoute): readonly string[] {
  const { notJudged, partly } = refusedMachines(judged);
  return [
    ...(notJudged.length === 0 ? [] : [`all readings, so that these are not judged: ${notJudged.join(", ")}`]),
    ...(partly.length === 0
      ? []
      : [`some readings, so that the zone is that of those that could be read: ${partly.join(", ")}`]),
  ];
}

/** What is told beside the verdicts on a route, by label. */
export function routeTold(judged: JudgedRoute): readonly RouteTold[] {
  const { bases, unread, pointsUnread, verdicts } = judged;
  const rows = verdicts.flatMap(({ tag, point, line, cautions }) =>
    cautions.map((text) => `${[tag, point].filter(Boolean).join(" ")}, line ${line}: ${text}`),
  );
  const known = byMachine(
    bases.filter(({ verified }) => !verified),
    ({ provenance, chosenBy }) => [
      chosenBy === "limits"
        ? "limits as stated on the list: check them against the source that it names"
        : `limits ${provenances[provenance].text}: check them against the standard`,
    ],
  );
  const all = [
    { label: "judged by", texts: byMachine(bases, (basis) => [judgedBy(basis)]) },
    { label: "known", texts: known },
    { label: "assumed", texts: byMachine(bases, assumedOf) },
    { label: "set aside", texts: byMachine(bases, ({ setAside }) => setAside) },
    { label: "not judged", texts: byMachine(bases, unjudgedOf) },
    { label: "change", texts: byMachine(bases, ({ notCompared }) => notCompared) },
    { label: "readings", texts: rows },
    { label: "refused", texts: refusedWords(judged) },
    {
      label: "not read",
      texts:
        unread.length === 0
          ? []
          : [unread.map(({ tag, line }) => (tag === "" ? `the row of line ${line}` : tag)).join(", ")],
    },
    {
      label: "points",
      texts: pointsUnread.map(
        ({ tag, point, line }) => `${tag} ${point}: read on the route before (line ${line}) and not on this one`,
      ),
    },
    { label: "source", texts: byMachine(bases, ({ limitSources }) => limitSources.map(sourceText)) },
    { label: "caution", texts: [...byMachine(bases, ({ cautions }) => cautions), ...judged.cautions] },
  ];
  return all.filter(({ texts }) => texts.length > 0);
}
