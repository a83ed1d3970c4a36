import {
  builtInSchemes,
  type Confirmation,
  changeFromBaseline,
  classify,
  confirmableLimits,
  confirmedDifferences,
  confirmedSchemes,
  confirmScheme,
  countLimits,
  defineScheme,
  judge,
  judgePoints,
  limitsFor,
  machineClassifier,
  type Scheme,
  schemeById,
  schemesFor,
} from "veladis/severity";
import { describe, expect, it } from "vitest";
import { slipOf } from "../../src/severity/confirm-slips";
import { refusalOf } from "../refusals/refusal-of";

const id = "iso-10816-7-2009";
const row = "category I, power up to 200 kW";
const signed = { page: "12", by: "J. Example", on: "2024-03-04" };
const read: Confirmation = { scheme: id, edition: "2009", row, limit: "C/D", as: "mm/s rms", printed: 6.5, ...signed };

/** Every limit of a scheme as its copy would print it if it were the same, but for some. */
function agreed(scheme: string, but: Readonly<Record<string, number>> = {}): Confirmation[] {
  return confirmableLimits(schemeById(scheme)).map(({ shipped, row, limit, as, edition }) => ({
    ...{ scheme, edition, row, limit, as, printed: but[`${row}, ${limit}`] ?? shipped },
    ...signed,
  }));
}

/** What is refused of confirmations. */
const refused = (...all: unknown[]) => refusalOf(() => confirmScheme(id, all as Confirmation[]));

describe("the names of limits", () => {
  it.each(builtInSchemes)("$id: no two limits have one name", (scheme) => {
    const names = confirmableLimits(scheme).map(({ row, limit, as }) => `${row}; ${limit}; ${as}`);
    expect(new Set(names).size).toBe(names.length);
    expect(names.length).toBeGreaterThan(0);
  });

  it("a criterion of every row stands once", () => {
    const rows = confirmableLimits(id).filter(({ as }) => as === "um pp");
    expect(rows.map((one) => one.row)).toEqual(Array(5).fill("every row, speed up to 600 r/min"));
  });

  it("a law of speed has its number and its cap", () => {
    const limits = confirmableLimits("api-617-8th-shaft").map(({ limit, shipped }) => [limit, shipped]);
    expect(limits.map(([limit]) => limit)).toEqual(["acceptance root of", "acceptance at most"]);
    expect(confirmableLimits("iso-7919-3-2009").map(({ limit, shipped }) => `${limit} ${shipped}`)).toEqual([
      "A/B over root n 4800",
      "B/C over root n 9000",
      "C/D over root n 13200",
    ]);
  });
});

describe("confirmations that agree", () => {
  const levels = [0.5, 2.5, 2.51, 4, 4.01, 6.5, 6.51, 12];

  it.each(builtInSchemes)("$id: all confirmed, counted once each, and the same limits", (scheme) => {
    const confirmed = confirmScheme(scheme, agreed(scheme.id));
    const { limits, confirmed: count } = countLimits([confirmed]);
    expect([limits, count]).toEqual([countLimits([scheme]).limits, limits]);
    const sizes = (one: Scheme) => confirmableLimits(one).map(({ shipped }) => shipped);
    expect(sizes(confirmed)).toEqual(sizes(scheme));
    expect(confirmedDifferences(confirmed)).toEqual([]);
  });

  it.each(levels)("%d mm/s: the zone is the same, and verified", (level) => {
    const schemes = confirmedSchemes(agreed(id));
    for (const machine of ["pump 90 kW 2980 r/min category I", "pump 2980 r/min", "motor 90 kW 1485 r/min rigid"]) {
      const plain = judge(`${level} mm/s rms`, machine);
      const confirmed = judge(`${level} mm/s rms`, machine, { schemes });
      expect(confirmed.headline).toBe(plain.headline);
      expect(confirmed.judgements.map((one) => one.scheme)).toEqual(plain.judgements.map((one) => one.scheme));
      if (machine.includes("category")) {
        expect([confirmed.verified, confirmed.provenance]).toEqual([true, "confirmed"]);
        expect(confirmed.confirmed).toEqual(["confirmed by J. Example, 2024-03-04, p. 12"]);
      }
    }
  });

  it("the whole set chooses as the built-in one does; a list of some has no precedence", () => {
    const schemes = confirmedSchemes(agreed(id));
    for (const machine of [
      "motor 1485 r/min rigid",
      "fan 90 kW 1480 r/min rigid",
      "pump 90 kW",
      "pump 600 to 900 r/min",
    ])
      expect(schemesFor(machine, { schemes }).map(({ scheme }) => scheme.id)).toEqual(
        schemesFor(machine).map(({ scheme }) => scheme.id),
      );
    expect(machineClassifier("pump 90 kW 2980 r/min category I", "mm/s rms", { schemes }).confirmed).toHaveLength(1);
  });
});

