import type { Command } from "./command";
import { convertCommand } from "./convert";

/** A command's line in the overview, and how to load it. */
export interface CommandEntry {
  readonly summary: string;
  load(): Promise<Command>;
}

/** All commands by name. To add one, add its file and its row here. */
export const commands = {
  convert: {
    summary: "a reading in other units, detectors and quantities (the word convert may be left out)",
    // the command that one line needs, so it is there from the start
    load: async () => convertCommand,
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
  table: {
    summary: "a CSV or Parquet file of any size with converted columns and zones added to each row",
    load: async () => (await import("./table")).tableCommand,
  },
  setpoints: {
    summary: "alarm, trip, delay and hysteresis for a machine, from its baseline, with reasons",
    load: async () => (await import("./setpoints")).setpointsCommand,
  },
  simulate: {
    summary: "what a vibration switch with given settings does on a recorded history",
    load: async () => (await import("./simulate")).simulateCommand,
  },
  check: {
    summary: "a reading held against a known vibration, as found and as left",
    load: async () => (await import("./check")).checkCommand,
  },
  plan: {
    summary: "the steps that prove a setting on a reference shaker, and whether it can do them",
    load: async () => (await import("./plan")).planCommand,
  },
  balance: {
    summary: "residual unbalance that a balance grade permits a rotor, and the grade of an unbalance",
    load: async () => (await import("./balance")).balanceCommand,
  },
} as const satisfies Record<string, CommandEntry>;
