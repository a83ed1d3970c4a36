/** Whole sheets, as a person reads them; look at the pages after `vitest -u`. */
import { currentLoop } from "veladis";
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

const sheets = Object.entries(requests).map(([name, parts]) => [name, setpointSheet({ machine, ...parts })] as const);

describe("the page of", () => {
  it.each(sheets)("%s, as Markdown", async (name, sheet) => {
    await expect(sheetMarkdown(sheet)).toMatchFileSnapshot(`pages/${name}.md.txt`);
  });

  it.each(sheets.slice(0, 2))("%s, as HTML", async (name, sheet) => {
    await expect(sheetHtml(sheet)).toMatchFileSnapshot(`pages/${name}.html.txt`);
  });

  it.each(sheets)("%s, as JSON, is the sheet", (_, sheet) => {
    expect(JSON.parse(sheetJson(sheet))).toEqual(JSON.parse(JSON.stringify(sheet)));
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
