import { createInterface, type Interface } from "node:readline";
import { version } from "../../../package.json";
import { bounds, completions, isExit, isUnfinished, newSession, respond, type Session } from "../../repl/index";
import type { Scheme } from "../../severity/index";
import type { Io } from "../input/io";
import { exitCodes } from "../print/exit-codes";
import { failureText } from "../print/failure";
import { REMEMBERED } from "./history-file";
import { joinPieces } from "./joined-lines";
import { lineHistory } from "./line-history";

/** The text that answers a line, refusals too. */
async function answerText(line: string, session: Session): Promise<string> {
  try {
    const response = await respond(line, session);
    return response === "exit" || response.text === "" ? "" : `${response.text}\n`;
  } catch (error) {
    return failureText(error, false);
  }
}

/** Drops what is typed in the line, wherever the cursor stands in it. */
function dropLine(terminal: Interface): void {
  terminal.write(null, { ctrl: true, name: "e" });
  terminal.write(null, { ctrl: true, name: "u" });
  // a terminal without control sequences heeds no keys
  Object.assign(terminal, { line: "", cursor: 0 });
}

/** Opens the calculator on the person's terminal; resolves when it is closed. */
export async function openCalculator(io: Io, schemes?: readonly Scheme[]): Promise<number> {
  await io.out(`veladis ${version}: a line of readings and arithmetic; help tells more, exit ends\n`);
  const session = newSession(schemes);
  const history = lineHistory(io);
  let unfinished = "";
  let warned = false;
  let closed = false;
  const terminal = createInterface({
    input: process.stdin,
    output: process.stdout,
    completer: (line: string) => completions(`${unfinished}${line}`, session),
    history: history.lines,
    historySize: REMEMBERED,
    removeHistoryDuplicates: true,
  });

  const ask = (): void => {
    if (closed) return;
    terminal.setPrompt(unfinished === "" ? "> " : "... ");
    terminal.prompt();
  };
  // the terminal's own list, which it hands out with each line
  let typed: string[] = [];
  terminal.on("history", (lines) => {
    typed = lines;
  });
  terminal.on("close", () => {
    closed = true;
  });
  terminal.on("SIGINT", () => {
    const idle = terminal.line === "" && unfinished === "";
    if (idle && warned) return terminal.close();
    dropLine(terminal);
    process.stdout.write(idle ? "\nCtrl-C once more ends the calculator, as exit does\n" : "(dropped)\n");
    unfinished = "";
    warned = idle;
    ask();
  });

  ask();
  for await (const text of terminal) {
    warned = false;
    if (isExit(text)) break;
    const line = `${unfinished}${text}`;
    if (unfinished !== "") joinPieces(typed, unfinished.slice(0, -1), text, line);
    if (isUnfinished(line) && line.length < bounds.length) {
      unfinished = `${line} `;
    } else {
      unfinished = "";
      history.add(line);
      // what is typed meanwhile waits, and does not stand between line and answer
      if (!closed) terminal.pause();
      await io.out(await answerText(line, session));
    }
    ask();
  }
  // closed by keys; the shell's prompt begins a line
  if (closed) process.stdout.write("\n");
  if (unfinished !== "") process.stdout.write("the unfinished line is dropped\n");
  terminal.close();
  return exitCodes.done;
}
