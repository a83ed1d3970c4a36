/** Whole sheets, as a person reads them; look at the pages after `vitest -u`. */
import { currentLoop, type VeladisError } from "veladis";
import {
  asFoundAsLeft,
  baseline,
  benchPlan,
  checkAgainstKnown,
  linearity,
  proposeSetpoints,
  type SheetRequest,
  setpointSheet,
  sheetHtml,
  sheetJson,
  sheetMarkdown,
} from "veladis/protection";
import { describe, expect, it } from "vitest";
import { known, readings, request, settings } from "./whole-request";

const tolerance = "5 %";
/** More than the loop can say: 20.5 mA and above are the end of what it measures. */
const clipped = currentLoop("0 to 10 mm/s rms at 2400 r/min").reading(20.9);
const machine = "ID fan 1, fan bearing, horizontal";

/** One request a page. Figures of the invented plant. */
const requests: Readonly<Record<string, Omit<SheetRequest, "machine">>> = {
  whole: request,
  bare: {},
  "check-passes": { known, check: checkAgainstKnown({ known, indicated: "8.1 mm/s rms", tolerance }) },
  "check-low": {
    check: checkAgainstKnown({ known, indicated: "7.3 mm/s rms", tolerance, uncertainty: "2 %" }),
    facts: { sensor: "100 mV/g accelerometer, stud" },
  },
  "check-high": { check: checkAgainstKnown({ known, indicated: "9 mm/s rms", tolerance }) },
  "check-nothing": { check: checkAgainstKnown({ known, indicated: "0 mm/s rms", tolerance }) },
  "check-clipped": { check: checkAgainstKnown({ known, indicated: clipped, tolerance: "50 %" }) },
  "known-clipped": { check: checkAgainstKnown({ known: clipped, indicated: "7.3 mm/s rms", tolerance }) },
  "pair-still-low": {
    asFoundAsLeft: asFoundAsLeft({ known, tolerance, asFound: "6.9 mm/s rms", asLeft: "7.5 mm/s rms" }),
  },
  "pair-clipped": {
    asFoundAsLeft: asFoundAsLeft({ known, tolerance, asFound: clipped, asLeft: clipped }),
  },
  "pair-high": {
    asFoundAsLeft: asFoundAsLeft({ known, tolerance, asFound: "9 mm/s rms", asLeft: "8.1 mm/s rms" }),
  },
  "linearity-low": {
    linearity: linearity(
      [
        { known: "2 mm/s rms", indicated: "2.2 mm/s rms" },
        { known: "4 mm/s rms", indicated: "3.5 mm/s rms" },
        { known: "8 mm/s rms", indicated: "7.2 mm/s rms" },
      ],
      { tolerance },
    ),
  },
  "linearity-high": {
    linearity: linearity(
      [
        { known: "2 mm/s rms", indicated: "2 mm/s rms" },
        { known: "8 mm/s rms", indicated: "9 mm/s rms" },
      ],
      { tolerance },
    ),
  },
  "linearity-clipped": {
    linearity: linearity(
      [
        { known: "4 mm/s rms", indicated: "4 mm/s rms" },
        { known: "8 mm/s rms at 2400 r/min", indicated: clipped },
      ],
      { tolerance: "50 %" },
    ),
  },
  "settings-plain": {
    settings: {
      ...settings,
      latching: false,
      coil: "normally de-energised",
      startInhibit: 12,
      offDelay: 3,
      multiplier: { factor: 2, seconds: 30 },
    },
  },
  "proposal-alone": {
    proposal: proposeSetpoints({ baseline: "2 mm/s rms", machine: "fan 1485 r/min", scheme: "none" }),
  },
  "proposal-statistics": {
    baseline: baseline([2, 2.1, 1.9, 2, 2.2, 2, 9, 1.9, 2, 2.05], { as: "mm/s rms" }),
    proposal: proposeSetpoints({ baseline: readings, scheme: "none" }),
  },
  "plan-not-possible": { plan: benchPlan(settings, { lowest: "8 Hz", highest: "3 kHz", displacement: "0.05 mm pp" }) },
  remarks: { remarks: ["The gland was repacked on the day of the test."] },
};

/** Made within a test, so that each test is known to run what it runs. */
const sheetOf = (name: string) => setpointSheet({ machine, ...requests[name] });
const names = Object.keys(requests);

describe("the page of", () => {
  it.each(names)("%s, as Markdown", async (name) => {
    await expect(sheetMarkdown(sheetOf(name))).toMatchFileSnapshot(`pages/${name}.md.txt`);
  });

  it.each(["whole", "bare"])("%s, as HTML", async (name) => {
    await expect(sheetHtml(sheetOf(name))).toMatchFileSnapshot(`pages/${name}.html.txt`);
  });

  it.each(names)("%s, as JSON, is the sheet", (name) => {
    const sheet = sheetOf(name);
    expect(JSON.parse(sheetJson(sheet))).toEqual(JSON.parse(JSON.stringify(sheet)));
  });
});