describe("a printed value that differs", () => {
  const lower = confirmScheme(id, [{ ...read, printed: 6.3 }]);
  const difference = `${row}, C/D: the copy prints 6.3 mm/s rms, the table as shipped has 6.5 (reported)`;

  it("governs, and is told first of all cautions, in the source and in the list", () => {
    const { zone, limits, cautions, differences } = classify("6.4 mm/s rms", {
      scheme: lower,
      machine: "pump 90 kW 2980 r/min category I",
    });
    expect(zone).toBe("D");
    expect(limits["C/D"]?.source).toEqual({
      title: "ISO 10816-7:2009",
      where: "Table A.1",
      provenance: "confirmed",
      page: "p. 12",
      note: difference,
      by: "J. Example",
      on: "2024-03-04",
      shipped: "6.5 mm/s rms",
    });
    expect(cautions[0]).toBe(`DIFFERS FROM THE TABLE AS SHIPPED: ${difference}`);
    expect(differences).toEqual([cautions[0]]);
    expect(confirmedDifferences([lower])).toEqual([difference]);
  });

  it("a lower one never makes a verdict milder", () => {
    const rank = (zone: string) => "ABCD".indexOf(zone);
    const machines = ["pump 90 kW 2980 r/min category I", "pump 90 kW 2980 r/min", "pump category I", "pump 500 r/min"];
    for (const [limit, most] of [
      ["A/B", 2.5],
      ["B/C", 4],
      ["C/D", 6.5],
    ] as const) {
      for (const share of [0.97, 0.9, 0.8]) {
        const printed = most * share;
        const schemes = confirmedSchemes([{ ...read, limit, printed }]);
        for (const machine of machines)
          for (let level = 0.5; level < 8; level += 0.1) {
            const [was, is] = [judge(`${level} mm/s rms`, machine), judge(`${level} mm/s rms`, machine, { schemes })];
            expect(rank(is.zone)).toBeGreaterThanOrEqual(rank(was.zone));
            expect(rank(is.worst)).toBeGreaterThanOrEqual(rank(was.worst));
          }
      }
    }
  });

  it("a higher one needs a second person", () => {
    expect(refused({ ...read, printed: 6.6 }).message).toContain("second, the name of another person");
    expect(refused({ ...read, printed: 6.6, second: "j.  EXAMPLE" }).message).toContain(
      "another person than the first",
    );
    const scheme = confirmScheme(id, [{ ...read, printed: 6.6, second: "K. Example" }]);
    const { zone, confirmed } = classify("6.55 mm/s rms", { scheme, machine: "pump 90 kW 2980 r/min category I" });
    expect(zone).toBe("C");
    expect(confirmed).toEqual(["C/D mm/s rms confirmed by J. Example and K. Example, 2024-03-04, p. 12"]);
  });

  it("two readers: each limit says who confirmed it, and a raise is called one", () => {
    const row = { scheme: "iso-10816-7-2009", edition: "2009", row: "category I, power up to 200 kW", as: "mm/s rms" };
    const one = { page: "13", by: "Tilda Oakes", on: "2024-03-04" };
    const other = { page: "14", by: "Bram Hale", second: "Ines Voss", on: "2024-03-05" };
    const scheme = confirmScheme("iso-10816-7-2009", [
      { ...row, ...one, limit: "A/B", printed: 2.5 },
      { ...row, ...one, limit: "B/C", printed: 4 },
      { ...row, ...other, limit: "C/D", printed: 6.6 },
    ]);
    const { confirmed, limits, differences } = classify("6.4 mm/s rms", {
      scheme,
      machine: "pump 90 kW 2980 r/min category I",
    });
    expect(confirmed).toEqual([
      "A/B, B/C mm/s rms confirmed by Tilda Oakes, 2024-03-04, p. 13",
      "C/D mm/s rms confirmed by Bram Hale and Ines Voss, 2024-03-05, p. 14",
    ]);
    expect(Object.values(limits).map(({ source }) => source.by)).toEqual(["Tilda Oakes", "Tilda Oakes", "Bram Hale"]);
    expect(differences.join()).toContain("has 6.5 (reported): this RAISES the limit");
  });

  it.each<[string, string]>([
    ["-", "letters"],
    [".", "letters"],
    ["x", "letters"],
    ["xx", "letters"],
    ["0", "letters"],
    ["42", "letters"],
    ["none", "letters"],
    ["N/A", "letters"],
    ["n. a.", "letters"],
    ["\u200b\u200d", "letters"],
    ["J\u200b.", "letters"],
    ["Example J.", "another person"],
    ["EXAMPLE, J", "another person"],
    ["J. \u200bExam\u00adple", "another person"],
    ["J. Ex\u00e1mple", "another person"],
    ["Ｊ．Example", "another person"],
    ["Jo Example", "another person"],
    ["JE", "another person"],
    ["E. J.", "another person"],
    ["J Example (retired)", "another person"],
    ["Dr.-Ing. J. Example", "another person"],
    ["J. A. Example", "another person"],
    ["Example", "another person"],
  ])("%j is no second name", (second, words) => {
    expect(refused({ ...read, printed: 6.6, second }).message).toContain(words);
  });

  it.each([
    ...[
      "the same",
      "same person",
      "Same Person as above",
      "self",
      "myself",
      "idem",
      "see p. 12",
      "see above",
      "not yet",
    ],
    ...["pending", "to be done", "open", "missing", "unread", "still open", "still to be read", "someone else"],
    ...["colleague", "a colleague", "my colleague B", "witness", "signature", "second reader", "engineer 2"],
  ])("%j names nobody", (second) => {
    expect(refused({ ...read, printed: 6.6, second }).message).toContain("letters");
    expect(refused({ ...read, by: second }).message).toContain("the name of who read it");
  });

  it("a name of two alphabets is refused: some of their letters look the same", () => {
    // Cyrillic a, Greek omicron
    for (const second of ["K. Ex\u0430mple", "J\u03bf Holm"])
      expect(refused({ ...read, printed: 6.6, second }).message).toContain("one alphabet");
  });

  it.each([
    ["Jörg Müller", "JOERG MUELLER"],
    ["Jörg Müller", "Joerg Muller"],
    ["Anna Weiß", "anna weiss"],
    ["Käthe Bär", "Kaethe Baer"],
    ["Jo Holm", "Joe Holm"],
    ["Rolf Holm", "Rolf Holn"],
    ["Rolf Holm", "Rolv Holm"],
  ])("%s and %s may be one person", (by, second) => {
    expect(refused({ ...read, printed: 6.6, by, second }).message).toContain("another person");
    expect(refused({ ...read, printed: 6.6, by: second, second: by }).message).toContain("another person");
  });

  it("a name of any script is one; two persons may share a surname", () => {
    for (const second of ["李 明", "Nguyễn Văn A", "K. Example", "Jo Li", "علی رضایی"])
      expect(confirmScheme(id, [{ ...read, printed: 6.6, second }]).id).toBe(id);
    // both written out; initials beside a name that they may be of are one person
    const named = { ...read, printed: 6.6, by: "Jo Example" };
    expect(confirmScheme(id, [{ ...named, second: "Jan Example" }]).id).toBe(id);
    for (const second of ["J. Example", "JE", "(Jo) Example", "Example Jo"])
      expect(refused({ ...named, second }).message, second).toContain("another person");
    for (const by of ["-", "x", "none"]) expect(refused({ ...read, by }).message).toContain("the name of who read it");
  });

  it("of another row is a slip of the line, unless the page was read again", () => {
    const lower = { ...read, row: "category II, power up to 200 kW", printed: 6.5 };
    expect(refused(lower).message).toContain('6.5, which is C/D of the row "category I, power up to 200 kW"');
    expect(refused({ ...lower, printed: 6.4 }, { ...lower, limit: "B/C", printed: 4 }).message).toContain(
      'is B/C of the row "category I',
    );
    expect(confirmScheme(id, [{ ...lower, reread: true }]).id).toBe(id);
  });

  it("a page has a numeral, and the day is not before the edition", () => {
    for (const page of [
      "-",
      ".",
      "x",
      "0",
      "none",
      "n/a",
      "Table",
      "Table A.1",
      "Table 3",
      "Annex B",
      "A.1",
      "5.2.3",
      "clause 7",
    ])
      expect(refused({ ...read, page }).message, page).toContain("the page on which the value stands, by its number");
    for (const page of ["12", "p. iv", "xii", "Table A.1, p. 12", "p. 12, Table 3", "p. 10", "12 f.", "S.12", "3-12"])
      expect(confirmScheme(id, [{ ...read, page }]).id, page).toBe(id);
    expect(refused({ ...read, on: "2008-12-31" }).message).toContain("the year of the edition or later, 2009");
    expect(confirmScheme(id, [{ ...read, on: "2009-01-01" }]).id).toBe(id);
  });

  it("of a law of speed: both numbers or none, and what differs is told", () => {
    const law = { scheme: "api-617-8th-shaft", edition: schemeById("api-617-8th-shaft").edition };
    const [root, cap] = confirmableLimits("api-617-8th-shaft");
    if (root === undefined || cap === undefined) throw new Error("no law");
    const one = { ...read, ...law, row: root.row, as: root.as };
    const first = { ...one, limit: root.limit, printed: root.shipped * 0.95 };
    expect(refusalOf(() => confirmScheme("api-617-8th-shaft", [first])).message).toContain("acceptance at most");
    const scheme = confirmScheme("api-617-8th-shaft", [first, { ...one, limit: cap.limit, printed: cap.shipped }]);
    expect(confirmedDifferences(scheme)).toHaveLength(1);
    expect(countLimits([scheme]).confirmed).toBe(1);
    const other = { ...one, limit: cap.limit, printed: cap.shipped, by: "K. Example" };
    expect(refusalOf(() => confirmScheme("api-617-8th-shaft", [first, other])).message).toContain(
      "the name and the day",
    );
  });

  it("of 4800/root n: the number above the root is squared", () => {
    const [first] = confirmableLimits("iso-7919-3-2009");
    const { scheme, edition, row, limit, as } = first as NonNullable<typeof first>;
    const confirmed = confirmScheme("iso-7919-3-2009", [{ scheme, edition, row, limit, as, printed: 4500, ...signed }]);
    expect(confirmed.classes[0]?.criteria[0]?.limits["A/B"]).toEqual({ rootOf: 4500 ** 2 });
    const [now] = limitsFor({ scheme: confirmed, machine: "3600 r/min" });
    expect(now?.limits["A/B"]?.value).toBe(75);
  });
});

