import { describe, expect, it } from "vitest";
import { veladis } from "./in-process";

const check = ["check", "--from", "mm/s rms", "--tolerance", "5 %"];

describe("columns of check", () => {
  it.each(["Known,Indicated", "KNOWN , indicated", "known [mm/s rms],Indicated (mm/s rms)", "Known [mm/s],indicated"])(
    "headed %s are read",
    async (header) => {
      const { out, code, err } = await veladis([...check, "--json"], `${header}\n1,1.01\n2,2.02\n`);
      expect([code, err]).toEqual([0, expect.not.stringContaining("veladis:")]);
      expect(JSON.parse(out).points.length).toBe(2);
    },
  );

  it("are held to a unit in brackets, and not guessed where two have one name", async () => {
    const other = await veladis(check, "known [in/s pk],indicated [in/s pk]\n1,1\n");
    expect([other.code, other.err]).toEqual([2, expect.stringContaining('which says "in/s pk"')]);
    expect((await veladis(check, "Known,known [mm/s],indicated\n1,1,1\n")).code).toBe(2);
    expect((await veladis(check, "shown,indicated\n1,1\n")).code).toBe(2);
  });
});

describe("what turns signals of a file into levels", () => {
  const points = ["check", "--file", "-", "--tolerance", "5 %", "--loop", "0 to 20 mm/s rms"];
  const csv = "known,indicated\n5 mm/s rms,8 mA\n10 mm/s rms,12 mA\n";

  it("is named in text, JSON and sheet", async () => {
    expect((await veladis(points, csv)).out).toContain("signals read by loop 0 to 20 mm/s rms\n");
    expect((await veladis([...points, "--sheet", "markdown"], csv)).out).toContain(
      "signals read by loop 0 to 20 mm/s rms",
    );
    expect(JSON.parse((await veladis([...points, "--json"], csv)).out).read.loop).toBe("0 to 20 mm/s rms");
  });

  it("is refused where no cell asks for it, and so is a threshold, which is of one level", async () => {
    const other = await veladis(points, "known,indicated\n5 mm/s rms,5 mm/s rms\n");
    expect([other.code, other.err]).toEqual([2, expect.stringContaining("for --loop")]);
    const trip = await veladis([...points, "--threshold", "9 mm/s rms"], csv);
    expect([trip.code, trip.err]).toEqual([2, expect.stringContaining("--threshold")]);
    const one = ["check", "--known", "8 mm/s rms", "--indicated", "8 mm/s rms", "--tolerance", "5 %"];
    const bare = await veladis([...one, "--threshold", "9 mm/s rms"]);
    expect([bare.code, bare.err]).toEqual([2, expect.stringContaining("--loop or --sensor beside --threshold")]);
  });
});

describe("a plan", () => {
  const plan = ["plan", "--threshold", "9 mm/s rms", "--hysteresis", "8 %", "--delay", "8", "--latching"];
  const at = ["--shaker", "8 Hz to 3 kHz", "--at", "79.4 Hz"];

  it("of which the shaker can do nothing exits as a refusal does", async () => {
    const none = await veladis([...plan, ...at, "--stroke", "0.001 mm pp"]);
    expect(none.out).toContain("this shaker can do none of the 10 steps that need it");
    expect(none.out.match(/NOT POSSIBLE \(stroke\)/g)).toHaveLength(10);
    expect(none.out).not.toMatch(/the device shows|trip after/);
    expect(none.code).toBe(2);
    expect((await veladis([...plan, ...at, "--stroke", "0.001 mm pp", "--json"])).code).toBe(2);
    expect((await veladis([...plan, ...at, "--stroke", "5 mm pp"])).code).toBe(0);
  });
});
