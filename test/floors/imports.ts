import { posix } from "node:path";
import ts from "typescript";

/** What each file or folder imports. */
export type Imports = ReadonlyMap<string, readonly string[]>;

/** The name that a node imports, if it is an import in any of its forms. */
function imported(node: ts.Node): string | undefined {
  let name: ts.Node | undefined;
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) name = node.moduleSpecifier;
  else if (ts.isExternalModuleReference(node)) name = node.expression;
  else if (ts.isImportTypeNode(node)) name = ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined;
  else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) [name] = node.arguments;
  return name !== undefined && ts.isStringLiteralLike(name) ? name.text : undefined;
}

/** All that a source imports, of values and of types, static and dynamic: files by their path, packages by name. */
export function importsIn(path: string, text: string): string[] {
  const nodes: ts.Node[] = [ts.createSourceFile(path, text, ts.ScriptTarget.Latest)];
  for (const node of nodes) ts.forEachChild(node, (child) => void nodes.push(child));
  const names = nodes.map(imported).filter((name) => name !== undefined);
  return [...new Set(names)].map((name) => {
    if (!name.startsWith(".")) return name;
    const file = posix.join(posix.dirname(path), name);
    return /\.\w+$/.test(file) ? file : `${file}.ts`;
  });
}

/** What folders import of one another. */
export function importsOfFolders(imports: Imports, folderOf: (path: string) => string): Imports {
  const folders = new Map<string, Set<string>>();
  for (const [path, targets] of imports) {
    const from = folderOf(path);
    const known = folders.get(from) ?? new Set();
    folders.set(from, known);
    for (const target of targets.filter((one) => imports.has(one)).map(folderOf))
      if (target !== from) known.add(target);
  }
  return new Map([...folders].map(([folder, targets]) => [folder, [...targets]]));
}

/** All that a file or folder leads to, itself only if it is on a cycle. */
function reached(imports: Imports, from: string): Set<string> {
  const found = new Set(imports.get(from)?.filter((one) => imports.has(one)));
  for (const one of found) for (const next of imports.get(one) ?? []) if (imports.has(next)) found.add(next);
  return found;
}

/** Those that lead to one another, group by group. */
export function cyclesOf(imports: Imports): string[][] {
  const all = new Map([...imports.keys()].map((one) => [one, reached(imports, one)]));
  const circular = [...all.keys()].filter((one) => all.get(one)?.has(one));
  const groups = circular.map((one) =>
    circular.filter((other) => all.get(one)?.has(other) && all.get(other)?.has(one)),
  );
  return groups.filter((group, i) => group[0] === circular[i]);
}
