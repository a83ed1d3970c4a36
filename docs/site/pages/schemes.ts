import { countsText } from "../../../src/cli/print/counts-text";
import {
  builtInSchemes,
  type Condition,
  type Criterion,
  conditionText,
  countLimits,
  type LimitValue,
  type MachineClass,
  type Scheme,
} from "../../../src/entries/severity";
import { inListOrder } from "../../../src/severity/index";
import { cell, KNOWN, known, MADE, page, sourceText, table } from "./markdown";

const isEmpty = (condition: Condition | undefined): boolean =>
  condition === undefined || Object.keys(condition).length === 0;

function limitText(limit: LimitValue): string {
  if (limit === null) return "none";
  if (typeof limit === "number") return String(limit);
  const most = limit.atMost === undefined ? "" : `, at most ${limit.atMost}`;
  return `${Number(Math.sqrt(limit.rootOf).toPrecision(6))}/root n${most}`;
}

function classText({ named, by, when, within }: MachineClass): string {
  const parts = [
    isEmpty(named) ? "" : conditionText(named as Condition),
    isEmpty(by) ? "" : `${isEmpty(named) ? "" : "or "}${conditionText(by as Condition)}`,
    isEmpty(when) ? "" : conditionText(when as Condition),
    isEmpty(within) ? "" : `within ${conditionText(within as Condition)}`,
  ].filter(Boolean);
  return parts.length === 0 ? "every machine it is for" : parts.join(", ");
}

/** The names of the limits of a scheme, in the order in which its classes give them. */
function limitNames({ classes }: Scheme): string[] {
  const given = classes.flatMap(({ criteria }) => criteria.map(({ limits }) => Object.keys(limits)));
  const most = given.reduce((a, b) => (b.length > a.length ? b : a), []);
  return [...new Set([...most, ...given.flat()])];
}

/** One row a class and quantity; a limit from memory says so in its cell. */
function limitRow(one: MachineClass, criterion: Criterion, names: readonly string[]): string[] {
  const { as, limits, limitSources, source, when } = criterion;
  const only = isEmpty(when) ? "" : `, only ${conditionText(when as Condition)}`;
  const cells = names.map((name) => {
    const limit = (limits as Record<string, LimitValue>)[name];
    if (limit === undefined || limit === null) return "";
    const from = (limitSources as Record<string, Criterion["source"]> | undefined)?.[name] ?? source;
    return `${limitText(limit)} ${known(from)}`;
  });
  return [classText(one) + only, as, ...cells];
}

/** The rows of a class, its machines told once. */
function limitRows(one: MachineClass, names: readonly string[]): string[][] {
  const rows = one.criteria.map((criterion) => limitRow(one, criterion, names));
  return rows.map(([machines = "", ...rest], i) => [machines === rows[i - 1]?.[0] ? "" : machines, ...rest]);
}

/** The highest settings that a table prints beside the limits of a class. */
function ceilingTexts(one: MachineClass): string[] {
  return one.criteria.flatMap(({ as, ceilings, when }) =>
    ceilings === undefined
      ? []
      : [
          `- ${when === undefined ? classText(one) : conditionText(when)}: alarm at most ${ceilings.alarm}, trip at most ${ceilings.trip} ${as} (${known(ceilings.source)})`,
        ],
  );
}

const bandText = (band: Scheme["band"]): string => (band === null ? "not given" : `${band[0]} to ${band[1]} Hz`);

function sourcesOf(scheme: Scheme): string[] {
  const all = scheme.classes.flatMap(({ criteria }) =>
    criteria.flatMap(({ source, limitSources, ceilings }) => [
      source,
      ...Object.values(limitSources ?? {}),
      ...(ceilings ? [ceilings.source] : []),
    ]),
  );
  return [...new Set(all.filter((one) => one !== undefined).map((one) => `- ${known(one)}: ${sourceText(one)}`))];
}

function schemePage(scheme: Scheme): string {
  const {
    id,
    standard,
    edition,
    title,
    status,
    statusNote,
    replacedBy,
    scope,
    measuredOn,
    band,
    slowBand,
    exclusions = [],
    notes = [],
    classes,
    kind,
    grades,
  } = scheme;
  const names = limitNames(scheme);
  const rows = classes.flatMap((one) => limitRows(one, names));
  const ceilings = [...new Set(classes.flatMap(ceilingTexts))];
  return page(id, [
    `**${standard} (${edition})**: ${cell(title)}. ${MADE}`,
    table(
      ["table", `\`${id}\``],
      [
        ["kind", `${kind}${grades ? `: ${grades.join(", ")}` : ""}`],
        ["status", `${status}${replacedBy ? `, replaced by ${replacedBy}` : ""}; ${statusNote}`],
        ["scope", scope],
        ...(scheme.byContract ? [["chosen", "by name only, where an order has it"]] : []),
        ["measured on", measuredOn],
        ...(scheme.peakMeans
          ? [["peak means", { true: "a true peak", rms: "1.414 x RMS", open: "left open" }[scheme.peakMeans]]]
          : []),
        ["band", `${bandText(band)}${slowBand ? `; ${bandText(slowBand.band)} below ${slowBand.below} r/min` : ""}`],
      ],
    ),
    KNOWN,
    `## Limits\n\n${table(["machines", "in", ...names], rows)}`,
    ...(ceilings.length > 0 ? [`## Highest settings\n\n${ceilings.join("\n")}`] : []),
    ...(exclusions.length > 0
      ? [`## Left to other tables\n\n${exclusions.map(({ reason }) => `- ${reason}`).join("\n")}`]
      : []),
    ...(notes.length > 0 ? [`## Notes\n\n${notes.map((note) => `- ${note}`).join("\n")}`] : []),
    `## Sources\n\n${sourcesOf(scheme).join("\n")}`,
    "Limits of the machine's maker, site rules, local codes and licensed practice govern.",
  ]);
}

/** A page a table of limits, and one that lists them. */
export function schemePages(): Record<string, string> {
  const schemes: readonly Scheme[] = inListOrder(builtInSchemes);
  const file = (scheme: Scheme): string => `scheme-${scheme.id.toLowerCase()}.md`;
  const { schemes: counts } = countLimits();
  const rows = schemes.map((scheme) => {
    const count = counts.find((one) => one.scheme === scheme);
    return [
      `[\`${scheme.id}\`](./${file(scheme)})`,
      `${scheme.standard} (${scheme.edition})`,
      scheme.kind,
      scheme.status,
      count === undefined ? "" : countsText(count),
    ];
  });
  return {
    "schemes.md": page(
      "Tables of severity limits",
      [
        `${MADE} How the numbers are known is told in [where the limits come from](../guides/severity-sources.md).`,
        KNOWN,
        "By standard, part and edition:",
        table(["id", "standard", "kind", "status", "limits"], rows),
      ],
      ["children:", ...schemes.map((scheme) => `  - ./${file(scheme)}`)],
    ),
    ...Object.fromEntries(schemes.map((scheme) => [file(scheme), schemePage(scheme)])),
  };
}
