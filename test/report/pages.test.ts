import {
  type SheetRequest,
  setpointSheet,
  sheetHtml,
  sheetJson,
  sheetMarkdown,
  VeladisError,
} from "veladis/protection";
import { describe, expect, it } from "vitest";
import { requests } from "./requests";

const names = Object.keys(requests);
const whole = requests["every part"] as SheetRequest;

describe("every sheet stands on a page, to be read", () => {
  it.each(names)("%s", async (name) => {
    const sheet = setpointSheet(requests[name] as SheetRequest);
    await expect(sheetMarkdown(sheet)).toMatchFileSnapshot(`pages/${name.replaceAll(/\W+/g, "-")}.md.txt`);
    expect(JSON.parse(sheetJson(sheet))).toEqual(JSON.parse(JSON.stringify(sheet)));
  });

  it("as HTML", async () => {
    await expect(sheetHtml(setpointSheet(whole))).toMatchFileSnapshot("pages/every-part.html.txt");
    await expect(sheetHtml(setpointSheet({ machine: "ID fan 1" }), "de")).toMatchFileSnapshot("pages/bare.html.txt");
  });

  it("as JSON, with two blanks before each part and a line end behind all", () => {
    const bare = sheetJson(setpointSheet({ machine: "ID fan 1" }));
    expect(bare.split("\n").slice(0, 3)).toEqual([
      "{",
      '  "title": "Setpoints and verification",',
      '  "subject": "ID fan 1",',
    ]);
    expect(bare.endsWith("}\n")).toBe(true);
  });
});

type Path = readonly (string | number)[];

/** Every place in plain data that holds a text, a number, true, false, null or a list, by its path. */
function placesIn(value: unknown, path: Path = []): [Path, unknown][] {
  if (Array.isArray(value))
    return [[path, value], ...value.slice(0, 1).flatMap((one, i) => placesIn(one, [...path, i]))];
  if (typeof value === "object" && value !== null) {
    return [[path, value], ...Object.entries(value).flatMap(([name, one]) => placesIn(one, [...path, name]))];
  }
  return [[path, value]];
}

/** A copy of the data with something else at one place. */
function withAt(data: unknown, [first, ...rest]: Path, other: unknown): unknown {
  if (first === undefined) return other;
  const copy = (Array.isArray(data) ? [...data] : { ...(data as object) }) as Record<string | number, unknown>;
  if (rest.length === 0 && other === undefined) delete copy[first];
  else copy[first] = withAt(copy[first], rest, other);
  return copy;
}

function codeOf(act: () => unknown): string {
  try {
    act();
    return "answers";
  } catch (error) {
    if (error instanceof VeladisError) return `${error.code}: ${error.expected}`;
    return String(error);
  }
}

describe("what a sheet is made of is held against what its functions return", () => {
  // parts that are made of settings are refused as the trip logic refuses them, which its own tests hold
  const { settings: _, ...held } = whole;
  const places = placesIn(held).filter(([path]) => path.length > 0);
  const told = (other: (value: unknown) => unknown): string =>
    places
      .map(
        ([path, value]) =>
          `${path.join(".")}  ${codeOf(() => setpointSheet(withAt(held, path, other(value)) as SheetRequest))}`,
      )
      .join("\n");

  it("another kind in each place", async () => {
    const page = told((value) => (typeof value === "number" ? "7" : 7));
    expect(page).not.toMatch(/TypeError|RangeError/);
    await expect(page).toMatchFileSnapshot("pages/another-kind.txt");
  });

  it("nothing in each place", async () => {
    const page = told(() => undefined);
    expect(page).not.toMatch(/TypeError|RangeError/);
    await expect(page).toMatchFileSnapshot("pages/nothing.txt");
  });

  it("a number that is none, and null", async () => {
    const page = told((value) => (typeof value === "number" ? Number.NaN : null));
    expect(page).not.toMatch(/TypeError|RangeError/);
    await expect(page).toMatchFileSnapshot("pages/null.txt");
  });

  it.each([
    ["no request", undefined, "missing-option: a request such as"],
    ["a request that is null", null, "missing-option: a request such as"],
    ["no machine", {}, "what the machine is called"],
    ["a machine without a name", { machine: " " }, "syntax: what the machine is called"],
    ["a part that no sheet has", { machine: "fan", remark: [] }, "unknown-option: a part of a sheet"],
    ["facts that are a text", { machine: "fan", facts: "wet" }, "wrong-type: facts: texts by name"],
    ["facts that are null", { machine: "fan", facts: null }, "missing-option: facts: texts by name"],
    ["settings that are none", { machine: "fan", settings: {} }, "missing-option: latching"],
    ["a fact that is a number", { machine: "fan", facts: { sensor: 7 } }, 'wrong-type: facts: a text for "sensor"'],
  ])("%s", (_name, request, expected) => {
    expect(codeOf(() => setpointSheet(request as never))).toContain(expected);
  });
});

