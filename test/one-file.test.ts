/**
 * A unit, a detector, a unit of frequency, a decibel reference and a severity table each touch one file (a severity
 * table also its export line in the list of its folder), and everything knows them.
 *
 * Wanted exceptions, which this test leaves alone, since they are a second source or say what is known:
 * - the name of a unit and the ratio of a detector in test/amplitude/mathjs.test.ts, which another engine checks;
 * - the reading of a square wave by a detector in test/detectors/detectors.test.ts;
 * - the copy of a table keyed by hand in test/references/severity-limits.ts;
 * - the counts of limits in README.md and docs/guides/severity-sources.md, which UPDATE_LIMITS=1 writes (see
 *   test/severity/counts.test.ts).
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { additions, forgetExport } from "./one-file/additions";
import { changedFiles, copyProject, textsOf } from "./one-file/copy";
import { CONSUMER, PROBE } from "./one-file/users";

/** What the probe prints. */
interface Known {
  readonly convert: readonly number[];
  readonly parse: readonly object[];
  readonly format: readonly string[];
  readonly samples: readonly number[];
  readonly zones: readonly string[];
  readonly selected: readonly string[];
  readonly calculator: readonly string[];
  readonly completed: readonly (readonly string[])[];
  readonly mathjs: readonly string[];
  readonly sql: readonly string[];
  readonly pages: Readonly<Record<string, string>>;
}

let copy = "";
let known: Known;
const touched: Record<string, readonly string[]> = {};

function node(...args: string[]): { out: string; err: string; status: number | null } {
  const { stdout, stderr, status } = spawnSync(process.execPath, args, {
    cwd: copy,
    encoding: "utf8",
    input: "",
    env: { ...process.env, NO_COLOR: "1" },
  });
  return { out: stdout, err: stderr, status };
}

const bundle = (entry: string, outfile: string) =>
  build({
    entryPoints: [join(copy, entry)],
    outfile: join(copy, outfile),
    tsconfig: join(copy, "tsconfig.json"),
    bundle: true,
    format: "esm",
    platform: "node",
    packages: "external",
    logLevel: "error",
  });

beforeAll(async () => {
  copy = mkdtempSync(join(tmpdir(), "veladis-copy-"));
  copyProject(copy);
  for (const { what, make } of additions) {
    const before = textsOf(copy);
    make(copy);
    touched[what] = changedFiles(before, textsOf(copy));
  }
  writeFileSync(join(copy, "probe.ts"), PROBE);
  await Promise.all([bundle("probe.ts", "probe.mjs"), bundle("src/cli/main.ts", "cli.mjs")]);
  const { out, err } = node("probe.mjs");
  if (err !== "") throw new Error(err);
  known = JSON.parse(out) as Known;
});

afterAll(() => rmSync(copy, { recursive: true, force: true }));

