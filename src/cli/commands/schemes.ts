import { VeladisError } from "../../core/index";
import { builtInSchemes, countLimits, schemeById, schemesFor, selectSchemes } from "../../severity/index";
import type { Io } from "../input/io";
import type { Given } from "../options/option-row";
import { alone } from "../options/parsed-arguments";
import { exitCodes } from "../print/exit-codes";
import { type JudgedSelection, schemeList, selectionText } from "../print/scheme-list";
import { schemePage } from "../print/scheme-page";
import type { schemesPage } from "./schemes-page";

/** The schemes for a machine, and which of them `judge` uses, or why it refuses to judge. */
function judgedSelection(machine: string): JudgedSelection {
  const { candidates, ...others } = selectSchemes(machine);
  const marked = (used: readonly string[]) => candidates.map((one) => ({ ...one, judges: used.includes(one.scheme) }));
  try {
    const used = schemesFor(machine, { place: "either" }).map(({ scheme }) => scheme.id);
    return { ...others, candidates: marked(used) };
  } catch (error) {
    if (error instanceof VeladisError) return { ...others, candidates: marked([]), refusal: error.message };
    throw error;
  }
}

/** Lists the schemes, prints some in full, or lists those for a machine. */
export async function printSchemes({ values, texts }: Given<typeof schemesPage.options>, io: Io): Promise<number> {
  const line = (value: unknown): string => `${JSON.stringify(value)}\n`;
  if (values.machine !== undefined) {
    alone("machine", texts);
    const selection = judgedSelection(values.machine);
    const rows = [...selection.candidates, ...(values.all ? selection.excluded : [])];
    await io.out(values.json ? rows.map(line).join("") : selectionText(selection, values.all));
  } else if (texts.length > 0) {
    const schemes = texts.map(schemeById);
    await io.out(values.json ? schemes.map(line).join("") : schemes.map(schemePage).join("\n"));
  } else if (values.json) {
    const rows = countLimits().schemes.map(({ scheme, ...counts }) => {
      const { id, kind, standard, edition, title, status, replacedBy, place, scope } = scheme;
      return { id, kind, standard, edition, title, status, replacedBy, place, scope, ...counts };
    });
    await io.out(rows.map(line).join(""));
  } else {
    await io.out(schemeList(builtInSchemes));
  }
  return exitCodes.done;
}
