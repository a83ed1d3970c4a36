import { judge, machineNotes, parseMachine } from "veladis/severity";
import { describe, expect, it } from "vitest";

const verdictOf = (machine: string, reading = "4.1 mm/s rms") => judge(reading, machine);

describe("the class of an insulation", () => {
  // thermal classes A, E, B, F, H, N, R and C by IEC 60085, from memory
  it.each(["A", "E", "B", "F", "H", "N"])("class %s of a motor is no class of a table, and is named", (letter) => {
    const { machine, setAside, zone } = verdictOf(`motor 90 kW 1480 r/min rigid class ${letter}`);
    expect(machine).not.toHaveProperty("class");
    expect(setAside.join()).toContain(`"class ${letter}": not understood`);
    expect(zone).toBe(verdictOf("motor 90 kW 1480 r/min rigid").zone);
  });

  it("before the motor it is the same, and of a pump or in quotation marks it is refused as a class", () => {
    expect(machineNotes("class B motor 90 kW").notUnderstood).toEqual([
      { word: "class B", didYouMean: ["insulation class B"] },
    ]);
    expect(() => verdictOf("pump 90 kW 2980 r/min class B")).toThrow(/the machine class of the standard/);
    expect(() => verdictOf('motor 90 kW 1480 r/min class "B"')).toThrow(/the machine class of the standard/);
    expect(parseMachine("motor 90 kW class II").class).toBe("II");
  });
});

describe("a frame size with a space", () => {
  it.each([
    ["motor 90 kW 1480 r/min 280 M", "280 mm"],
    ["280 M motor 90 kW", "280 mm"],
    ["motor 160 L 15 kW", "160 mm"],
    ["generator 132 S", "132 mm"],
    ["motor 315 SM 200 kW", "315 mm"],
  ])("%s", (words, height) => {
    expect(parseMachine(words)).toMatchObject({ shaftHeight: height, frame: "IEC" });
    expect(machineNotes(words).assumedFacts[0]).toMatch(new RegExp(`^shaft height ${height}: for "`));
  });

  it("of a machine that is not electrical is set aside, and 280 m is refused as ever", () => {
    const { setAside, machine } = verdictOf("pump 90 kW 2980 r/min category II, 80 M");
    expect(setAside).toEqual(['"80 M": not understood (did you mean 80M?)']);
    expect(machine).not.toHaveProperty("shaftHeight");
    expect(() => verdictOf("motor 90 kW 1480 r/min 280 m")).toThrow(/a shaft height from 20 to 3000 mm/);
    expect(() => parseMachine("motor 280 M 315M")).toThrow(/one shaftHeight/);
  });
});

it.each(["1480 U/min", "1480 Upm", "1480 UPM", "1480 tr/min", "1480 giri/min"])("a speed of %s", (speed) => {
  expect(verdictOf(`motor 90 kW ${speed} rigid`).machine.speed).toBeCloseTo(1480, 9);
  expect(machineNotes(`motor 90 kW/${speed}`).notUnderstood).toEqual([]);
});

describe("sets that are named by their generator", () => {
  it.each(["gas turbine generator 60 MW", "diesel generator 600 kW", "steam turbine generator 60 MW"])(
    "%s",
    (words) => {
      expect(machineNotes(words).assumedFacts[0]).toMatch(
        /^type .*: for ".*", taken for the set as a whole; where its generator alone was read, say "generator"$/,
      );
    },
  );

  it("of a hydro set the generator is a part of the set, and a genset says that it is one", () => {
    for (const words of ["hydro generator 60 MW", "genset 600 kW", "turbo generator 60 MW"])
      expect(machineNotes(words).assumedFacts[0]).not.toContain("taken for the set");
  });
});

it.each(["category II other", "category II another", "cat. II other"])(
  "%s says no category, and the lower limits are taken",
  (label) => {
    const { machineClass, setAside } = verdictOf(`pump 90 kW 2980 r/min ${label}`);
    expect(machineClass.category).toBe("I");
    expect(setAside).toEqual([expect.stringContaining(`"${label}": not understood (did you mean c`)]);
    expect(verdictOf("pump 90 kW 2980 r/min category II, other").machineClass.category).toBe("II");
  },
);

describe("a shaft without its speed", () => {
  // 4800, 9000 and 13 200 over root n: at 1000 r/min 80 um is in A, at 30000 in D
  it("has all zones from that of the slowest machine to that of the fastest, and asks for the speed", () => {
    const { headline, word, possible, zone, worst, deciding, cautions, assumedFacts } = judge(
      "80 um pp",
      "motor 200 kW, shaft",
    );
    expect([headline, word]).toEqual(["zone A to D", "state the speed"]);
    expect(possible).toEqual(["A", "B", "C", "D"]);
    expect([zone, worst]).toEqual(["D", "D"]);
    expect(deciding).toEqual(["speed"]);
    expect(cautions.join()).toContain("the running speed is missing, and decides");
    expect(assumedFacts.join()).toContain("speed 1000 to 30000 r/min: not given, assumed");
  });

  it("names the power too where that chooses the scheme, and the place first", () => {
    expect(judge("80 um pp", "motor shaft").word).toBe("state the speed and the power");
    expect(judge("80 um pp", "motor").headline).toBe("shaft A to D, housing B or worse: state the place");
  });

  it("with a speed or a range of speeds it has the zone of the fastest, as ever", () => {
    expect(judge("80 um pp", "motor 200 kW, shaft, 1480 r/min").possible).toEqual(["A"]);
    expect(judge("80 um pp", "motor 200 kW, shaft, 1000 to 30000 r/min").possible).toEqual(["D"]);
    expect(judge("20 um pp", "motor 200 kW, shaft").possible).toEqual(["A"]);
  });
});