describe("what a contributor adds", () => {
  it.each(additions)("$what touches $files", ({ what, files }) => {
    expect(touched[what]).toEqual([...files].sort());
  });

  // the compiler reads all sources anew: a quarter of a minute where nothing else runs
  it("enters the types, which ask for it nowhere else in the sources and still refuse what is wrong", {
    timeout: 180_000,
  }, () => {
    writeFileSync(join(copy, "consumer.ts"), CONSUMER);
    writeFileSync(
      join(copy, "tsconfig.consumer.json"),
      JSON.stringify({ extends: "./tsconfig.json", include: ["consumer.ts", "src"] }),
    );
    const { out, status } = node("node_modules/typescript/bin/tsc", "-p", "tsconfig.consumer.json");
    expect(out).toBe("");
    expect(status).toBe(0);
  });

  it("is converted, parsed and formatted", () => {
    expect(known.convert[0]).toBe(1852 / 3600);
    expect(known.convert[1]).toBeCloseTo(1 / Math.PI, 15);
    expect(known.convert[2]).toBeCloseTo(1000 / (2 * Math.PI * 25), 12);
    expect(known.convert[3]).toBe(5);
    expect(known.parse).toMatchObject([
      { value: 3, unit: "kn", detector: "half", quantity: "velocity", hertz: 25 },
      { value: 50, unit: "nm/s", level: { decibels: 20, re: "5 nm/s" } },
    ]);
    expect(known.format).toEqual(["0.619 kn half", "0.0 dB re 5 nm/s"]);
  });

  it("is read from samples, held or streamed", () => {
    const [few, whole, streamed] = known.samples as [number, number, number];
    expect(few).toBe(1);
    expect(whole).toBeCloseTo(1, 2);
    expect(streamed).toBeCloseTo(1, 2);
  });

  it("judges, and is selected", () => {
    expect(known.zones).toEqual(["A", "B", "C", "D"]);
    expect(known.selected).toContain("heating-works-fans");
  });

  it("is known to the calculator, which completes it", () => {
    expect(known.calculator.slice(0, 3)).toEqual(["2.57 m/s rms  (uncorrelated)", "1030 mm/s half", "50.0 nm/s rms"]);
    expect(known.calculator[3]).toMatch(
      /^zone B, .*4\.00 mm\/s rms\n {2}by Works rule 12 \(2025\), limits from memory/,
    );
    expect(known.completed).toEqual([["kn"], ["half"], ["deg/s"], ["works velocity"], ["heating-works-fans"]]);
  });

  it("is known to mathjs and to SQL", () => {
    expect(known.mathjs[0]).toBe("1540 mm/s half");
    expect(known.mathjs[1]).toMatch(/^0\.51444\d* m \/ s$/);
    expect(known.mathjs[2]).toBe(known.mathjs[1]);
    expect(known.mathjs[3]).toBe("2 Hz");
    const [ofDetector, ofFrequency, ofLevel, ofScheme] = known.sql;
    expect(ofDetector).toMatch(/"v" \* 1\.637\d+e-1 END \/\* kn pk to m\/s half; assumed: sine/);
    expect(ofFrequency).toContain('"turning" * 2.777777777777778e-3');
    expect(ofLevel).toContain("5e0 * POWER");
    expect(ofScheme).toMatch(/<= 2\.000000238418579e0 THEN 'A'.*Works rule 12 \(2025\)/);
  });

  it("is known to the command", () => {
    const first = (...args: string[]) => node("cli.mjs", ...args).out.split("\n")[0];
    expect(first("1 kn half to m/s half")).toBe("1 kn half = 0.514 m/s half");
    expect(first("1 mm/s rms at 9000 deg/s to um rms")).toBe("1 mm/s rms at 9000 deg/s = 6.37 um rms  (one frequency)");
    expect(first("20 dB re works velocity to nm/s rms")).toBe("20 dB re works velocity = 50.0 nm/s rms");
    expect(first("judge", "3 mm/s rms", "--scheme", "heating-works-fans", "--machine", "flexible")).toMatch(/zone B/);
    expect(node("cli.mjs", "--help").out).toMatch(/units .*\bkn\b[\s\S]*detectors .*\bhalf\b/);
    expect(node("cli.mjs", "schemes").out).toContain("heating-works-fans");
  });

  it("is listed in the generated pages", () => {
    const { pages } = known;
    expect(pages.units).toMatch(/\| `kn` \| knot \| 463\/900 \| `knt`, `knot`, `knots` \|/);
    expect(pages.detectors).toMatch(/\| `half` \| half-wave average \| 0\.318310 \|/);
    expect(pages.frequencies).toMatch(/\| `deg\/s` \| degree per second \| 1\/360 \| `dps`, `degrees\/s` \|/);
    expect(pages["level-references"]).toMatch(/\| `dB re works velocity` \| 5 nm\/s \| memory \|/);
    expect(pages.schemes).toContain("[`heating-works-fans`](./scheme-heating-works-fans.md)");
    expect(pages["scheme-heating-works-fans"]).toMatch(
      /support flexible \| mm\/s rms \| 2 memory \| 4 memory \| 6 memory/,
    );
    expect(pages.bibliography).toMatch(/\| Works rule 12, invented \| heating-works-fans \| memory \|/);
  });

  it("a severity table without its export line fails a test that names it", () => {
    forgetExport(copy);
    const { out, err, status } = node(
      ...["node_modules/vitest/vitest.mjs", "run", "--config", "test/vitest.config.ts", "--project", "node"],
      ...["test/severity/tables.test.ts", "-t", "are one a file, each exported and registered"],
    );
    expect(status).toBe(1);
    expect(out + err).toContain("heating-works-fans.ts exports heatingWorksFans");
  });
});