describe("what is no sheet", () => {
  const refused = (act: () => unknown): string => {
    try {
      act();
    } catch (error) {
      return `${(error as VeladisError).code}: ${(error as VeladisError).message}`;
    }
    return "accepted";
  };

  it("is refused, with what was expected", () => {
    const sheet = sheetOf("remarks");
    const facts = "text" as unknown as Record<string, string>;
    const oneFact = { sensor: 5 } as unknown as Record<string, string>;
    const found = { ...sheet, data: { ...sheet.data, rule: () => 1 } };
    const infinite = { ...sheet, data: { ...sheet.data, level: Number.POSITIVE_INFINITY } };
    expect([
      refused(() => setpointSheet(undefined as never)),
      refused(() => setpointSheet({} as never)),
      refused(() => setpointSheet({ machine: 5 } as never)),
      refused(() => setpointSheet({ machine, plant: "x" } as never)),
      refused(() => setpointSheet({ machine, facts })),
      refused(() => setpointSheet({ machine, facts: null as never })),
      refused(() => setpointSheet({ machine, facts: oneFact })),
      refused(() => setpointSheet({ machine, settings: { ...settings, onDelay: -1 } })),
      refused(() => setpointSheet({ machine, remarks: [5] as never })),
      refused(() => sheetMarkdown({ ...sheet, title: 5 } as never)),
      refused(() => sheetMarkdown({ ...sheet, cautions: "none" } as never)),
      refused(() =>
        sheetMarkdown({ ...sheet, sections: [{ title: "x", table: { columns: [1], rows: [] } }] } as never),
      ),
      refused(() =>
        sheetMarkdown({ ...sheet, sections: [{ title: "x", table: { columns: [], rows: [[1]] } }] } as never),
      ),
      refused(() => sheetMarkdown({ ...sheet, sections: [{ title: "x", text: [1] }] } as never)),
      refused(() => sheetMarkdown({ ...sheet, sections: [{ title: "x", list: [1] }] } as never)),
      refused(() => sheetMarkdown({ ...sheet, sections: [{ title: 1 }] } as never)),
      refused(() => sheetMarkdown({ ...sheet, blanks: [1] } as never)),
      refused(() => sheetMarkdown({ ...sheet, subject: 1 } as never)),
      refused(() => sheetMarkdown({ ...sheet, data: undefined } as never)),
      refused(() => sheetHtml(sheet, 5 as never)),
      refused(() => sheetJson(found as never)),
      refused(() => sheetJson(infinite as never)),
    ]).toMatchInlineSnapshot(`
      [
        "missing-fact: expected a request such as { machine: "Circulation pump 3" }, received nothing",
        "wrong-type: expected what the machine is called, received nothing",
        "wrong-type: expected what the machine is called, received 5",
        "unknown-option: expected a part of a sheet, received "plant"; did you mean plan?",
        "wrong-type: expected facts: texts by name, received "text"",
        "wrong-type: expected facts: texts by name, received nothing",
        "wrong-type: expected facts: a text for "sensor", received 5",
        "negative: expected onDelay: a time of zero or more, in s, received -1",
        "wrong-type: expected remarks[0]: a text, received 5",
        "wrong-type: expected sheet.title: a text, received 5",
        "wrong-type: expected sheet.cautions: a list, received "none"",
        "wrong-type: expected sheet.sections[0].table.columns[0]: a text, received 1",
        "wrong-type: expected sheet.sections[0].table.rows[0][0]: a text, received 1",
        "wrong-type: expected sheet.sections[0].text[0]: a text, received 1",
        "wrong-type: expected sheet.sections[0].list[0]: a text, received 1",
        "wrong-type: expected sheet.sections[0].title: a text, received 1",
        "wrong-type: expected sheet.blanks[0]: a text, received 1",
        "wrong-type: expected sheet.subject: a text, received 1",
        "missing-fact: expected sheet.data: an object, received nothing",
        "wrong-type: expected the language of a page, such as "en-GB", received 5",
        "wrong-type: expected data that JSON can hold, received () => 1",
        "not-finite: expected data that JSON can hold, received Infinity",
      ]
    `);
  });

  it("keeps what is null, and escapes the language of a page", () => {
    const sheet = sheetOf("remarks");
    expect(JSON.parse(sheetJson({ ...sheet, data: { ...sheet.data, none: null } } as never)).data.none).toBeNull();
    expect(sheetHtml(sheet, 'x" onload="y')).toContain('<html lang="x&quot; onload=&quot;y">');
  });
});

describe("each part of the data", () => {
  /** Every place in plain data: the names that lead to it. */
  const placesIn = (data: unknown, path: readonly string[] = []): (readonly string[])[] => {
    if (typeof data !== "object" || data === null) return path.length === 0 ? [] : [path];
    const inside = Object.entries(data).flatMap(([name, part]) => placesIn(part, [...path, name]));
    return path.length === 0 ? inside : [path, ...inside];
  };

  /** A copy with another value in a place. */
  const withOther = (data: unknown, [name, ...rest]: readonly string[], other: unknown): unknown => {
    if (name === undefined) return other;
    const copy = Array.isArray(data) ? [...data] : { ...(data as object) };
    (copy as Record<string, unknown>)[name] = withOther((data as Record<string, unknown>)[name], rest, other);
    return copy;
  };

  const whole = requests.whole as SheetRequest;
  // what is left to others: the steps of a history and the readings are checked where they are made
  const places = placesIn({ ...whole, check: requests["check-low"]?.check }).filter(
    (path) => !path.includes("history") && !path.includes("assumed"),
  );

  it("there are many", () => expect(places.length).toBeGreaterThan(300));

  it("is refused where it is of another kind", () => {
    const all = { ...whole, check: requests["check-low"]?.check };
    const accepted = places.filter((path) => {
      try {
        setpointSheet(withOther(all, path, Symbol("other")) as SheetRequest);
        return true;
      } catch (error) {
        expect((error as Error).name).toBe("VeladisError");
        return false;
      }
    });
    expect(accepted).toEqual([]);
  });
});