describe("what is refused, whole", () => {
  it.each<[string, object, string, string]>([
    ["another scheme", { scheme: "iso-10816-3-2009" }, "unknown-option", "the scheme that is confirmed"],
    ["another edition", { edition: "2018" }, "unknown-option", "the edition of the scheme"],
    ["a row there is none of", { row: "category I, power up to 300 kW" }, "unknown-option", `did you mean ${row}`],
    ["a limit there is none of", { limit: "D/E" }, "unknown-option", "C/D"],
    ["another unit", { as: "in/s rms" }, "unknown-option", "unit and detector of the table"],
    ["another detector", { as: "mm/s pk" }, "unknown-option", "mm/s rms"],
    ["no unit", { as: "furlongs" }, "unknown-option", "mm/s rms"],
    ["no value", { printed: undefined }, "missing-fact", "the value that the copy prints"],
    ["a value of zero", { printed: 0 }, "not-positive", "above zero"],
    ["no page", { page: undefined }, "missing-fact", "the page"],
    ["no name", { by: undefined }, "missing-fact", "the name of who read it"],
    ["an empty name", { by: "  " }, "syntax", "the name of who read it"],
    ["a name of two lines", { by: "J. Example\nK." }, "syntax", "of one line"],
    ["no day", { on: undefined }, "missing-fact", "2024-03-04"],
    ["a day of no calendar", { on: "2024-02-30" }, "syntax", "2024-03-04"],
    ["a day written otherwise", { on: "4.3.2024" }, "syntax", "2024-03-04"],
    ["a day in the future", { on: "2999-01-01" }, "out-of-range", "not in the future"],
    ["a part there is none of", { pages: "12" }, "unknown-option", "page"],
    ["a sheet of another version", { shipped: 6.6 }, "out-of-range", "print a new check sheet"],
    ["a limit that does not rise", { printed: 3.9, reread: true }, "out-of-range", "that rise"],
  ])("%s", (_, change, code, words) => {
    const error = refused({ ...read, ...change });
    expect([error.code, error.message]).toEqual([code, expect.stringContaining(words)]);
    expect(error.message).toContain("confirmation 1: ");
  });

  it("a limit confirmed twice, here or before", () => {
    expect(refused(read, { ...read, readAt: "line 9 of a.csv" }).message).toMatch(
      /line 9 of a.csv: each limit once.*after confirmation 1/,
    );
    const once = confirmScheme(id, [read]);
    expect(refusalOf(() => confirmScheme(once, [read])).message).toContain("not confirmed yet");
  });

  it("one of two highest settings, and highest settings that do not rise", () => {
    const alarm = { ...read, limit: "alarm at most", printed: 5 };
    expect(refused(alarm).message).toContain('"trip at most"');
    expect(
      refused({ ...alarm, printed: 4.9 }, { ...read, limit: "trip at most", printed: 4.6, reread: true }).message,
    ).toContain("that rise");
    const scheme = confirmScheme(id, [alarm, { ...read, limit: "trip at most", printed: 8.1 }]);
    expect(limitsFor({ scheme, machine: "category I 90 kW 2980 r/min" })[0]?.ceilings).toMatchObject({
      alarm: 5,
      trip: 8.1,
      verified: true,
    });
  });

  it.each<[number, string]>([
    [65, "decimal point"],
    [0.65, "decimal point"],
    [0.0653, "decimal point"],
    [6.5 / 25.4, "mil for um"],
    [6.5 * 25.3, "mil for um"],
    [6.5 * Math.SQRT2, "peak for RMS"],
    [4.6, "peak for RMS"],
    [13.05, "peak-to-peak for peak"],
    [3.25, "peak-to-peak for peak"],
    [6.5 * 2 * Math.SQRT2, "peak-to-peak for RMS"],
  ])("%d for 6.5 is asked about: %s", (printed, words) => {
    const one = { ...read, printed, second: "K. Example" };
    expect(refused(one).message).toContain(words);
    expect(refused(one).message).toContain("reread");
    // read again it is taken where it rises, else refused for that alone
    if (printed > 4) expect(confirmScheme(id, [{ ...one, reread: true }]).id).toBe(id);
    else expect(refused({ ...one, reread: true }).message).toContain("that rise");
  });

  // [as shipped, as a page prints the slip, what it is]: common practice, no source
  // biome-ignore format: a row of a table is a line
  it.each<[number, number, string]>([
    [0.2,  0.28,  "peak for RMS"],
    [0.28, 0.2,   "peak for RMS"],
    [0.15, 0.42,  "peak-to-peak for RMS"],
    [1.12, 2.2,   "peak-to-peak for peak"],
    [0.1,  2.5,   "inches for mm"],
    [2.5,  0.098, "inches for mm"],
    [0.3,  5.4,   "in/s peak for mm/s RMS"],
    [4.5,  0.25,  "in/s peak for mm/s RMS"],
    [2,    19.6,  "g for m/s2"],
    [19.6, 2,     "g for m/s2"],
    [2,    20,    "decimal point"],
    [2,    78.74, "inches for m"],
    [6.5,  6.5 * 1.38, "peak for RMS"],
    [6.5,  6.5 * 1.95, "peak-to-peak for peak"],
    [6.5,  10,    "more than 1.5 times the table's"],
    [6.5,  4.2,   "less than the table's over 1.5"],
  ])("%d as %d is asked about: %s", (shipped, printed, words) => {
    expect(slipOf(printed, shipped, false)).toContain(words);
    // of 12000 in root(12000/n) the slip is by the square
    expect(slipOf(shipped * (printed / shipped) ** 2, shipped, true)).toBeDefined();
  });

  it("values beside a slip are taken", () => {
    for (const printed of [6.5 * 1.36, 6.5 * 1.46, 6.5 * 0.95, 6.5 * 1.5])
      expect(confirmScheme(id, [{ ...read, printed, second: "K. Example" }]).id).toBe(id);
  });
});

