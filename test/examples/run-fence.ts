import ts from "typescript";
import { expect } from "vitest";
import { VeladisError } from "../../src/index";
import type { Fence } from "./fences";

/** The public names, as a user imports them. */
const entries = import.meta.glob("../../src/entries/*.ts");

async function moduleOf(name: string): Promise<object> {
  if (name === "veladis") return import("../../src/index");
  const entry = /^veladis\/([a-z]+)$/.exec(name)?.[1];
  if (entry === undefined) return import(/* @vite-ignore */ name);
  const load = entries[`../../src/entries/${entry}.ts`];
  if (load === undefined) throw new Error(`no entry ${name}`);
  return (await load()) as object;
}

/** The comment that says what a statement gives, with the lines that continue it. */
function claimBehind(code: string, end: number): string | undefined {
  // a continuing line is indented behind its slashes, or closes a bracket
  const comment = /^[ \t]*\n?[ \t]*\/\/ ?(=>|throws)([^\n]*)((?:\n[ \t]*\/\/(?: {2}| ?[\]})])[^\n]*)*)/.exec(
    code.slice(end),
  );
  if (comment === null) return undefined;
  const more = (comment[3] ?? "").replace(/\n[ \t]*\/\//g, "\n");
  return `${comment[1]}${comment[2]}${more}`.trim();
}

/** An import as a look-up of the public module; types fall away. */
function lookUpOf(statement: ts.ImportDeclaration, source: ts.SourceFile): string {
  const clause = statement.importClause;
  const module = `await __module(${statement.moduleSpecifier.getText(source)})`;
  const named = clause?.namedBindings;
  const names = [
    ...(clause?.name ? [`default: ${clause.name.text}`] : []),
    ...(named && ts.isNamedImports(named)
      ? named.elements
          .filter(({ isTypeOnly }) => !isTypeOnly)
          .map(({ propertyName, name }) => (propertyName ? `${propertyName.text}: ${name.text}` : name.text))
      : []),
  ];
  if (named && ts.isNamespaceImport(named)) return `const ${named.name.text} = ${module};`;
  return clause?.isTypeOnly ? "" : `const { ${names.join(", ")} } = ${module};`;
}

/** The fence as the body of an async function: imports looked up, claims turned into checks. */
function checkedBody({ code }: Fence): { body: string; claims: number } {
  const source = ts.createSourceFile("fence.ts", code, ts.ScriptTarget.ES2022, true);
  const edits: { start: number; end: number; text: string }[] = [];
  let claims = 0;
  const visit = (node: ts.Node): void => {
    const [start, end] = [node.getStart(source), node.end];
    if (ts.isImportDeclaration(node)) edits.push({ start, end, text: lookUpOf(node, source) });
    const claim = ts.isExpressionStatement(node) ? claimBehind(code, end) : undefined;
    if (claim === undefined || !ts.isExpressionStatement(node)) {
      ts.forEachChild(node, visit);
      return;
    }
    claims++;
    const expression = node.expression.getText(source);
    const text = claim.startsWith("throws")
      ? `await __throws(async () => (${expression}), ${JSON.stringify(claim.slice(6).trim())});`
      : `__equal((${expression}), (${claim.slice(2).trim()}), ${JSON.stringify(expression)});`;
    edits.push({ start, end, text });
  };
  visit(source);
  const edited = edits.reduceRight((text, edit) => text.slice(0, edit.start) + edit.text + text.slice(edit.end), code);
  const body = ts.transpileModule(edited, {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext, verbatimModuleSyntax: true },
  }).outputText;
  return { body, claims };
}

/** Runs a fence and checks every claim in it; returns how many there were. */
export async function runFence(fence: Fence): Promise<number> {
  const { body, claims } = checkedBody(fence);
  const AsyncFunction = (async () => undefined).constructor as new (
    ...args: string[]
  ) => (...args: unknown[]) => Promise<void>;
  const equal = (actual: unknown, expected: unknown, what: string): void => expect(actual, what).toEqual(expected);
  const throws = async (act: () => Promise<unknown>, code: string): Promise<void> => {
    const error = await act().then(
      () => undefined,
      (reason: unknown) => reason,
    );
    expect(error).toBeInstanceOf(VeladisError);
    expect((error as VeladisError).code).toBe(code);
  };
  await new AsyncFunction("__module", "__equal", "__throws", body.replace(/^export \{\};?$/m, ""))(
    moduleOf,
    equal,
    throws,
  );
  return claims;
}
