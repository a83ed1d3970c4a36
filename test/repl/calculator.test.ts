import { describe, expect, it } from "vitest";
import { VeladisError } from "../../src/index";
import { completions, helpText, isUnfinished, newSession, respond, type Session } from "../../src/repl/index";
import { corpus, injections, refused } from "./corpus";

const said = async (line: string, session: Session): Promise<string> => {
  const response = await respond(line, session);
  return response === "exit" ? "exit" : response.text;
};

const codeOf = async (line: string, session = newSession()): Promise<string> => {
  try {
    return `accepted: ${await said(line, session)}`;
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    return error.code;
  }
};

describe("the corpus of lines", () => {
  const session = newSession();

  it.each(corpus.map((entry) => [entry.line, entry] as const))("%s", async (line, { prints }) => {
    const text = await said(line, session);
    if (prints.endsWith("…")) expect(text.startsWith(prints.slice(0, -1)), text).toBe(true);
    else expect(text).toBe(prints);
  });

  it("is long enough, and a third of it has a source in print", () => {
    expect(corpus.length).toBeGreaterThanOrEqual(150);
    expect(corpus.filter(({ source }) => source !== undefined).length).toBeGreaterThanOrEqual(35);
  });
});

describe("lines without a meaning are refused with the reason", () => {
  it.each(refused.map(({ line, code }) => [line, code] as const))("%s: %s", async (line, code) => {
    expect(await codeOf(line)).toBe(code);
  });
});

describe("an assignment to several types", () => {
  it("is refused, and leaves the variables as they were", async () => {
    const session = newSession();
    await expect(respond("a = 0.5 mil pp at 3600 r/min to mm/s rms, in/s pk", session)).rejects.toMatchObject({
      code: "syntax",
      expected: expect.stringContaining("a name holds one answer"),
    });
    expect(session.variables.size).toBe(0);
    expect(await said("0.5 mil pp at 3600 r/min to mm/s rms, in/s pk", session)).toContain("\n");
  });
});

describe("a to within an expression", () => {
  it.each([
    "rss(c to g rms, 1 g rms)",
    "(0.12 in/s pk to mm/s rms)",
    "2 * (c to mm/s rms)",
    "c to mm/s rms + 1 mm/s rms",
    "[c, c to g rms]",
    "c to mm/s rms to in/s rms",
  ])("%s is refused with the way to go", async (line) => {
    const session = newSession();
    await respond("c = 1 g pk at 25 Hz", session);
    await expect(respond(line, session)).rejects.toMatchObject({
      code: "syntax",
      expected: expect.stringMatching(/^one "to" at the end of a line.*c2 = c to g rms/),
    });
  });
});

describe("a comparison", () => {
  it.each([
    ["a > 2 mm/s rms", "true  (sine)"],
    ["1 mm/s rms < b < a", "true  (one frequency, sine)"],
    ["t = b == a", "t = false  (one frequency, sine)"],
    ["t", "false"],
    ["1 mm/s rms < 2 mm/s rms", "true"],
    ["value(a) > 2", "true"],
  ])("%s: %s", async (line, prints) => {
    const session = newSession();
    await respond("a = 0.25 in/s pk to mm/s rms", session);
    await respond("b = 10 um rms at 25 Hz to mm/s rms", session);
    if (line === "t") await respond("t = b == a", session);
    expect(await said(line, session)).toBe(prints);
  });
});

describe("lines of a stranger", () => {
  it.each(injections.map((line) => [line.slice(0, 60), line] as const))("%s is refused", async (_, line) => {
    const session = newSession();
    await respond("a = 2 mm/s rms", session);
    expect(await codeOf(line, session)).not.toMatch(/^accepted/);
    expect([...session.variables.keys()]).toEqual(["last", "a"]);
  });

  it("leave the host as it was", async () => {
    const mathjs = await import("mathjs");
    expect(mathjs.evaluate("1 + 1")).toBe(2);
    expect(() => mathjs.evaluate("1 rpm")).toThrow();
    expect(mathjs.create(mathjs.all as never).config({})).toEqual(mathjs.create(mathjs.all as never).config({}));
    expect(({} as Record<string, unknown>).x).toBeUndefined();
    expect(Object.keys(Object.prototype)).toEqual([]);
  });

  it("cannot fill the session", async () => {
    const session = newSession();
    for (let i = 0; i < 999; i++) await respond(`v${i} = 1`, session);
    expect(await codeOf("one_more = 1", session)).toBe("out-of-range");
    expect(await codeOf("v1 = 2", session)).toBe("accepted: v1 = 2");
  });
});

describe("sessions", () => {
  it("do not see each other", async () => {
    const [one, other] = [newSession(), newSession()];
    await respond("a = 1 g pk", one);
    expect(await codeOf("a", other)).toBe("unknown-option");
  });

  it("load mathjs only for what needs it", async () => {
    const session = newSession();
    await respond("a = 0.25 in/s pk at 1500 r/min", session);
    await respond("a to mm/s rms", session);
    await respond("2 g rms to g pk", session);
    expect(session.engine).toBeUndefined();
    await respond("a * 2", session);
    expect(session.engine).toBeDefined();
  });

  it("end by their word", async () => {
    expect(await respond("exit", newSession())).toBe("exit");
    expect(await respond(" quit ", newSession())).toBe("exit");
  });
});

describe("lines that go on", () => {
  it.each(["rss(1 mm/s rms,", "1 +", "a =", 'judge(1 g pk, "pump', "[1, 2", "1 g pk to"])("%s", (line) => {
    expect(isUnfinished(line)).toBe(true);
  });

  it.each(["1 + 1", "rss(1 g rms)", 'judge(1 g pk, "a (b")', "a", ""])("not %s", (line) => {
    expect(isUnfinished(line)).toBe(false);
  });
});

