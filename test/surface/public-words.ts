import ts from "typescript";
import { root } from "../examples/fences";

/** Where a word stands: a public name itself, a parameter or key of it. */
export interface Used {
  /** The public name in which it stands, such as `convert`. */
  readonly by: string;
  /** The parameter or key; of a public name that name itself. */
  readonly name: string;
  /** The type that is written behind it. */
  readonly type: string;
}

const isNamed = (node: ts.Node): node is ts.ParameterDeclaration | ts.PropertySignature =>
  ts.isParameter(node) ||
  ts.isPropertySignature(node) ||
  ts.isMethodSignature(node) ||
  ts.isPropertyDeclaration(node) ||
  ts.isMethodDeclaration(node) ||
  ts.isNamedTupleMember(node);

/** Every parameter and key in a declaration; what stands in the body of a function is nobody's business. */
function namesIn(node: ts.Node, by: string, found: Used[]): void {
  if (isNamed(node) && ts.isIdentifier(node.name)) {
    found.push({ by, name: node.name.text, type: node.type?.getText().replace(/\s+/g, " ") ?? "" });
  }
  ts.forEachChild(node, (child) => {
    if (!ts.isBlock(child)) namesIn(child, by, found);
  });
}

/** All that the entries export, with its parameters and keys. Tables of limits are named after publications. */
export function publicWords(entries: readonly string[]): readonly Used[] {
  const { config } = ts.readConfigFile(`${root}/tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const files = entries.map((path) => `${root}/${path}`);
  const program = ts.createProgram(files, options);
  const checker = program.getTypeChecker();
  const found: Used[] = [];
  const seen = new Set<ts.Symbol>();
  for (const file of files) {
    const module = checker.getSymbolAtLocation(program.getSourceFile(file) as ts.SourceFile) as ts.Symbol;
    for (const exported of checker.getExportsOfModule(module)) {
      const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
      if (seen.has(symbol)) continue;
      seen.add(symbol);
      for (const node of symbol.declarations ?? []) {
        if (node.getSourceFile().fileName.includes("/severity/schemes/")) continue;
        found.push({ by: exported.name, name: exported.name, type: "" });
        if (!ts.isVariableDeclaration(node)) namesIn(node, exported.name, found);
        else if (node.type) namesIn(node.type, exported.name, found);
      }
    }
  }
  return found;
}

/** The words that a name is made of, in small letters: `crest`, `factor` of `crestFactor`. */
export function wordsOf(name: string): string[] {
  return name
    .replace(/([a-z0-9])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== "");
}

/** A word as the table may hold it: as it is, or in the singular. */
export function formsOf(word: string): string[] {
  return [word, word.replace(/s$/, ""), word.replace(/es$/, ""), word.replace(/ies$/, "y")];
}