describe("a limit above the highest setting of its row", () => {
  const raised = { ...read, limit: "C/D", printed: 8.5, second: "K. Example", reread: true };

  it("is told, with the setting that stays, until that is confirmed too", () => {
    const scheme = confirmScheme(id, [raised]);
    expect(limitsFor({ scheme, machine: "category I 90 kW 2980 r/min" })[0]?.ceilings?.trip).toBe(8.3);
    const { cautions, differences } = classify("3 mm/s rms", { scheme, machine: "pump 90 kW 2980 r/min category I" });
    expect(differences).toHaveLength(1);
    expect(cautions[0]).toContain("the copy prints 8.5 mm/s rms, the table as shipped has 6.5 (reported)");
    expect(cautions[0]).toContain(
      `${row}, C/D: the copy's 8.5 mm/s rms contradicts trip at most, 8.3 (MEMORY), which was not confirmed: read that too`,
    );
    // what JSON gives back is that scheme still
    expect(
      classify("3 mm/s rms", { scheme: JSON.parse(JSON.stringify(scheme)), machine: "category I 90 kW" }).zone,
    ).toBe("B");
  });

  it("is refused where the settings were confirmed, with it or before", () => {
    const settings = [
      { ...read, limit: "alarm at most", printed: 5 },
      { ...read, limit: "trip at most", printed: 8.3 },
    ];
    expect(refused(raised, ...settings).message).toContain("trip at most 8.3");
    const before = confirmScheme(id, settings);
    expect(refusalOf(() => confirmScheme(before, [raised])).message).toContain("that rise");
    const [alarm, trip] = settings as [Confirmation, Confirmation];
    const higher = confirmScheme(
      id,
      [raised, alarm, { ...trip, printed: 8.6, second: "K. Example" }].map((one) => ({ second: "K. Example", ...one })),
    );
    expect(confirmedDifferences(higher).join()).not.toMatch(/contradicts/);
  });
});