describe("completion", () => {
  const session = newSession();

  it.each([
    ["3 mm", ["mm", "mm/s", "mm/s2"], "mm"],
    ["3 mm/s r", ["rms", "round(", "rss(", "rssDifference("], "r"],
    ["RS", ["rss(", "rssDifference("], "RS"],
    ["help un", ["units"], "un"],
    ["a at 1500 r", ["r/min", "r/s", "rad/s"], "r"],
    ["2 dB re FT", ["FTA velocity"], "FT"],
    ['judge(4 mm/s rms, "class II", "iso-10816-1-', ["iso-10816-1-1995-annexB"], "iso-10816-1-"],
    ["na", ["names"], "na"],
    ["expl", ["explain "], "expl"],
    ["help expl", ["explain"], "expl"],
    ["explain rs", ["rss(", "rssDifference("], "rs"],
    ["explain 3 mm/s r", ["rms", "round(", "rss(", "rssDifference("], "r"],
    ["explain na", [], "na"],
    ["1 g pk to m", ["m", "m/s", "m/s2", "max(", "mean(", "median(", "mg", "mil", "min(", "mm", "mm/s", "mm/s2"], "m"],
  ])("%s", (line, found, word) => {
    expect(completions(line, session)).toEqual([found, word]);
  });

  it("knows the variables", async () => {
    await respond("baseline_A = 2 mm/s rms", session);
    expect(completions("2 * base", session)).toEqual([["baseline_A"], "base"]);
  });
});

describe("a judgement", () => {
  it("names the zone of each place that was not given, and all schemes behind them", async () => {
    const told = await said('judge(100 um pp, "gas turbine 20 MW")', newSession());
    expect(told).toMatch(/^shaft B to D, housing B or worse: state the place/);
    expect(told).toMatch(/\n {2}by ISO 10816-4 \(2009\): zone C or worse\n {2}by ISO 3945 \(1985\): zone B or worse\n/);
  });
});

describe("explain", () => {
  it("leaves the answer as it is without it", async () => {
    const session = newSession();
    await respond("a = 0.25 in/s pk", session);
    expect(await respond("explain a to mm/s rms", session)).toMatchObject({ answer: { value: { unit: "mm/s" } } });
    expect(await said("last", session)).toBe("4.49 mm/s rms  (sine)");
    expect(await said("explain (a)", session)).toBe(await said("explain a", session));
  });

  it("needs no mathjs for a reading or a variable", async () => {
    const session = newSession();
    await respond("explain 2 g rms to g pk", session);
    expect(session.engine).toBeUndefined();
  });

  it("tells of each answer of a list and of a judgement", async () => {
    const session = newSession();
    await respond("a = 0.25 in/s pk to mm/s rms", session);
    expect((await said("explain [a, 1 g pk]", session)).split("\n\n")).toHaveLength(2);
    const judged = await said('explain judge(a, "class II", "iso-10816-1-1995-annexB")', session);
    expect(judged).toMatch(/mm\/s rms {2}\(one sine\)\n.* \/ 4\.49\S* mm\/s rms = .*\(limit /);
  });

  it("tells of the alarm and of the trip, down to where each resets", async () => {
    const told = await said('explain setpoints(2 mm/s rms, "pump 90 kW 1480 r/min rigid category II")', newSession());
    const [alarm, trip] = told.split("\ntrip\n");
    expect(alarm).toMatch(/^alarm\n {2}2\S* mm\/s rms {2}\(baseline\)\n/);
    expect(alarm).toMatch(/ {2}\(alarm\)\n.*\(less a hysteresis of [\d.]+ %\)$/);
    expect(trip).toMatch(/\(less a hysteresis of [\d.]+ %\)$/);
  });
});

describe("help", () => {
  it("has a page for each topic and function it names", () => {
    const named = /help <topic>: (.*), or a function/.exec(helpText())?.[1]?.split(", ") ?? [];
    expect(named.length).toBeGreaterThan(8);
    for (const topic of named) expect(helpText(topic).length, topic).toBeGreaterThan(20);
    expect(helpText("setpoints")).toMatch(/baseline/);
  });
});

describe("a line written as for the shell", () => {
  // biome-ignore format: a row of a table is a line
  it.each([
    ['judge 4.9 mm/s rms, "pump 90 kW"', /^expected a call such as judge\(/],
    ['judge "4.9 mm/s rms" --machine "pump 90 kW"', /^expected a call such as judge\(/],
    ['veladis "4.9 mm/s rms to in/s pk"', /^expected a line without veladis, which is for the shell; /],
    ['veladis setpoints "2 mm/s rms"', /call such as setpoints\(/],
    ["max 4 mm/s rms, 5 mm/s rms", /^expected a call such as max\(/],
  ])("%s is refused with how it is written here", async (line, message) => {
    expect(isUnfinished(line)).toBe(false);
    await expect(respond(line, newSession())).rejects.toThrow(message);
  });

  it("is none where the word is a variable, or stands in brackets", async () => {
    const session = newSession();
    await respond("a = 4.9 mm/s rms", session);
    expect(await said("a - 1 mm/s rms", session)).toMatch(/^3\.90 mm\/s rms/);
    expect(await said("max (4 mm/s rms, 5 mm/s rms)", session)).toBe("5.00 mm/s rms");
  });

  it("judges a reading in quotes as the reading", async () => {
    const machine = '"pump 90 kW 2980 r/min category II"';
    const quoted = await said(`judge("4.9 ± 0.3 mm/s rms (k=2)", ${machine})`, newSession());
    expect(quoted).toBe(await said(`judge(4.9 ± 0.3 mm/s rms (k=2), ${machine})`, newSession()));
  });
});
