import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "parse5";
import { SaxesParser } from "saxes";
import { afterAll, describe, expect, it, vi } from "vitest";
import { veladis } from "./in-process";

const folder = mkdtempSync(join(tmpdir(), "veladis-pictures-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const history = join(folder, "history.csv");
writeFileSync(history, "seconds,level\n0,4\n10,9.5\n14,9.5\n30,4\n");
const judged = ["judge", "4.1 mm/s rms", "--machine", "pump 90 kW 2980 r/min category II"];
const record = join(folder, "fan.csv");
writeFileSync(record, Array.from({ length: 4096 }, (_, i) => Math.sin(i / 20)).join("\n"));
const analysed = ["overall", record, "--rate", "2560", "--unit", "g", "--speed", "1222 r/min"];
const played = [
  ...["simulate", "--file", history, "--from", "mm/s rms", "--threshold", "9 mm/s rms", "--hysteresis", "8 %"],
  ...["--delay", "3", "--timer-resets", "threshold", "--latching"],
];

/** The description of a picture that a command wrote, well-formed as XML has it. */
async function described(args: readonly string[], name: string): Promise<string> {
  const path = join(folder, name);
  expect(await veladis([...args, "--chart", path])).toMatchObject({ code: 0 });
  const svg = readFileSync(path, "utf8");
  new SaxesParser().write(svg).close();
  return /<desc>(.*?)<\/desc>/s.exec(svg)?.[1] ?? "";
}

describe("--chart", () => {
  it("of judge draws the zones and the reading", async () => {
    expect(await described(judged, "verdict.svg")).toContain("4.10 mm/s rms");
  });

  it("never replaces a file that is read", async () => {
    const [own, scheme] = [join(folder, "own.svg"), join(folder, "scheme.svg")];
    writeFileSync(own, readFileSync(history));
    writeFileSync(scheme, (await veladis(["schemes", "--template"])).out);
    const kept = readFileSync(scheme, "utf8");
    const asked = played.map((one) => (one === history ? own : one));
    for (const [args, path] of [
      [asked, own],
      [[...judged, "--confirmed", scheme], scheme],
    ] as const) {
      expect((await veladis([...args, "--chart", path, "--replace"])).code).toBe(2);
    }
    expect(readFileSync(own, "utf8")).toBe(readFileSync(history, "utf8"));
    expect(readFileSync(scheme, "utf8")).toBe(kept);
  });

  it("of overall draws the spectrum within its band, with the orders", async () => {
    expect(await described(analysed, "record.svg")).toMatch(
      /from 10 to 1000 Hz.*Marks at 1x, 2x, 3x, 4x of 1222 r\/min/,
    );
  });

  it("of simulate draws the history by its times, with what happened", async () => {
    // 9.5 stands from 10 s to 30 s, so the delay of 3 s runs out at 13 s, between two levels
    expect(await described(played, "history.svg")).toMatch(/Events: 10 s timing, 13 s trip/);
  });

  it("stands beside the answer, which stays as it is", async () => {
    const { out } = await veladis(judged);
    expect((await veladis([...judged, "--chart", join(folder, "beside.svg")])).out).toBe(out);
  });

  it("writes PNG twice as wide as the chart", async () => {
    const path = join(folder, "verdict.png");
    expect((await veladis([...judged, "--chart", path])).code).toBe(0);
    const bytes = readFileSync(path);
    // PNG (ISO/IEC 15948), 5.2 and 11.2.2: the signature, then the width in the first chunk
    expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
    expect(bytes.readUInt32BE(16)).toBe(1280);
  });

  it("writes a page of HTML in the colours of its reader", async () => {
    const path = join(folder, "verdict.html");
    expect((await veladis([...judged, "--chart", path])).code).toBe(0);
    const faults: string[] = [];
    parse(readFileSync(path, "utf8"), { sourceCodeLocationInfo: true, onParseError: ({ code }) => faults.push(code) });
    expect(faults).toEqual([]);
    expect(readFileSync(path, "utf8")).toContain("prefers-color-scheme");
  });

  it("replaces no file but with --replace, and leaves none behind where the command is refused", async () => {
    const path = join(folder, "there.svg");
    writeFileSync(path, "kept");
    expect(await veladis([...judged, "--chart", path])).toMatchObject({ code: 2, out: "" });
    expect(readFileSync(path, "utf8")).toBe("kept");
    expect((await veladis([...judged, "--chart", path, "--replace"])).code).toBe(0);
    expect(readFileSync(path, "utf8")).toContain("<svg");
    const none = join(folder, "none.svg");
    await veladis(["judge", "4.1 mm/s", "--machine", "pump 90 kW", "--chart", none]);
    expect(existsSync(none)).toBe(false);
  });

  it("of PNG without its package names it and what needs none", async () => {
    vi.doMock("@resvg/resvg-js", () => {
      throw new Error("not installed");
    });
    const { err, code } = await veladis([...judged, "--chart", join(folder, "without.png")]);
    vi.doUnmock("@resvg/resvg-js");
    expect(code).toBe(2);
    expect(err).toMatch(/npm install @resvg\/resvg-js; \.svg and \.html need none/);
  });
});