describe("a confirmed scheme as data", () => {
  const scheme = confirmScheme(id, [read, { ...read, limit: "B/C", printed: 3.9 }]);

  it("is frozen, and the table as shipped stays as it was", () => {
    expect(Object.isFrozen(scheme.classes[0]?.criteria[0]?.limits)).toBe(true);
    expect(schemeById(id).classes[0]?.criteria[0]?.limits["B/C"]).toBe(4);
  });

  it("comes back from JSON as the same scheme, and judges", () => {
    const text = JSON.stringify(scheme);
    const copy = JSON.parse(text) as Scheme;
    expect(JSON.stringify(defineScheme(copy))).toBe(text);
    expect(classify("3.95 mm/s rms", { scheme: copy, machine: "category I 90 kW" }).zone).toBe("C");
    expect(judgePoints("DE-H 3.95 mm/s rms", "pump 90 kW category I", { scheme: copy }).headline).toContain("zone C");
  });

  it("may not be changed beyond what was confirmed under that id", () => {
    const text = JSON.stringify(scheme);
    const changes: [string, string][] = [
      ['"C/D":7.6', '"C/D":7.7'],
      ['"status":"current"', '"status":"guide"'],
      ['"B/C":3.9', '"B/C":4.4'],
    ];
    for (const [from, to] of changes) {
      expect(text).toContain(from);
      const copy = JSON.parse(text.replace(from, to)) as Scheme;
      expect(refusalOf(() => classify("4 mm/s rms", { scheme: copy, machine: "category I 90 kW" })).code).toBe(
        "out-of-range",
      );
    }
  });

  it("a source says who and when only if it is confirmed, and then it must", () => {
    const own = (change: object) => {
      const copy = JSON.parse(JSON.stringify({ ...schemeById(id), id: "own" }));
      Object.assign(copy.classes[0].criteria[0].source, change);
      return refusalOf(() => defineScheme(copy));
    };
    expect(own({ by: "J. Example" }).message).toContain("only in a source that is confirmed");
    expect(own({ provenance: "confirmed", page: "p. 1" }).message).toContain("who confirmed it");
    expect(own({ provenance: "confirmed", by: "J. Example", page: "p. 1" }).message).toContain("2024-03-04");
    const signedBy = (by: string, second: string) => own({ provenance: "confirmed", page: "p. 1", by, second });
    expect(signedBy("-", "K. Example").message).toContain("the name of who confirmed it");
    expect(signedBy("J. Example", "none").message).toContain("second, the name of who else");
    expect(signedBy("J. Example", "Example, J").message).toContain("another person than the first");
  });
});

