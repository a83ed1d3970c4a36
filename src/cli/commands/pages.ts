import type { CommandPage } from "../options/command-page";
import { convertPage } from "./convert-page";

/**
 * The pages of all commands by name, each loaded when it is asked for. To add a command, add its page here; of
 * one of two words, the first stands in `command-groups.ts`.
 */
export const pages = {
  // the command that one line needs, so it is there from the start
  convert: async () => convertPage,
  judge: async () => (await import("./judge-page")).judgePage,
  overall: async () => (await import("./overall-page")).overallPage,
  schemes: async () => (await import("./schemes-page")).schemesPage,
  table: async () => (await import("./table-page")).tablePage,
  sql: async () => (await import("./sql-page")).sqlPage,
  setpoints: async () => (await import("./setpoints-page")).setpointsPage,
  simulate: async () => (await import("./simulate-page")).simulatePage,
  shock: async () => (await import("./shock-page")).shockPage,
  "mechanical-switch": async () => (await import("./mechanical-switch-page")).mechanicalSwitchPage,
  gap: async () => (await import("./gap-page")).gapPage,
  check: async () => (await import("./check-page")).checkPage,
  plan: async () => (await import("./plan-page")).planPage,
  balance: async () => (await import("./balance-page")).balancePage,
  resolution: async () => (await import("./resolution-page")).resolutionPage,
  sum: async () => (await import("./sum-page")).sumPage,
  "plant report": async () => (await import("./plant-report-page")).plantReportPage,
  "plant judge": async () => (await import("./plant-judge-page")).plantJudgePage,
  "plant setpoints": async () => (await import("./plant-setpoints-page")).plantSetpointsPage,
  "plant audit": async () => (await import("./plant-audit-page")).plantAuditPage,
  "plant template": async () => (await import("./plant-template-page")).plantTemplatePage,
  "plant checks": async () => (await import("./plant-checks-page")).plantChecksPage,
  "plant change": async () => (await import("./plant-change-page")).plantChangePage,
  completion: async () => (await import("./completion-page")).completionPage,
} as const satisfies Record<string, () => Promise<CommandPage>>;

/** The name of a command: a key of {@link pages}. */
export type CommandName = keyof typeof pages;
