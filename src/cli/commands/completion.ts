import { requireChoice } from "../../core/index";
import type { Io } from "../input/io";
import { completionScripts } from "../options/completion-scripts";
import { completions } from "../options/completions";
import type { ParsedOptions } from "../options/option-row";
import { exitCodes } from "../print/exit-codes";
import type { completionPage } from "./completion-page";
import { pages } from "./pages";

/** Prints what has a shell complete the words of the command, or what can follow some words. */
export async function printCompletion(
  { values, texts }: ParsedOptions<typeof completionPage.options>,
  io: Io,
): Promise<number> {
  if (values.words) {
    await io.out((await completions(texts, pages)).map((word) => `${word}\n`).join(""));
    return exitCodes.done;
  }
  const shells = Object.keys(completionScripts) as (keyof typeof completionScripts)[];
  await io.out(completionScripts[requireChoice(texts[0], shells, "a shell, as in veladis completion bash")]);
  return exitCodes.done;
}
