import { classify, judge } from "veladis/severity";
import { describe, expect, it } from "vitest";
import { shortVerdict } from "../../src/cli/print/short-verdict";
import { tableNotes } from "../../src/cli/print/table-notes";
import { veladis } from "./in-process";

const notes = tableNotes();
const flat = (text: string) => text.replace(/\s+/g, " ");
const short = (reading: string, machine: string) =>
  flat(shortVerdict(judge(reading, machine), { digits: 3, full: false, notes }));

describe("the short answer of judge", () => {
  // the length that was promised; what the trade asks first: common practice, no source
  it.each([
    "pump 90 kW 2980 r/min category II",
    "pump 90 kW 2980 r/min rigid category II",
    "motor 250 kW 1485 r/min rigid",
    "fan 132 kW 1485 r/min rigid BV-3",
    "steam turbine 12 MW 3000 r/min housing",
    "gear drive 200 kW 1500 r/min",
    "centrifugal compressor 2 MW 11000 r/min shaft",
  ])("has at most eight lines while at most two facts were assumed: %s", async (machine) => {
    const { out } = await veladis(["judge", "4.1 mm/s rms at 50 Hz", "--machine", `${machine} in service`]);
    const { assumedFacts } = judge("4.1 mm/s rms at 50 Hz", `${machine} in service`);
    if (assumedFacts.length <= 2) expect(out.trimEnd().split("\n").length).toBeLessThanOrEqual(8);
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(100);
  });

  it.each([
    "pump 250 kW",
    "pump 90 kW 2980 r/min wibble",
    "motor 1485 rpm rigid",
    "motor 75 kW, driven pump 1.2 MW",
    "fan 400 kW",
    "fan 400 kW 990 r/min",
    "HVAC fan 15 kW 1450 r/min",
    "steam turbine 12 MW 5400 rpm rigid",
    "gas turbine 20 MW",
    "generating set 800 kW 1500 r/min",
    "screw compressor 200 kW 2980 r/min",
    "reciprocating compressor 400 kW 600 r/min",
    "compressor 2 MW 11000 rpm",
    "gear drive 2 MW 1500 r/min class II",
    "cooling tower fan 75 kW 150 rpm",
    "motor 400 kW 1485 rpm rigid horizontally, flexible axially",
    "boiler feed pump 250 kW natural 65 Hz 2980 r/min",
    "hydro set 20 MW 150 r/min",
    "machine of class III",
  ])("drops nothing that was assumed, set aside, not judged or warned of: %s", (machine) => {
    for (const reading of ["4.1 mm/s rms", "0.25 in/s pk", "60 um pp at 25 Hz"]) {
      let verdict: ReturnType<typeof judge>;
      try {
        verdict = judge(reading, machine);
      } catch {
        continue;
      }
      const text = short(reading, machine);
      for (const fact of verdict.assumedFacts) {
        const [said = ""] = fact.split(/: (?:not given|assumed)/);
        expect(text).toContain(flat(said));
      }
      for (const one of verdict.setAside) expect(text).toContain(flat(one));
      for (const { because } of verdict.unjudged) expect(text).toContain(flat(because));
      const said = (one: string) => notes.has(one) || /^limits .*(relying on them|practice govern)$/.test(one);
      for (const one of verdict.cautions) if (!said(one)) expect(text).toContain(flat(one));
      for (const { scheme } of verdict.judgements.slice(1)) expect(text).toContain(scheme);
      expect(text).toContain(verdict.provenance === "memory" ? "MEMORY" : verdict.provenance);
    }
  });

  it("tells all with --full, also of lines that are piped, and refuses it beside data", async () => {
    const machine = ["--machine", "pump 90 kW 2980 r/min category II"];
    const { out } = await veladis(["judge", "4.1 mm/s rms", ...machine, "--full"]);
    for (const label of ["measure", "source", "caution"]) expect(out).toMatch(new RegExp(`^${label} `, "m"));
    expect(flat(out)).toContain("power is at the pump shaft");
    const piped = await veladis(["judge", ...machine, "--full"], "4.1 mm/s rms\n");
    expect(piped.out).toBe(out);
    const { err, code } = await veladis(["judge", "4.1 mm/s rms", ...machine, "--full", "--json"]);
    expect([code, err]).toEqual([2, expect.stringContaining("--full with --json")]);
  });

  it("says in which table the worse of several verdicts stands", async () => {
    const { out } = await veladis(["judge", "100 um pp", "--machine", "gas turbine 20 MW"]);
    expect(out).toMatch(/^by .*\(iso-20816-4-2018-shaft,/m);
    expect(out).toMatch(/^also by +iso-/m);
  });

  // ISO 10816-3 judges displacement too, which a velocity without its frequency bounds by the running speed
  it.each([
    ["3.5 mm/s rms", "motor 400 kW 700 r/min flexible housing"],
    ["2 mm/s rms", "motor 400 kW 700 r/min rigid housing"],
    ["3 mm/s rms", "fan 400 kW 740 r/min rigid"],
  ])("names the quantity that may be worse, with its limit: %s, %s", (reading, machine) => {
    const verdict = judge(reading, machine);
    const worse = verdict.criteria.some(
      ({ quantity, zone, zones }) =>
        quantity !== verdict.quantity && zones.indexOf(zone) > verdict.zones.indexOf(verdict.zone),
    );
    const text = short(reading, machine);
    if (worse)
      expect(text).toMatch(/also displacement [\d.]+ um rms or less: may be [BCD], above [ABCD]\/[BCD] [\d.]+ um rms/);
    else expect(text).not.toContain("may be");
    expect(verdict.possible.length > 1 && verdict.unjudged.length === 0).toBe(worse);
  });

  it("names the quantity that is known at least, with the limit that it may be above", () => {
    // ISO 10816-6, class 4: B/C 27.9 m/s2 RMS
    const text = short("2 mm/s rms", "reciprocating engine 500 kW 300 r/min class 4");
    expect(text).toMatch(/also acceleration [\d.]+ m\/s2 rms or more: may be above B\/C 27\.9 m\/s2 rms/);
  });

  it("tells the reading as it was judged where it was written in another type", async () => {
    const { out } = await veladis(["judge", "0.25 in/s pk", "--machine", "pump 90 kW 2980 r/min category II"]);
    // 0.25 x 25.4 / sqrt 2
    expect(out).toMatch(/^judged +0\.177 in\/s rms$|^judged +4\.49 mm\/s rms$/m);
    const zone = classify("0.25 in/s pk", { scheme: "iso-10816-7-2009", machine: "category II, 90 kW" }).zone;
    expect(out).toContain(`zone ${zone}`);
  });
});

describe("the margin says what it leaves out", () => {
  it.each([
    [
      "the uncertainty, where a rule decides by it",
      "6.0 ± 0.3 mm/s rms (k=2)",
      "pump 300 kW 2980 r/min category II",
      "6.10 mm/s rms, of the best value",
    ],
    [
      "a limit in another quantity that may be exceeded",
      "4.0 mm/s rms",
      "compressor 200 kW",
      "4.50 mm/s rms, of the velocity alone",
    ],
  ])("%s", async (_, reading, machine, end) => {
    for (const full of [[], ["--full"]]) {
      const { out } = await veladis(["judge", reading, "--machine", machine, ...full]);
      expect(out.replace(/\s+/g, " ")).toContain(end);
    }
  });

  it("and no more where it leaves nothing out", async () => {
    const { out } = await veladis(["judge", "4.0 mm/s rms", "--machine", "pump 300 kW 2980 r/min category II"]);
    expect(out).toMatch(/^margin .* mm\/s rms$/m);
  });
});
