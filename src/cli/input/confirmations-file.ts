import { basename } from "node:path";
import { text } from "node:stream/consumers";
import { VeladisError } from "../../core/index";
import type { Confirmation } from "../../severity/index";
import { accountOf, readDelimited } from "../delimited/read-delimited";
import type { ConfirmationColumn } from "./confirmation-columns";
import { confirmationHeader, confirmationOfRow } from "./confirmation-row";
import { confirmationsOfJson } from "./confirmations-json";
import { openFile } from "./open-file";

/** The confirmations of delimited text, each with its line; rows in which nothing is filled in are passed over. */
async function ofDelimited(path: string, name: string): Promise<Confirmation[]> {
  const found: Confirmation[] = [];
  let columns: readonly ConfirmationColumn[] = [];
  const stream = await openFile(path);
  const reading = readDelimited(
    stream,
    name,
    { decimalComma: false },
    {
      header(cells) {
        columns = confirmationHeader(cells, `the header of ${name}`);
      },
      row(cells, _, line) {
        const one = confirmationOfRow(columns, cells, `line ${line} of ${name}`);
        if (one !== undefined) found.push(one);
      },
      refused({ code, expected, received }, _, line) {
        throw new VeladisError(code, { expected: `line ${line} of ${name}: ${expected}`, received });
      },
    },
  );
  const { torn } = await accountOf(reading);
  if (!torn) return found;
  throw new VeladisError("syntax", {
    expected: `a line end behind the last row of ${name}`,
    received: "none: the file may be torn off there",
  });
}

/**
 * The confirmations that a file holds, CSV or JSON, each with the line on which it stands.
 *
 * @throws {@link VeladisError} `missing-fact` for what cannot be read and for a file in which nothing is filled in, and
 *   whatever is wrong with a row, with its line
 */
export async function confirmationsOfFile(path: string): Promise<Confirmation[]> {
  const name = basename(path);
  const isJson = path.toLowerCase().endsWith(".json");
  const found = isJson ? confirmationsOfJson(await text(await openFile(path)), name) : await ofDelimited(path, name);
  if (found.length > 0) return found;
  throw new VeladisError("missing-fact", {
    expected: `a confirmation in ${name}`,
    received: "no row that is filled in",
  });
}
