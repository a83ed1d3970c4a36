import { shown, VeladisError } from "../../core/index";
import type { Plant } from "../../plant/index";
import type { Scheme } from "../../severity/index";
import { accountText } from "../delimited/account-text";
import { writtenAs } from "../delimited/written-as";
import type { Io } from "../input/io";
import { plantOfFile } from "../input/plant-file";
import { confirmedOption, schemesBeside } from "../options/confirmed-option";
import type { ParsedOptions } from "../options/option-row";
import type { plantFileOptions, plantTables } from "../options/plant-options";
import { ownColumnsText, refusedRowsText } from "../print/plant-file-text";

/** A list with the tables that its rows may name, and the name of its file. */
export interface ListedPlant {
  readonly plant: Plant;
  readonly schemes: readonly Scheme[] | undefined;
  readonly file: string;
}

/** What every command on a list is given. */
type GivenList = ParsedOptions<
  typeof plantFileOptions & typeof plantTables & { readonly json: { readonly help: string } }
>;

/**
 * The list that a command is given. Rows that were refused, columns of one's own and what became of the rows are told on
 * standard error.
 *
 * @param file - the file of the list; the first text behind the command
 * @throws {@link VeladisError} without one, and for a file or headings that cannot be read
 */
export async function listedPlant(
  { values }: Pick<GivenList, "values">,
  file: string | undefined,
  io: Io,
): Promise<ListedPlant> {
  if (file === undefined) {
    throw new VeladisError("missing-option", {
      expected: "the file with the list, such as plant.csv; veladis plant template prints one to start from",
      received: "nothing",
    });
  }
  const { own, dates, worksheet, scheme, confirmed, json } = values;
  const schemes =
    (await confirmedOption(confirmed, io, json, scheme)) ??
    (scheme.length > 0 ? await schemesBeside(scheme) : undefined);
  const options = { own, ...(dates !== undefined && { dates }), ...(schemes !== undefined && { schemes }) };
  const { plant, account, hints } = await plantOfFile(io, { file, as: writtenAs(values), worksheet }, options);
  io.err(refusedRowsText(plant.refused, hints, file, json));
  if (!json) io.err(ownColumnsText(plant.ownColumns));
  const refused = new Set(plant.refused.map(({ line }) => line)).size;
  if (account !== undefined) io.err(accountText(account, { answered: plant.machines.length, refused }, json));
  if (plant.machines.length === 0 && plant.refused.length === 0) {
    throw new VeladisError("missing-fact", {
      expected: "a list with a row for each machine: nothing can be said of none",
      received: `${shown(file)}, headings alone`,
    });
  }
  return { plant, schemes, file };
}
