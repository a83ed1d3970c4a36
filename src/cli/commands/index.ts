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
} as const satisfies Record<string, CommandEntry>;
