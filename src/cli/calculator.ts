import { homedir } from "node:os";
import { join } from "node:path";
import { type REPLServer, Recoverable, start } from "node:repl";
import { version } from "../../package.json";
import { bounds, completions, isUnfinished, newSession, respond, type Session } from "../repl/index";
import type { Io } from "./input/io";
import { linesOf } from "./input/lines";
import { exitCodes } from "./print/exit-codes";
import { failureText } from "./print/failure";

/** What a person can take from the environment: the history file, none if it is empty. */
function historyFile(): string {
  return process.env.VELADIS_HISTORY ?? join(homedir(), ".veladis_history");
}

/** Answers the lines of standard input, one by one; refused ones go to standard error with their number. */
export async function calculateLines(io: Io): Promise<number> {
  const session = newSession();
  let refused = 0;
  let unfinished = "";
  for await (const { number, text } of io.piped === undefined ? [] : linesOf(io.piped)) {
    const line = `${unfinished}${text}`;
    if (isUnfinished(line) && line.length < bounds.length) {
      unfinished = `${line} `;
      continue;
    }
    unfinished = "";
    try {
      const response = await respond(line, session);
      if (response === "exit") break;
      if (response.text !== "") await io.out(`${response.text}\n`);
    } catch (error) {
      refused++;
      io.err(failureText(error, false, { line: number }));
    }
  }
  if (unfinished !== "") {
    refused++;
    io.err("veladis: the last line breaks off\n");
  }
  return refused > 0 ? exitCodes.refused : exitCodes.done;
}

/** A server on the person's terminal, answering in turn. */
function server(session: Session): REPLServer {
  let turn: Promise<void> = Promise.resolve();
  const repl = start({
    prompt: "> ",
    ignoreUndefined: true,
    preview: false,
    useGlobal: false,
    completer: (line: string) => completions(line, session),
    writer: String,
    eval: (input, _context, _file, done) => {
      // lines that go on are joined by \n, from Node 24 on by \r
      const line = input.replace(/\s*[\r\n]\s*/g, " ").trim();
      if (isUnfinished(line) && line.length < bounds.length)
        return done(new Recoverable(new SyntaxError("unfinished")), undefined);
      turn = turn.then(async () => {
        try {
          const response = await respond(line, session);
          if (response === "exit") repl.close();
          else done(null, response.text === "" ? undefined : response.text);
        } catch (error) {
          done(null, failureText(error, false).trimEnd());
        }
      });
    },
  });
  // What node offers beside is for programs, not for readings.
  for (const name of ["editor", "load", "save", "clear"]) delete (repl.commands as Record<string, unknown>)[name];
  repl.defineCommand("help", {
    help: "what the calculator knows",
    action(topic) {
      this.clearBufferedCommand();
      respond(`help ${topic}`, session)
        .then((response) => response === "exit" || this.output.write(`${response.text}\n`))
        .catch((error: unknown) => this.output.write(failureText(error, false)))
        .finally(() => this.displayPrompt());
    },
  });
  return repl;
}

/** Opens the calculator on the person's terminal; resolves when it is closed. */
export async function openCalculator(io: Io): Promise<number> {
  await io.out(`veladis ${version}: a line of readings and arithmetic; help tells more, exit ends\n`);
  const repl = server(newSession());
  const file = historyFile();
  if (file !== "") repl.setupHistory(file, () => undefined);
  return new Promise((resolve) => repl.on("exit", () => resolve(exitCodes.done)));
}
