import type { Scheme } from "../../severity/index";

/**
 * The built-in schemes with what the files of `--confirmed` confirm; undefined without a file.
 *
 * @throws {@link VeladisError} for a file or a row that is refused: nothing of any file is taken then
 */
export async function confirmedOption(files: readonly string[]): Promise<readonly Scheme[] | undefined> {
  if (files.length === 0) return undefined;
  const { confirmationsOfFile } = await import("../input/confirmations-file");
  const { confirmedSchemes } = await import("../../severity/index");
  const all = [];
  for (const file of files) all.push(...(await confirmationsOfFile(file)));
  return confirmedSchemes(all);
}