describe("what nobody confirmed", () => {
  const height = "vertical pump 500 r/min, region preferred, test site, measuring height 5 m";

  it("is not said of a limit to which the height of the measuring point adds", () => {
    const shipped = schemeById("ansi-hi-9.6.4-2009-slow");
    const own = defineScheme({
      ...JSON.parse(JSON.stringify(shipped)),
      id: "works-pumps",
      classes: shipped.classes.map((one) => ({
        ...one,
        criteria: one.criteria.map((criterion) => ({
          ...criterion,
          source: { title: "Works rule 12", provenance: "memory" as const },
        })),
      })),
    });
    const all = confirmableLimits(own).map(({ shipped: printed, scheme, edition, row, limit, as }) => ({
      ...{ scheme, edition, row, limit, as, printed, ...signed },
    }));
    const scheme = confirmScheme(own, all);
    const low = classify("70 um pp", { scheme, machine: height.replace(", measuring height 5 m", "") });
    expect([low.provenance, low.verified, low.limit.value]).toEqual(["confirmed", true, 80]);
    const high = classify("70 um pp", { scheme, machine: height });
    expect(high.limit.value).toBeGreaterThan(80);
    expect([high.provenance, high.verified, high.confirmed]).toEqual(["memory", false, []]);
  });

  it("a change is held against the copy, and says first that it differs", () => {
    const differs = confirmScheme(id, [{ ...read, limit: "B/C", printed: 3.9 }]);
    const told = changeFromBaseline("3.4 mm/s rms", "2.3 mm/s rms", {
      scheme: differs,
      machine: "pump 90 kW 2980 r/min category I",
    });
    expect(told.cautions[0]).toMatch(/^DIFFERS FROM THE TABLE AS SHIPPED: .*3\.9 mm\/s rms/);
  });
});
