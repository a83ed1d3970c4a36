import type { Scheme } from "veladis/severity";

/** The limits of tables, a line each: where it stands, and its value behind the last colon. */
export function limitLines(schemes: readonly Scheme[]): string[] {
  const seen = new Map<string, number>();
  return schemes.flatMap(({ id, classes }) =>
    classes.flatMap(({ when, criteria }) =>
      criteria.flatMap(({ as, limits, ceilings }) =>
        Object.entries({ ...limits, ...(ceilings && { ceilings }) })
          .filter(([, value]) => value !== null && value !== undefined)
          .map(([name, value]) => {
            const row = Object.entries(when ?? {}).map(
              ([fact, is]) => `${fact} ${typeof is === "string" ? is : JSON.stringify(is)}`,
            );
            const place = [`\`${id}\``, ...row, as, name].join(", ");
            const times = (seen.get(place) ?? 0) + 1;
            seen.set(place, times);
            return `${place}${times > 1 ? ` (${times})` : ""}: ${JSON.stringify(value)}`;
          }),
      ),
    ),
  );
}

const valuesOf = (lines: readonly string[]): Map<string, string> =>
  new Map(lines.map((line) => [line.slice(0, line.indexOf(": ")), line.slice(line.indexOf(": ") + 2)]));

const tableOf = (place: string): string => place.slice(0, place.indexOf(",")) || place;

/** Limits that differ from those of the last release, each as the beginning of its line in the changelog. */
export function corrections(released: readonly string[], now: readonly string[]): string[] {
  const [before, after] = [valuesOf(released), valuesOf(now)];
  const tables = new Set([...before.keys()].map(tableOf));
  const places = new Set([...before.keys(), ...after.keys()]);
  return [...places]
    .filter((place) => tables.has(tableOf(place)) && before.get(place) !== after.get(place))
    .map((place) => `- ${place}: ${before.get(place) ?? "none"} -> ${after.get(place) ?? "none"}`);
}

/** The limits of tables that the last release did not have. */
export function ofNewTables(released: readonly string[], now: readonly string[]): string[] {
  const tables = new Set([...valuesOf(released).keys()].map(tableOf));
  return now.filter((line) => !tables.has(tableOf(line)));
}

/** The corrections that the newest section of a changelog does not list, each with its source in brackets. */
export function unlisted(all: readonly string[], changelog: string): string[] {
  const newest = changelog.split(/^## /m)[1] ?? "";
  const listed = (/^### Corrected limits\n([\s\S]*?)(?=^### |$(?![\s\S]))/m.exec(newest)?.[1] ?? "").split("\n");
  return all.filter((one) => !listed.some((line) => line.startsWith(`${one} (`) && /\([^()\s].*\)$/.test(line)));
}
