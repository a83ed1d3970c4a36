import { cellText, shown, VeladisError } from "../../core/index";
import { type LimitRow, limitColumns, type MachinesSql } from "../../sql/index";
import { quotedCell } from "../delimited/cells";

const columns = /* @__PURE__ */ (() =>
  Object.entries(limitColumns) as [keyof LimitRow, (typeof limitColumns)[keyof LimitRow]][])();

/** Rows as CSV. A name that a spreadsheet would take for a formula could not stand there as the readings have it. */
function csvOf(rows: readonly LimitRow[]): string {
  const odd = rows.find(({ machine }) => cellText(machine) !== machine);
  if (odd !== undefined) {
    throw new VeladisError("syntax", {
      expected: "names of machines that no spreadsheet takes for a formula, or --out in .parquet or .sql",
      received: shown(odd.machine),
      option: "out",
    });
  }
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
  csv: async ({ rows }: MachinesSql) => Buffer.from(csvOf(rows)),
  parquet: async ({ rows }: MachinesSql) => parquetOf(rows),
  sql: async ({ limits }: MachinesSql) => Buffer.from(`${limits}\n`),
} as const;

/**
 * The table of limits as the bytes of a file, in the form that its name says.
 *
 * @throws {@link VeladisError} `unknown-option` for a name that says none, `unwritable` without a package to write Parquet
 */
export async function limitFile(path: string, answer: MachinesSql): Promise<Uint8Array> {
  const form = /\.(\w+)$/.exec(path)?.[1]?.toLowerCase() ?? "";
  if (Object.hasOwn(forms, form)) return forms[form as keyof typeof forms](answer);
  throw new VeladisError("unknown-option", {
    expected: "a file that ends in .csv, .parquet or .sql",
    received: path,
    allowed: Object.keys(forms),
    option: "out",
  });
}
