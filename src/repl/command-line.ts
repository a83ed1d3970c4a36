import { shown, VeladisError } from "../core/index";
import { functions } from "./functions";

/** A word with what it is to be applied to behind it, as a command has it, and no bracket between them. */
const BARE_CALL = /^\s*(veladis\b)?\s*([A-Za-z]*)\s+["\d.+-]/;

/**
 * Refuses a line that is written as for the shell, with how it is written here.
 *
 * @throws {@link VeladisError} `syntax`
 */
export function refuseCommandLine(line: string, variables: ReadonlySet<string>): void {
  const [, shell, word = ""] = BARE_CALL.exec(line) ?? [];
  const known = Object.hasOwn(functions, word) && !variables.has(word);
  if (!known && shell === undefined) return;
  const { usage } = functions[(known ? word : "judge") as keyof typeof functions];
  throw new VeladisError("syntax", {
    expected: `${shell === undefined ? "" : "a line without veladis, which is for the shell; here "}a call such as ${usage}`,
    received: shown(line.trim()),
  });
}
