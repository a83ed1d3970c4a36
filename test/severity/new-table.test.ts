import { readdirSync, readFileSync } from "node:fs";
import * as exported from "veladis/severity";
import { builtInSchemes, type Scheme } from "veladis/severity";
import { expect, it } from "vitest";
import { contractBySpeed, severityLimits } from "../references/severity-limits";

const folder = new URL("../../src/severity/schemes/", import.meta.url);
const RUN = "npx vitest run --config test/vitest.config.ts --project node test/severity";
const guide = readFileSync(new URL("../../docs/guides/severity-sources.md", import.meta.url), "utf8");
const copied = new Set([...Object.keys(severityLimits), ...contractBySpeed.map(([id]) => id)]);

/** True where every limit follows the speed: such tables are recomputed, and not copied by hand. */
function isBySpeed({ classes }: Scheme): boolean {
  return classes.every(({ criteria }) =>
    criteria.every(({ limits }) => Object.values(limits).every((limit) => typeof limit === "object")),
  );
}

/** All that a table in a file lacks, in words. */
function gapsOf(constant: string, scheme: Scheme): string[] {
  const { id, classes, peakMeans } = scheme;
  const isPeak = classes.some(({ criteria }) => criteria.some(({ as }) => / pk$/.test(as)));
  const gaps: [boolean, string][] = [
    [constant in exported && builtInSchemes.some((one) => one.id === id), `its line in src/severity/schemes/tables.ts`],
    [copied.has(id) || isBySpeed(scheme), `rows of ${id} in test/references/severity-limits.ts, typed from the source`],
    [peakMeans !== undefined || !isPeak, 'peakMeans, since limits are in peak: "true", "rms" or "open"'],
    [guide.includes(`[\`${id}\`]`), `its counts in the guide: UPDATE_LIMITS=1 ${RUN}/counts.test.ts`],
  ];
  return gaps.flatMap(([isThere, text]) => (isThere ? [] : [text]));
}

it("a severity table has all that belongs to it; this is the whole list of what is missing", async () => {
  const missing: string[] = [];
  for (const name of readdirSync(folder).filter((one) => one.endsWith(".ts"))) {
    const text = readFileSync(new URL(name, folder), "utf8");
    const [, constant] = /export const (\w+) = \/\* @__PURE__ \*\/ builtIn\(/.exec(text) ?? [];
    if (constant === undefined) continue;
    const file = (await import(`../../src/severity/schemes/${name.slice(0, -3)}.ts`)) as Record<string, Scheme>;
    missing.push(...gapsOf(constant, file[constant] as Scheme).map((gap) => `${name} lacks ${gap}`));
  }
  const told = missing.length === 0 ? [] : [...missing, `then run ${RUN}/new-table.test.ts and ${RUN}/tables.test.ts`];
  expect(told.join("\n")).toBe("");
});
