import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pages } from "../../src/cli/commands/pages";
import type { CommandPage } from "../../src/cli/options/command-page";
import { exitSays, exitTexts } from "../../src/cli/options/exit-texts";
import type { OptionRow } from "../../src/cli/options/option-row";
import { root } from "../examples/fences";
import { runInShell } from "../examples/run-shell";
import { veladis } from "./in-process";

const all = await Promise.all(
  Object.entries(pages).map(async ([name, load]) => [name, (await load()) as CommandPage] as const),
);

/** A second of a tone, as bytes. */
const samples = (bytes: 2 | 4 | 8): Uint8Array => {
  const view = new DataView(new ArrayBuffer(25600 * bytes));
  for (let i = 0; i < 25600; i++) {
    const value = Math.sin(i / 20);
    if (bytes === 2) view.setInt16(2 * i, 1000 * value, true);
    else if (bytes === 4) view.setFloat32(4 * i, value, true);
    else view.setFloat64(8 * i, value, true);
  }
  return new Uint8Array(view.buffer);
};

const texts: Readonly<Record<string, string>> = {
  "levels.csv": "time,level\n0,4\n1,5\n2,6\n",
  "points.csv": "known,indicated\n2,2.1\n5,5.1\n",
  "history.csv": "seconds,level\n0,4\n10,9.5\n30,4\n",
  "bearings.csv": "seconds,front,rear,generator\n0,62,48,41\n10,171,104,47\n30,71,52,42\n",
  "readings.csv":
    "value,unit,detector,frequency,speed,machine\n4.1,mm/s,rms,25,1490,pump 90 kW 1490 r/min category II\n",
  "shaft.csv": "value,speed\n41,1490\n",
  "steady.csv": `time,g\n${Array.from({ length: 40 }, (_, i) => `${10 * i},${1 + (i % 7) / 100}`).join("\n")}\n`,
  "logged.csv": `time [s],DE,NDE\n${Array.from({ length: 4096 }, (_, i) => `${(i / 4096).toFixed(6)},${Math.sin(i / 20)},${Math.cos(i / 20)}`).join("\n")}\n`,
  "booster-lines.csv": `frequency (Hz),velocity (in/s pk)\n${Array.from({ length: 401 }, (_, k) => `${2.5 * k},${k === 8 ? 0.1 : 0.001}`).join("\n")}\n`,
  "shaker-profile.csv": "Hz,g2/Hz\n20,0.01\n80,0.04\n350,0.04\n2000,0.007\n",
  "fan.csv": Array.from({ length: 4096 }, (_, i) => Math.sin(i / 20)).join("\n"),
  "plant-changes.csv":
    "date,tag,setting,old,new,reason,who,approved by,until,put back\n2026-02-10,LU-01,trip,10 mm/s rms,9.4 mm/s rms,new baseline,shift B,plant engineer,,\n",
  "results.csv":
    "number,tag,date,known,as found,as left,tolerance,by\nLU-01-2026-12-01,LU-01,2026-12-03,8 mm/s rms at 40 Hz,7.3 mm/s rms,7.9 mm/s rms,,shift B\n",
  "fans.csv": Array.from({ length: 4096 }, (_, i) => `${Math.cos(i / 20)},${Math.sin(i / 20)}`).join("\n"),
};

let folder = "";
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "veladis-help-"));
  writeFileSync(join(folder, "plant.csv"), (await veladis(["plant", "template"])).out);
  for (const [name, text] of Object.entries(texts)) writeFileSync(join(folder, name), text);
  writeFileSync(join(folder, "pump.raw"), samples(2));
  writeFileSync(join(folder, "pump.f32"), samples(4));
  writeFileSync(join(folder, "pump.f64"), samples(8));
  copyFileSync(`${root}/docs/examples/drive-rule.json`, join(folder, "site-rule.json"));
  copyFileSync(`${root}/docs/examples/machines.csv`, join(folder, "machines.csv"));
  copyFileSync(`${root}/docs/examples/iso-10816-7-2009.csv`, join(folder, "iso-10816-7-2009.csv"));
  for (const name of ["route-plant.csv", "route-march.csv", "route-april.csv"]) {
    copyFileSync(`${root}/docs/examples/${name}`, join(folder, name));
  }
  writeFileSync(join(folder, "route.txt"), "ID fan 1: 4.1 mm/s rms\n");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const helpOf = async (name: string): Promise<string> => (await veladis([...name.split(" "), "--help"])).out;

describe.each(all)("the help of %s", (name, page) => {
  it("has no line above 100 columns, and no space at the end of one", async () => {
    const lines = (await helpOf(name)).split("\n");
    expect(lines.filter((line) => [...line].length > 100 || /\s$/.test(line))).toEqual([]);
  });

  it("tells every option, with its argument, once", async () => {
    const help = await helpOf(name);
    for (const [option, { argument }] of Object.entries<OptionRow>(page.options)) {
      const told = help.match(new RegExp(`^ {2}--${option}(?![\\w-])${argument === undefined ? "" : " \\S"}`, "gm"));
      expect(told, option).toHaveLength(1);
    }
  });

  it.each(page.examples)("%s", (example) => {
    const { out, status } = runInShell(example.replaceAll("\\\n", " "), folder);
    expect(out).not.toMatch(/^veladis: /m);
    expect(status).toBe(0);
  });
});

