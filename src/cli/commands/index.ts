import type { Io } from "../input/io";
import type { CommandPage } from "../options/command-page";
import type { ParsedOptions } from "../options/option-row";
import { parsedArguments } from "../options/parsed-arguments";
import { convertReadings } from "./convert";
import { type CommandName, pages } from "./pages";

type OptionsOf<Name extends CommandName> = Awaited<ReturnType<(typeof pages)[Name]>>["options"];

/** What runs a command with what stands behind its name; resolves to the exit code. */
type Run<Name extends CommandName> = (given: ParsedOptions<OptionsOf<Name>>, io: Io) => Promise<number>;

/** What runs each command, loaded when it is asked for. To add one, add its file and its row here. */
const runs: { readonly [Name in CommandName]: () => Promise<Run<Name>> } = {
  convert: async () => convertReadings,
  judge: async () => (await import("./judge")).judgeReadings,
  overall: async () => (await import("./overall")).printOverall,
  schemes: async () => (await import("./schemes")).printSchemes,
  table: async () => (await import("./table")).addColumns,
  sql: async () => (await import("./sql")).printSql,
  setpoints: async () => (await import("./setpoints")).printSetpoints,
  simulate: async () => (await import("./simulate")).simulateHistory,
  shock: async () => (await import("./shock")).printShock,
  "mechanical-switch": async () => (await import("./mechanical-switch")).printMechanicalSwitch,
  gap: async () => (await import("./gap")).printGap,
  check: async () => (await import("./check")).checkReading,
  plan: async () => (await import("./plan")).printPlan,
  balance: async () => (await import("./balance")).printBalance,
  resolution: async () => (await import("./resolution")).printResolution,
  sum: async () => (await import("./sum")).printSum,
  "plant report": async () => (await import("./plant-report")).printReport,
  "plant judge": async () => (await import("./plant-judge")).printRoute,
  "plant setpoints": async () => (await import("./plant-setpoints")).printSchedule,
  "plant audit": async () => (await import("./plant-audit")).auditList,
  "plant template": async () => (await import("./plant-template")).printTemplate,
  "plant checks": async () => (await import("./plant-checks")).printChecks,
  "plant change": async () => (await import("./plant-change")).addChange,
  completion: async () => (await import("./completion")).printCompletion,
};

/** Runs a command with the arguments behind its name; resolves to the exit code. */
export async function runCommand<Name extends CommandName>(
  name: Name,
  args: readonly string[],
  io: Io,
): Promise<number> {
  const page = (await pages[name]()) as CommandPage<OptionsOf<Name>>;
  const given = parsedArguments(args, page);
  return (await runs[name]())(given, io);
}
