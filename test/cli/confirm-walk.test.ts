import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type ConfirmableLimit, confirmableLimits } from "veladis/severity";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const id = "iso-10816-7-2009";
const signedBy = "confirmed by J. Example, 2024-03-04, p. 12";
const limits = confirmableLimits(id);
let folder = "";
let template = "";
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "veladis-walk-"));
  template = (await veladis(["schemes", id, "--sheet", "csv"])).out;
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The template as a person fills it in who signs once: what is typed behind each line, and how many keys that takes. */
function typed(values: readonly string[], signature = "12,J. Example,2024-03-04,"): { file: string; keys: number } {
  const [header = "", first = "", ...lines] = template.trimEnd().split("\n");
  const empty = ",,,,,,,";
  const sign = (line: string, agrees: string, printed: string, rest: string): string =>
    `${line.slice(0, -empty.length)},${agrees},${printed},${rest},`;
  const filled = [
    sign(first, "", "", signature),
    ...lines.map((line, i) =>
      values[i] === ""
        ? line
        : values[i] === "yes"
          ? sign(line, "yes", "", ",,,")
          : sign(line, "", values[i] as string, ",,,"),
    ),
  ];
  const file = join(folder, `${Math.random()}.csv`);
  writeFileSync(file, `${[header, ...filled].join("\n")}\n`);
  // and a key to go to the next cell
  return { file, keys: [signature, ...values].join("").replace(/,/g, "").length + values.length + 4 };
}

const all = limits.map(() => "yes");

/** A machine of the row of a limit. */
function machineOf({ row }: ConfirmableLimit): string {
  const [, category = "I"] = /category (I+)/.exec(row) ?? [];
  const slow = row.startsWith("every row") ? "590 r/min" : "2980 r/min";
  return `pump ${row.includes("above 200 kW") ? "250 kW" : "90 kW"} ${slow} category ${category}`;
}

describe("ISO 10816-7 confirmed by a person with a printed table and the sheet", () => {
  it("the sheet for paper has every row, limit and value, a box each, in the order of the file", async () => {
    const { out } = await veladis(["schemes", id, "--sheet", "html"]);
    expect(out.split("\u2610")).toHaveLength(limits.length + 1);
    let at = 0;
    for (const { row, limit, shipped, as } of limits) {
      const line = `<td>${row}</td><td>${limit}</td><td>${shipped} ${as}</td>`;
      const found = out
        .replace(/<td[^>]*>/g, "<td>")
        .replace(/\s*\n\s*/g, "")
        .indexOf(line, at);
      expect(found, line).toBeGreaterThan(-1);
      at = found;
    }
    expect(out).toContain("veladis schemes iso-10816-7-2009 --sheet csv &gt; iso-10816-7-2009.csv");
  });

  it("the file has all but the values and one signature, and a person who agrees types 130 keys", () => {
    const lines = template.trimEnd().split("\n").slice(2);
    expect(lines).toHaveLength(limits.length);
    const { keys } = typed(all);
    // ten minutes are 600 seconds: 25 limits to read take the most of them
    expect(keys).toBeLessThanOrEqual(130);
  });

  it("then every limit is confirmed, and none is from memory", async () => {
    const { file } = typed(all);
    const { out } = await veladis(["schemes", id, "--confirmed", file]);
    expect(out).not.toMatch(/MEMORY|reported/);
    expect((await veladis(["schemes", "--confirmed", file])).out).toMatch(/iso-10816-7-2009 .* 25 confirmed$/m);
  });

  it.each(limits.filter(({ limit }) => !limit.endsWith("at most")))(
    "$row, $limit: judge says who confirmed it, below and above",
    async (limit) => {
      const { file } = typed(all);
      const unit = limit.as;
      for (const [value, zone] of [
        [limit.shipped * 0.99, limit.limit[0]],
        [limit.shipped * 1.01, limit.limit[2]],
      ] as const) {
        const args = ["judge", `${value} ${unit}`, "--machine", `${machineOf(limit)}, housing`, "--confirmed", file];
        const { out, code } = await veladis(args);
        expect(code).toBe(0);
        expect(out).toMatch(new RegExp(`zone ${zone}(?:,| or worse)`));
        expect(out.replace(/\s+/g, " ")).toContain(signedBy);
        const { verified, confirmed } = JSON.parse((await veladis([...args, "--json"])).out);
        expect([verified, confirmed.join()]).toEqual([true, expect.stringContaining(signedBy)]);
      }
    },
  );

  it.each(limits.map((limit, i) => ({ ...limit, i })))(
    "$row, $limit: another value on the copy is taken, and printed loudly",
    async ({ i, ...limit }) => {
      const values = all.map((one, k) => (k === i ? `${Number((limit.shipped * 0.97).toPrecision(3))}` : one));
      const { file } = typed(values);
      const { out, err, code } = await veladis(["schemes", id, "--confirmed", file]);
      expect([code, err]).toEqual([0, ""]);
      expect(out.replace(/\s+/g, " ")).toContain(
        `${limit.row}, ${limit.limit}: the copy prints ${values[i]} ${limit.as}`,
      );
    },
  );

  it("highest settings are taken by setpoints, with who confirmed them", async () => {
    const { file } = typed(all.map((one, i) => (limits[i]?.limit === "trip at most" && i < 5 ? "8.1" : one)));
    const { out } = await veladis([
      "setpoints",
      "--baseline",
      "4 mm/s rms",
      "--machine",
      "pump 90 kW 2980 r/min category I",
      "--confirmed",
      file,
    ]);
    expect(out.replace(/\s+/g, " ")).toContain(signedBy);
  });
});