describe("the example of an option", () => {
  const rows = all.flatMap(([name, { options }]) =>
    Object.entries<OptionRow>(options).map(([option, row]) => [name, option, row] as const),
  );

  it.each(rows.filter(([, , { argument }]) => argument !== undefined))("%s --%s has one, or a value", (_, __, row) => {
    const { example, default: value, values = [] } = row;
    expect([example, value, ...values].filter(Boolean).length).toBeGreaterThan(0);
  });

  it.each(rows.filter(([, , { values }]) => values !== undefined))("%s --%s is of its closed list", (_, __, row) => {
    for (const word of [row.example, row.default]) if (word !== undefined) expect(row.values).toContain(word);
  });
});

describe("words in place of a command", () => {
  it("help and version are those of the options", async () => {
    expect(await veladis(["help"])).toEqual(await veladis(["--help"]));
    expect(await veladis(["help", "check"])).toEqual(await veladis(["check", "--help"]));
    expect(await veladis(["version"])).toEqual(await veladis(["--version"]));
    expect((await veladis(["help"])).out).toContain("--version");
  });

  it.each([
    [["judg", "4.1 mm/s rms"], "judge"],
    [["help", "chek"], "check"],
    [["versoin"], "version"],
  ])("%s gets the nearest", async (args, near) => {
    const { err, code, out } = await veladis(args);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain("veladis --help");
    expect(err).toMatch(new RegExp(`did you mean: .*${near}`));
  });
});

describe("exit codes", () => {
  it("stand in the guide as in help", () => {
    const guide = readFileSync(`${root}/docs/guides/bulk.md`, "utf8");
    for (const text of exitTexts) expect(guide).toContain(`| ${text.code} | ${exitSays(text).replace("|", "\\|")} |`);
  });

  it("are told of a command as far as it can end with them", async () => {
    expect(await helpOf("balance")).not.toMatch(/^ {2}1 /m);
    expect(await helpOf("judge")).toMatch(/^exit codes\n {2}0 {5}answered\n {2}1 {5}.*--fail-from/m);
    expect((await veladis(["help"])).out).toMatch(/^ {2}141 /m);
  });

  const pump = ["--machine", "pump 90 kW 2980 r/min category II"];
  it.each([
    ["the zone itself", ["judge", "5.9 mm/s rms", ...pump, "--fail-from", "C"], 1],
    ["a better one", ["judge", "2 mm/s rms", ...pump, "--fail-from", "C"], 0],
    ["a possible zone that is worse", ["judge", "4.1 mm/s rms", "--machine", "pump 90 kW", "--fail-from", "C"], 1],
    ["A not parted from B", ["judge", "1 mm/s rms", "--limits", "-, 4.5, 7.1 mm/s rms", "--fail-from", "B"], 2],
    [
      "alarm of a fan",
      ["judge", "8 mm/s rms", "--machine", "fan rigid BV-3", "--scheme", "iso-14694-2003", "--fail-from", "C"],
      1,
    ],
    ["one of several points", ["judge", "DE-H 2, NDE-H 5.9 mm/s rms", ...pump, "--fail-from", "C"], 1],
    [
      "a background that is too high",
      ["judge", "2 mm/s rms", "--background", "1.9 mm/s rms", ...pump, "--fail-from", "D"],
      1,
    ],
    ["a word that is no zone", ["judge", "2 mm/s rms", ...pump, "--fail-from", "E"], 2],
    [
      "a check that fails",
      ["check", "--known", "8 mm/s rms", "--indicated", "7.3 mm/s rms", "--tolerance", "5 %", "--fail-from", "fail"],
      1,
    ],
    [
      "a check that passes",
      [
        "check",
        "--known",
        "8 mm/s rms",
        "--indicated",
        "7.9 mm/s rms",
        "--tolerance",
        "5 %",
        "--fail-from",
        "undecided",
      ],
      0,
    ],
  ] as const)("with --fail-from of %s", async (_, args, code) => {
    expect((await veladis([...args])).code).toBe(code);
  });

  it("of lines: a refused one outranks a bad one, and does not count with --keep-going", async () => {
    const lines = "5.9 mm/s rms\n2 mm/s\n";
    const args = ["judge", ...pump, "--fail-from", "C"];
    expect((await veladis(args, lines)).code).toBe(2);
    expect((await veladis([...args, "--keep-going"], lines)).code).toBe(1);
    expect((await veladis([...args, "--keep-going"], "2 mm/s rms\n2 mm/s\n")).code).toBe(0);
  });
});
