import { describe, expect, it } from "vitest";
import type { TableSettings } from "../../../src/cli/table/settings";
import { type Outcome, summaryText } from "../../../src/cli/table/summary";

const settings = {
  json: false,
  out: undefined,
  scheme: undefined,
  machine: "",
  machineColumns: [],
} as unknown as TableSettings;

interface Told {
  readonly rows?: number;
  readonly refused?: number;
  readonly answered?: Partial<Outcome["answered"]>;
  readonly more?: Partial<Outcome>;
}

function summary(
  { rows = 2000, refused = 0, answered = {}, more = {} }: Told,
  told: Partial<TableSettings> = {},
): string {
  const outcome: Outcome = {
    counts: { rows, refused, beyondRange: 0 },
    answered: {
      zones: new Map(),
      worst: new Map(),
      headlines: new Map(),
      known: new Map(),
      assumed: [],
      reached: 0,
      ...answered,
    },
    account: {
      ...{ rowsIn: rows, rows, refused: 0, skipped: { blank: 0, remarks: 0, preamble: 0 } },
      ...{ behindSkipped: { first: 0, later: 0 }, separator: undefined, torn: false },
    },
    ...{ refusedPath: undefined, removed: undefined },
    ...more,
  };
  return summaryText({ ...settings, ...told }, outcome);
}

const rows = "rows: 2000 in = 2000 answered + 0 refused + 0 skipped\n";

describe("what a table came to", () => {
  it("is the account of its rows, where there is nothing else", () => expect(summary({})).toBe(rows));

  it("has each path on a line of its own; that of refused rows only if there are any", () => {
    const more = { refusedPath: "fans.refused.csv" };
    expect(summary({ more }, { out: "fans.csv" })).toBe(`${rows}written   fans.csv\n`);
    expect(summary({ more, refused: 5 }, { out: "fans.csv" })).toBe(
      "rows: 2000 in = 1995 answered + 5 refused + 0 skipped\nwritten   fans.csv\n          fans.refused.csv: refused rows\n",
    );
    expect(summary({ refused: 5 })).not.toContain("written");
    expect(summary({ more, refused: 5 })).toContain("written   fans.refused.csv: refused rows\n");
    expect(summary({ more: { removed: "fans.refused.csv" } })).toBe(
      `${rows}removed   fans.refused.csv, of an earlier run: no row was refused\n`,
    );
  });

  it("tells of pages without checksums, and only of Parquet", () => {
    const told = "checksums not in all pages of the file: damage there may pass as other values\n";
    expect(summary({ more: { summed: false } })).toBe(rows + told);
    expect(summary({ more: { summed: true } })).toBe(rows);
  });

  it("has the zones in their order, however they came, with their rows in groups", () => {
    const headlines = new Map([
      ...([
        ["D", 5],
        ["A", 1234],
        ["C", 11],
        ["B", 750],
      ] as const),
    ]);
    expect(summary({ answered: { headlines } })).toBe(`${rows}zones     A 1 234, B 750, C 11, D 5\n`);
  });

  it("has what was assumed, with its rows where these are not all that were answered", () => {
    const assumed = [
      ["sine", 1995],
      ["one frequency", 1200],
      ["rigid", 1],
    ] as const;
    expect(summary({ refused: 5, answered: { assumed } })).toContain(
      "assumed   sine\n          one frequency (1 200 rows)\n          rigid (1 row)\n",
    );
  });

  it("has eight assumptions, and the number of the others", () => {
    const assumed = (count: number) => Array.from({ length: count }, (_, i) => [`no. ${i + 1}`, 2000] as const);
    expect(summary({ answered: { assumed: assumed(8) } })).not.toContain("more");
    const nine = summary({ answered: { assumed: assumed(9) } });
    expect(nine).toContain("          no. 8\n          and 1 more: see the column\n");
    expect(nine).not.toContain("no. 9");
    expect(summary({ answered: { assumed: assumed(1200) } })).toContain("and 1 192 more: see the column");
  });

  it("tells how limits are known, but for those that were checked", () => {
    const known = new Map([
      ["memory", 1500],
      ["quoted", 1],
      ["printed", 499],
    ] as const);
    const text = summary({ answered: { known } }).replace(/\n {10}/g, " ");
    expect(text).toBe(
      `${rows}known     1 500 rows judged by limits from memory: check them against the standard` +
        " 1 row judged by limits quoted in another document: check them against the standard\n",
    );
  });

  it("has a caution where rows were judged", () => {
    const judged = [{ scheme: "iso-10816-3-2009" }, { machine: "fan" }, { machineColumns: ["machine"] }];
    for (const told of judged) expect(summary({}, told)).toMatch(/\ncaution {3}\S/);
    expect(summary({})).not.toContain("caution");
  });

  it("is one line of JSON with all of it", () => {
    const answered = {
      zones: new Map([["A", 1990]]),
      worst: new Map([["B", 1990]]),
      known: new Map([["memory", 1990]] as const),
      assumed: [["sine", 1990]] as const,
    };
    const text = summary({ refused: 10, answered, more: { summed: true, removed: "old.csv" } }, { json: true });
    expect(text.endsWith("}\n")).toBe(true);
    expect(JSON.parse(text)).toEqual({
      summary: {
        ...{ rows: 2000, written: 1990, refused: 10, checksums: true, removed: "old.csv" },
        account: {
          ...{ in: 2000, answered: 1990, refused: 10, torn: false },
          skipped: { blank: 0, remarks: 0, preamble: 0 },
        },
        ...{ zones: { A: 1990 }, worst: { B: 1990 }, known: { memory: 1990 }, assumed: ["sine"] },
      },
    });
  });
});
