import { builtInSchemes, countLimits, schemeById, selectSchemes } from "../../severity/index";
import type { Io } from "../input/io";
import { alone, parsedArguments } from "../options/arguments";
import { exitCodes } from "../print/exit-codes";
import { schemeList, selectionText } from "../print/scheme-list";
import { schemePage } from "../print/scheme-page";
import type { Command } from "./command";

const help = `veladis schemes [<table> ...] [--machine "<machine>"]

The tables of limits: all of them, one in full, or those for a machine, best first.

  veladis schemes
  veladis schemes iso-10816-7-2009
  veladis schemes --machine "fan 90 kW 1480 r/min rigid, in service"
  veladis schemes --machine "motor 315 mm 2980 r/min natural 65 Hz" --json

kinds      zones: in service, A to D; acceptance: pass or fail of a new machine;
           operation: a fan's start-up, alarm and shutdown; grades: steps without a verdict, and rules of thumb
limits     read: read in print, the page is named; MEMORY: not checked, see the standard

options
  --machine <words>  as for veladis judge
  --all              also tables that are for other machines, with the reason
  --json             one JSON object a line
`;

const options = {
  machine: { type: "string" },
  all: { type: "boolean", default: false },
  json: { type: "boolean", default: false },
} as const;

async function run(args: readonly string[], io: Io): Promise<number> {
  const { values, positionals } = parsedArguments(args, options);
  const line = (value: unknown): string => `${JSON.stringify(value)}\n`;
  if (values.machine !== undefined) {
    alone("machine", positionals);
    const selection = selectSchemes(values.machine);
    const rows = [...selection.candidates, ...(values.all ? selection.excluded : [])];
    await io.out(values.json ? rows.map(line).join("") : selectionText(selection, values.all));
  } else if (positionals.length > 0) {
    const schemes = positionals.map(schemeById);
    await io.out(values.json ? schemes.map(line).join("") : schemes.map(schemePage).join("\n"));
  } else if (values.json) {
    const rows = countLimits().schemes.map(({ scheme, published, memory }) => {
      const { id, kind, standard, edition, title, status, replacedBy, place, scope } = scheme;
      return { id, kind, standard, edition, title, status, replacedBy, place, scope, published, memory };
    });
    await io.out(rows.map(line).join(""));
  } else {
    await io.out(schemeList(builtInSchemes));
  }
  return exitCodes.done;
}

/** Lists the tables of limits, or those for a machine. */
export const schemesCommand: Command = { help, run };