describe("what is written is a sheet", () => {
  const sheet = setpointSheet(whole);
  const writers = { sheetMarkdown, sheetHtml, sheetJson } as const;

  it.each(Object.entries(writers))("%s refuses another kind in each place of its text", (_, write) => {
    const { data, ...text } = sheet;
    for (const [path, value] of placesIn(text)) {
      if (path.length === 0) continue;
      const other = typeof value === "number" ? "7" : 7;
      const changed = withAt(sheet, path, other);
      expect(
        codeOf(() => write(changed as never)),
        path.join("."),
      ).toMatch(/^wrong-type: sheet[.[]/);
    }
    expect(codeOf(() => write(undefined as never))).toMatch(/^missing-option: sheet/);
    expect(codeOf(() => write({ ...sheet, data: undefined } as never))).toMatch(/^missing-option: sheet.data/);
  });

  it("and names the argument that is wrong", () => {
    expect(() => setpointSheet(undefined as never)).toThrow(expect.objectContaining({ parameter: "request" }));
    expect(() => sheetHtml(sheet, " ")).toThrow(expect.objectContaining({ parameter: "language" }));
  });

  it("leaves out what a part lacks", () => {
    const bare = { ...sheet, sections: [{ title: "Bare" }], blanks: [] };
    expect(sheetMarkdown(bare)).toContain("## Bare\n\n## Signed\n");
    expect(sheetHtml(bare)).toContain("<h2>Bare</h2>\n<h2>Signed</h2>");
  });

  it("refuses a language that is none, and data that JSON cannot hold", () => {
    expect(codeOf(() => sheetHtml(sheet, " "))).toContain("syntax: the language of a page");
    for (const [part, code] of [
      [Number.NaN, "not-a-number"],
      [Number.POSITIVE_INFINITY, "not-finite"],
      [7n, "wrong-type"],
      [() => 7, "wrong-type"],
      [Symbol("x"), "wrong-type"],
    ] as const) {
      expect(codeOf(() => sheetJson({ ...sheet, data: { part } }))).toBe(`${code}: data that JSON can hold`);
    }
    for (const part of [null, undefined, true, "x", 7, {}, []]) {
      expect(JSON.parse(sheetJson({ ...sheet, data: { part } })).data).toEqual(part === undefined ? {} : { part });
    }
  });
});

describe("figures of a sheet, from outside", () => {
  it("errors and decibels are what the handbook's arithmetic gives", () => {
    // 7.3 for 8: -0.7, -8.75 %, 20 lg(7.3 / 8) = -0.795 dB; common practice, no source
    const text = sheetMarkdown(setpointSheet(whole));
    expect(text).toContain(
      "| as found | 40.0 Hz, 2400 r/min | 8.000 mm/s rms | 8.00 mm/s rms | 7.300 mm/s rms | -0.70 mm/s rms | -8.8 | -0.80 |",
    );
    expect(text).toContain(
      "| as left | 40.0 Hz, 2400 r/min | 8.000 mm/s rms | 8.00 mm/s rms | 7.900 mm/s rms | -0.10 mm/s rms | -1.3 | -0.11 |",
    );
  });
});
