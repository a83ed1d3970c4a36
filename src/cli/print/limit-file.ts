import { cellText, shown, VeladisError } from "../../core/index";
import { type LimitRow, limitColumns, type MachinesSql } from "../../sql/index";
import { quotedCell } from "../delimited/cells";

const columns = /* @__PURE__ */ (() =>
  Object.entries(limitColumns) as [keyof LimitRow, (typeof limitColumns)[keyof LimitRow]][])();

/** True for a name that could not stand in CSV as the readings have it: a spreadsheet would take it for a formula. */
function isFormula(name: string): boolean {
  return cellText(name) !== name;
}

/** Rows as CSV. */
function csvOf(rows: readonly LimitRow[]): string {
  const cell = (value: string | number | null): string =>
    value === null ? "" : typeof value === "number" ? String(value) : quotedCell(cellText(value), ",");
  const lines = rows.map((row) => columns.map(([key]) => cell(row[key])).join(","));
  return `${[columns.map(([, [name]]) => name).join(","), ...lines].join("\n")}\n`;
}

const parquetTypes = { text: "STRING", real: "DOUBLE", whole: "INT32" } as const;

async function parquetOf(rows: readonly LimitRow[]): Promise<Uint8Array> {
  const writer = await import("hyparquet-writer").catch(() => {
    throw new VeladisError("unwritable", {
      expected: "the package hyparquet-writer beside veladis, to write Parquet: npm install hyparquet-writer",
      received: "nothing",
    });
  });
  const columnData = columns.map(([key, [name, kind]]) => ({
    name,
    data: rows.map((row) => row[key]),
    type: parquetTypes[kind],
    nullable: true,
  }));
  return new Uint8Array(writer.parquetWriteBuffer({ columnData }));
}

const forms = {
  csv: async ({ rows }: MachinesSql) => Buffer.from(csvOf(rows.filter(({ machine }) => !isFormula(machine)))),
  parquet: async ({ rows }: MachinesSql) => parquetOf(rows),
  sql: async ({ limits }: MachinesSql) => Buffer.from(`${limits}\n`),
} as const;

/** A machine without rows in a file of limits, and why. */
interface LeftOut {
  readonly name: string;
  readonly error: VeladisError;
}

/** The machines that a CSV cannot name: an apostrophe before the name would make it another than that of the readings. */
function leftOutOf({ rows }: MachinesSql): readonly LeftOut[] {
  return [...new Set(rows.map(({ machine }) => machine))].filter(isFormula).map((name) => ({
    name,
    error: new VeladisError("syntax", {
      expected:
        "the name of a machine that no spreadsheet takes for a formula; --out in .parquet or .sql holds any name",
      received: `${shown(name)}, which has no row in this CSV and gets no verdict by it`,
      option: "out",
    }),
  }));
}

/**
 * The table of limits as the bytes of a file, in the form that its name says, and the machines that are not in it.
 *
 * @throws {@link VeladisError} `unknown-option` for a name that says none, `unwritable` without a package to write Parquet
 */
export async function limitFile(path: string, answer: MachinesSql) {
  const form = /\.(\w+)$/.exec(path)?.[1]?.toLowerCase() ?? "";
  if (Object.hasOwn(forms, form)) {
    const bytes: Uint8Array = await forms[form as keyof typeof forms](answer);
    return { bytes, leftOut: form === "csv" ? leftOutOf(answer) : [] };
  }
  throw new VeladisError("unknown-option", {
    expected: "a file that ends in .csv, .parquet or .sql",
    received: path,
    allowed: Object.keys(forms),
    option: "out",
  });
}
