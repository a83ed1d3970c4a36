import { homedir } from "node:os";
import { join } from "node:path";
import { visibleText } from "../../core/index";
import type { Io } from "../input/io";
import { remember, remembered } from "./history-file";

/** The lines of earlier times, and where new ones go. */
export interface LineHistory {
  /** Latest first. */
  readonly lines: string[];
  /** Keeps a line for the next time. */
  add(line: string): void;
}

/** What a person can take from the environment: the history file, none if it is empty. */
function historyFile(): string {
  return process.env.VELADIS_HISTORY ?? join(homedir(), ".veladis_history");
}

/** The history of the person's calculator. Where its file cannot be used that is said once, and the calculator serves. */
export function lineHistory(io: Io): LineHistory {
  const file = historyFile();
  let kept = file !== "";
  const unlessLost = <T>(work: () => T, otherwise: T): T => {
    if (!kept) return otherwise;
    try {
      return work();
    } catch (error) {
      kept = false;
      const { code } = error as NodeJS.ErrnoException;
      io.err(`veladis: lines are not kept for the next time, ${code} at ${visibleText(file)}\n`);
      return otherwise;
    }
  };
  const lines = unlessLost(() => remembered(file), []);
  let [latest] = lines;
  return {
    lines,
    add(line) {
      if (line.trim() === "" || line === latest) return;
      unlessLost(() => remember(file, line), undefined);
      latest = line;
    },
  };
}
