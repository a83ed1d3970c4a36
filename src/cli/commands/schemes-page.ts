import type { CommandPage } from "../options/command-page";
import { confirmed, json, machine } from "../options/shared-options";

/** The page of `schemes`. */
export const schemesPage = {
  summary: "the schemes (published tables of limits), with how far each is known, and which are for a machine",
  usage: 'veladis schemes [<scheme> ...] [--machine "<machine>"] [--sheet html|csv]',
  does: "A scheme is a published table of limits. All schemes, one in full, or those for a machine, best first. One of your own is named by its .json file.",
  examples: [
    "veladis schemes",
    "veladis schemes iso-10816-7-2009",
    'veladis schemes --machine "fan 90 kW 1480 r/min rigid, in service"',
    "veladis schemes --template",
    "veladis schemes iso-10816-7-2009 --sheet html",
    "veladis schemes iso-10816-7-2009 --sheet csv",
    "veladis schemes site-rule.json --sheet csv",
    'veladis schemes --machine "motor 315 mm 2980 r/min natural 65 Hz" --json',
  ],
  words: [
    [
      "kinds",
      "zones: in service, A to D; acceptance: pass or fail of a new machine; operation: a fan's start-up, alarm and shutdown; grades: steps without a verdict, and rules of thumb",
    ],
    [
      "limits",
      "how each is known, worst first: MEMORY, practice, reported, quoted, printed (read in the publication itself), confirmed (against a printed copy, by whom); all but the last two are to be checked against the standard",
    ],
  ],
  texts: { list: "schemes" },
  options: {
    machine: { ...machine, help: "the machine in words, as for veladis judge" },
    all: { help: "also schemes that are for other machines, with the reason" },
    confirmed,
    sheet: {
      argument: "<format>",
      help: "a sheet to check a table against your own printed copy: html for paper, csv the file that --confirmed takes",
      example: "html",
      values: ["html", "csv"],
    },
    template: { help: "a file with a scheme of one's own, to be filled in" },
    json,
  },
} as const satisfies CommandPage;
