import ts from "typescript";
import { root } from "../examples/fences";

const printer = ts.createPrinter({ removeComments: true });

/** A declaration as it is written. */
function written(node: ts.Node): string {
  return printer.printNode(ts.EmitHint.Unspecified, node, node.getSourceFile()).replace(/^export (declare )?/, "");
}

/** A text whose long lines are broken behind commas, semicolons and strokes. */
function wrapped(text: string): string {
  return text
    .split("\n")
    .map((line) => (line.length <= 120 ? line : line.replace(/(.{60,100}?(?:, |; | \| ))/g, "$1\n        ")))
    .map((line) => line.replace(/ +$/gm, ""))
    .join("\n");
}

/** Prints what entries export. */
class Declarations {
  readonly #checker: ts.TypeChecker;

  constructor(checker: ts.TypeChecker) {
    this.#checker = checker;
  }

  #text(type: ts.Type, at: ts.Node): string {
    // a type that is told by its file moves with the file
    return this.#checker.typeToString(type, at, ts.TypeFormatFlags.NoTruncation).replace(/import\("[^"]*"\)\./g, "");
  }

  #signatures(name: string, list: readonly ts.Signature[], at: ts.Node): string[] {
    return list.map((one) => name + this.#checker.signatureToString(one, at, ts.TypeFormatFlags.NoTruncation));
  }

  /** A table by its keys alone: its rows are held by other tests. */
  #constant(symbol: ts.Symbol, node: ts.Declaration): string {
    const { type: declared } = node as ts.VariableDeclaration;
    if (declared !== undefined) return declared.getText();
    const type = this.#checker.getTypeOfSymbol(symbol);
    const keys = type.getProperties().map(({ name }) => name);
    const named = type.aliasSymbol !== undefined || (type.symbol?.flags ?? 0) & ts.SymbolFlags.Interface;
    return named || this.#checker.isArrayLikeType(type) ? this.#text(type, node) : `{ ${keys.join("; ")} }`;
  }

  #member(member: ts.Symbol, node: ts.Declaration): string[] {
    const type = this.#checker.getTypeOfSymbol(member);
    if (ts.isMethodDeclaration(node)) return this.#signatures(member.name, type.getCallSignatures(), node);
    const fixed =
      (ts.getCombinedModifierFlags(node) & ts.ModifierFlags.Readonly) !== 0 ||
      (member.flags & ts.SymbolFlags.Accessor && !(member.flags & ts.SymbolFlags.SetAccessor));
    const { type: declared, questionToken } = node as ts.PropertyDeclaration;
    return [
      `${fixed ? "readonly " : ""}${member.name}${questionToken ? "?" : ""}: ${declared?.getText() ?? this.#text(type, node)}`,
    ];
  }

  /** A class by its constructor and its public members. */
  #class(node: ts.ClassDeclaration, symbol: ts.Symbol): string {
    const heritage = (node.heritageClauses ?? []).map((clause) => ` ${clause.getText()}`).join("");
    const made = this.#checker.getTypeOfSymbol(symbol).getConstructSignatures();
    const members = this.#checker
      .getPropertiesOfType(this.#checker.getDeclaredTypeOfSymbol(symbol))
      .flatMap((member) => {
        const { valueDeclaration: at } = member;
        return at?.parent === node && !member.name.startsWith("#") ? this.#member(member, at) : [];
      });
    const lines = [...this.#signatures("new", made, node), ...members].map((line) => `    ${line};`);
    return [`class ${symbol.name}${heritage} {`, ...lines, "}"].join("\n");
  }

  textOf(symbol: ts.Symbol): string {
    const texts = (symbol.declarations ?? []).map((node, i) => {
      if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return written(node);
      if (ts.isClassDeclaration(node)) return this.#class(node, symbol);
      if (!ts.isFunctionDeclaration(node)) return `const ${symbol.name}: ${this.#constant(symbol, node)}`;
      const calls = this.#checker.getTypeOfSymbol(symbol).getCallSignatures();
      return i > 0 ? "" : this.#signatures(`function ${symbol.name}`, calls, node).join("\n");
    });
    return wrapped(texts.filter((text) => text !== "").join("\n"));
  }
}

/**
 * The declaration of everything that each entry exports, by path: types, functions and tables, in the order of their
 * names. What an entry before it in the list exports too is named and no more.
 */
export function declarationsOf(entries: readonly string[]): Map<string, string> {
  const { config } = ts.readConfigFile(`${root}/tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const files = entries.map((path) => `${root}/${path}`);
  const program = ts.createProgram(files, options);
  const checker = program.getTypeChecker();
  const printed = new Declarations(checker);
  const told = new Map<ts.Symbol, string>();
  return new Map(
    entries.map((path, i) => {
      const module = checker.getSymbolAtLocation(program.getSourceFile(files[i] as string) as ts.SourceFile);
      const texts = checker
        .getExportsOfModule(module as ts.Symbol)
        .sort((a, b) => (a.name < b.name ? -1 : 1))
        .map((exported) => {
          const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
          const before = told.get(symbol);
          if (before !== undefined) return `${exported.name}: as in ${before}`;
          told.set(symbol, path);
          return printed.textOf(symbol);
        });
      return [path, `${texts.join("\n\n")}\n`] as const;
    }),
  );
}
