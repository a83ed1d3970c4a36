import ts from "typescript";
import { root } from "../examples/fences";

/** What the compiler says against one text: its message, and the characters that it stands under. */
export interface Complaint {
  readonly message: string;
  readonly start: number;
  readonly length: number;
}

const FOLDER = `${root}/test/types`;

/** A language service over texts that stand in no file, each a module of its own under the project's options. */
export class Compiler {
  readonly #texts: ReadonlyMap<string, string>;
  readonly #service: ts.LanguageService;

  constructor(texts: readonly string[]) {
    const { config } = ts.readConfigFile(`${root}/tsconfig.json`, ts.sys.readFile);
    const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
    this.#texts = new Map(texts.map((text, i) => [Compiler.#pathOf(i), text]));
    const textOf = (path: string) => this.#texts.get(path) ?? ts.sys.readFile(path);
    this.#service = ts.createLanguageService({
      getCompilationSettings: () => ({ ...options, types: [], noUnusedLocals: false, noUnusedParameters: false }),
      getScriptFileNames: () => [...this.#texts.keys()],
      getScriptVersion: () => "1",
      getScriptSnapshot: (path) => {
        const text = textOf(path);
        return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
      },
      getCurrentDirectory: () => root,
      getDefaultLibFileName: ts.getDefaultLibFilePath,
      fileExists: (path) => this.#texts.has(path) || ts.sys.fileExists(path),
      readFile: textOf,
      directoryExists: ts.sys.directoryExists,
      getDirectories: ts.sys.getDirectories,
    });
  }

  static #pathOf(i: number): string {
    return `${FOLDER}/__text_${i}.ts`;
  }

  /** All that the compiler says against the text of that number. */
  complaints(i: number): Complaint[] {
    const path = Compiler.#pathOf(i);
    const all = [...this.#service.getSyntacticDiagnostics(path), ...this.#service.getSemanticDiagnostics(path)];
    return all.map(({ code, messageText, start = 0, length = 0 }) => ({
      message: `TS${code}: ${ts.flattenDiagnosticMessageText(messageText, "\n")}`,
      start,
      length,
    }));
  }

  /** What an editor offers at a place of the text of that number. */
  completions(i: number, place: number): string[] {
    const offered = this.#service.getCompletionsAtPosition(Compiler.#pathOf(i), place, undefined);
    return (offered?.entries ?? []).map(({ name }) => name);
  }
}
