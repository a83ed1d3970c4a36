import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import type { Call, Refusal } from "./refused";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** Parameters by which a function takes the words of a refusal: a call of it is a place with words of its own. */
const WORDS = new Set(["what", "expected"]);

/** Folders whose functions refuse in the words of others. */
const SHARED = ["core", "detectors", "device"];

interface Tree {
  readonly file: string;
  readonly tree: ts.SourceFile;
}

function treesOf(folder: string): Tree[] {
  return readdirSync(`${root}src/${folder}`, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => {
      const file = `src/${folder}/${name}`;
      return { file, tree: ts.createSourceFile(file, readFileSync(root + file, "utf8"), ts.ScriptTarget.Latest, true) };
    });
}

function nodesOf(tree: ts.Node): ts.Node[] {
  const nodes: ts.Node[] = [tree];
  for (const node of nodes) ts.forEachChild(node, (child) => void nodes.push(child));
  return nodes;
}

function isFunction(node: ts.Node): node is ts.FunctionLikeDeclaration {
  return ts.isFunctionDeclaration(node) || ts.isMethodDeclaration(node) || ts.isArrowFunction(node);
}

function nameOf(node: ts.FunctionLikeDeclaration): string | undefined {
  const named = node.name ?? (ts.isVariableDeclaration(node.parent) ? node.parent.name : undefined);
  return named?.getText();
}

/** Names of the functions that refuse with words they are given, or do nothing but refuse. */
function refusersIn(trees: readonly Tree[]): string[] {
  return trees.flatMap(({ tree }) =>
    nodesOf(tree)
      .filter(isFunction)
      .filter(
        ({ type, parameters }) =>
          /^(never|VeladisError)$/.test(type?.getText() ?? "") ||
          parameters.some(({ name }) => WORDS.has(name.getText())),
      )
      .flatMap((node) => nameOf(node) ?? []),
  );
}

const isWords = (node: ts.Node | undefined): boolean => node !== undefined && WORDS.has(node.getText());

/** Names that a file imports. */
function importsOf({ tree }: Tree): string[] {
  return nodesOf(tree).flatMap((node) => (ts.isImportSpecifier(node) ? [node.name.text] : []));
}

/** Where the sources of a floor refuse, or have a shared function refuse in their words. */
function sitesOf(folder: string): Call[] {
  const trees = treesOf(folder);
  const refusers = new Set([...SHARED.flatMap((one) => refusersIn(treesOf(one))), ...refusersIn(trees)]);
  return trees.flatMap((one) => {
    const { file, tree } = one;
    const names = new Set([...importsOf(one), ...refusersIn([one])]);
    return nodesOf(tree).flatMap((node): Call[] => {
      if (!(ts.isNewExpression(node) || ts.isCallExpression(node))) return [];
      const { expression } = node;
      const called = expression.getText();
      const refuses = ts.isNewExpression(node) ? called === "VeladisError" : refusers.has(called) && names.has(called);
      if (!refuses || (ts.isCallExpression(node) && node.arguments.some(isWords))) return [];
      return [{ file, line: tree.getLineAndCharacterOfPosition(node.getStart()).line + 1, called }];
    });
  });
}

const key = ({ file, line, called }: Call): string => `${file}:${line} ${called}`;

/** The places of a floor that none of the refusals came from. */
export function unreached(folder: string, refusals: readonly Refusal[]): string[] {
  return unreachedBy(
    folder,
    refusals.flatMap(({ calls }) => calls),
  );
}

/** The places of a floor that are not among these calls. */
export function unreachedBy(folder: string, calls: readonly Call[]): string[] {
  const reached = new Set(calls.map(key));
  return sitesOf(folder)
    .map(key)
    .filter((site) => !reached.has(site));
}