describe("the line of the signature", () => {
  const judged = (file: string) =>
    veladis(["judge", "2 mm/s rms", "--machine", "pump 90 kW 2980 r/min category I", "--confirmed", file]);
  const changed = (change: (lines: string[]) => void): string => {
    const { file } = typed(all);
    const [header = "", ...lines] = `${template}`.trimEnd().split("\n");
    const filled = lines.map((line, i) =>
      i === 0 ? line.replace(/,{7}$/, ",,,12,J. Example,2024-03-04,,") : line.replace(/,{7}$/, ",yes,,,,,,"),
    );
    change(filled);
    writeFileSync(file, `${[header, ...filled].join("\n")}\n`);
    return file;
  };
  const swap = (at: number, from: string | RegExp, to: string) =>
    changed((lines) => void lines.splice(at, 1, (lines[at] as string).replace(from, to)));

  it("gives way to a name and a day of a line's own, and to its page", async () => {
    const other = swap(1, ",yes,,,,,,", ",yes,,13,K. Sample,2024-04-05,,");
    expect((await judged(other)).out.replace(/\s+/g, " ")).toContain("by K. Sample, 2024-04-05, p. 13");
    expect((await judged(swap(1, ",yes,,,,,,", ",yes,,13,,,,"))).out.replace(/\s+/g, " ")).toContain(
      "by J. Example, 2024-03-04, p. 13",
    );
  });

  it("leaves lines without yes or a value as they were", async () => {
    const file = changed(
      (lines) => void lines.splice(1, 3, ...lines.slice(1, 4).map((line) => line.replace(",yes,,,,,,", ",,,,,,,"))),
    );
    expect((await judged(file)).out).toMatch(/reported/);
  });

  it("serves a raised value too, whose line has the second name alone", async () => {
    const raised = (second: string) => swap(3, ",yes,,,,,,", `,,6.6,,,,${second},`);
    expect((await judged(raised(""))).err).toContain("line 5 of");
    expect((await judged(raised("K. Sample"))).out.replace(/\s+/g, " ")).toContain("6.6 mm/s rms");
  });

  it.each<[string, () => string, RegExp]>([
    [
      "a value in it",
      () => swap(0, ",,,12,", ",yes,,12,"),
      /line 2 of .*: page, by and on alone in the line of the signature/,
    ],
    [
      "a second name for all that is raised",
      () => swap(0, ",2024-03-04,,", ",2024-03-04,K. Sample,"),
      /line 2 of .*: page, by and on alone/,
    ],
    [
      "a second one",
      () => changed((lines) => void lines.splice(3, 0, lines[0] as string)),
      /line 5 of .*: one signature for iso-10816-7-2009/,
    ],
    [
      "none of its edition",
      () => swap(0, ",2009,", ",2018,"),
      /page, the page on which the value stands; by, the name/,
    ],
    [
      "a name of a line's own without its day",
      () => swap(1, ",yes,,,,,,", ",yes,,,K. Sample,,,"),
      /line 3 of .*: on, the day/,
    ],
    [
      "it below the lines",
      () => changed((lines) => void lines.push(lines.shift() as string)),
      /by, the name of who read it/,
    ],
    ["no name in it", () => swap(0, "J. Example", ""), /by, the name of who read it/],
    ["no name in it that is one", () => swap(0, "J. Example", "n/a"), /by, the name/],
  ])("is refused with %s, and nothing is taken", async (_, file, words) => {
    const { out, err, code } = await judged(file());
    expect([code, out]).toEqual([2, ""]);
    expect(err.replace(/\s+/g, " ")).toMatch(words);
  });
});
