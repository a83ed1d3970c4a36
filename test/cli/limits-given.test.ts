import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { classify, defineScheme } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const limits = ["--limits", "2.6, 4.2, 6.8 mm/s rms"];
const zoneOf = async (...args: string[]) => JSON.parse((await veladis(["judge", ...args, "--json"])).out).zone;

describe("limits given in one line", () => {
  // biome-ignore format: a row of a table is a line
  it.each<[reading: string, zone: string]>([
    ["2.6 mm/s rms", "A"], ["2.61 mm/s rms", "B"], ["4.2 mm/s rms", "B"], ["4.21 mm/s rms", "C"], ["6.9 mm/s rms", "D"],
    // 0.25 x 25.4 / sqrt 2 = 4.49
    ["0.25 in/s pk", "C"],
  ])("%s is in zone %s", async (reading, zone) => expect(await zoneOf(reading, ...limits)).toBe(zone));

  it("each with its unit, and with a machine whose facts then play no part", async () => {
    expect(await zoneOf("5 mm/s rms", "--limits", "2.6 mm/s rms, 4.2 mm/s rms, 6.8 mm/s rms")).toBe("C");
    const { out } = await veladis(["judge", "5 mm/s rms", ...limits, "--machine", "fan 90 kW"]);
    expect(out).toMatch(/^set aside +power 90 kW: plays no part/m);
    // whoever typed them knows where they are from, the program does not
    expect(out).toContain("(reported: check the source)");
  });

  // biome-ignore format: a row of a table is a line
  it.each<[args: string[], says: RegExp]>([
    [["--limits", "2.6, 4.2 mm/s rms"], /upper limits of zones A, B and C/],
    [["--limits", "2.6, 4.2, 3 mm/s rms"], /ascending/],
    [["--limits", "0.1 in/s pk, 4.2, 6.8 mm/s rms"], /in one unit/],
    [["--limits", "2.6, 4.2, 6.8"], /unit/],
    [["--limits", "2,6, 4,2, 6,8 mm/s rms"], /upper limits of zones/],
    [[...limits, "--scheme", "iso-20816-3-2022"], /--scheme too/],
    [[...limits, "--confirmed", "copy.csv"], /--confirmed too|can be read/],
  ])("%j is refused", async (args, says) => {
    const { out, err, code } = await veladis(["judge", "5 mm/s rms", ...args]);
    expect([out, code]).toEqual(["", 2]);
    expect(err).toMatch(says);
  });
});

describe("the template of a scheme", () => {
  it("is a scheme that judges, once it is in a file", async () => {
    const { out } = await veladis(["schemes", "--template"]);
    const scheme = defineScheme(JSON.parse(out));
    expect(classify("3 mm/s rms", { scheme, machine: "fan 90 kW rigid" }).zone).toBe("B");
    const path = join(mkdtempSync(join(tmpdir(), "veladis-")), "own.json");
    writeFileSync(path, out);
    expect(await zoneOf("3 mm/s rms", "--scheme", path, "--machine", "fan 90 kW flexible")).toBe("B");
    expect((await veladis(["schemes", path])).out).toContain("support flexible");
  });

  it("stands alone", async () => {
    expect((await veladis(["schemes", "--template", "--json"])).err).toMatch(/--template alone/);
  });
});
