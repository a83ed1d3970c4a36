import type { Command } from "../command";

/** A command's line in the overview, and how to load it. */
export interface CommandEntry {
  readonly summary: string;
  load(): Promise<Command>;
}

/** All commands by name. To add one, add its file and its row here. */
export const commands = {
  convert: {
    summary: "a reading in other units, detectors and quantities (the word convert may be left out)",
    load: async () => (await import("./convert")).convertCommand,
  },
  judge: {
    summary: "the zone a reading is in, by the published table that is for the machine",
    load: async () => (await import("./judge")).judgeCommand,
  },
  overall: {
    summary: "the overall level of a file of samples, in any unit, with its highest lines and its zone",
    load: async () => (await import("./overall")).overallCommand,
  },
  schemes: {
    summary: "the tables of limits, with how far each is known, and which are for a machine",
    load: async () => (await import("./schemes")).schemesCommand,
  },
} as const satisfies Record<string, CommandEntry>;
