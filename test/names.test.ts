import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { root } from "./examples/fences";
import { tracked } from "./one-file/copy";

/** What declares names in a file of src. */
interface Found {
  readonly where: string;
  readonly name: string;
  readonly parameters: number;
  /** Whether it answers nothing and may throw: a guard. */
  readonly isGuard: boolean;
}

/** A function, however it is written, and its name. */
function namedFunction(node: ts.Node): readonly [string, ts.FunctionLikeDeclaration] | undefined {
  if (ts.isFunctionDeclaration(node) || ts.isMethodDeclaration(node)) return [node.name?.getText() ?? "", node];
  if (ts.isConstructorDeclaration(node)) return ["constructor", node];
  if (!ts.isVariableDeclaration(node) || node.initializer === undefined) return undefined;
  return ts.isArrowFunction(node.initializer) ? [node.name.getText(), node.initializer] : undefined;
}

/** Whether a function throws by itself, not in one within it. */
function throwsItself(of: ts.FunctionLikeDeclaration): boolean {
  const looks = (node: ts.Node): boolean =>
    ts.isThrowStatement(node) ||
    (!ts.isFunctionLike(node) && (ts.forEachChild(node, (one) => looks(one) || undefined) ?? false));
  return of.body !== undefined && looks(of.body);
}

const functions: Found[] = [];
const declared = new Map<string, string>();
for (const path of tracked().filter((one) => /^src\/.*\.ts$/.test(one))) {
  const file = ts.createSourceFile(path, readFileSync(join(root, path), "utf8"), ts.ScriptTarget.Latest, true);
  const visit = (node: ts.Node): void => {
    const found = namedFunction(node);
    if (found !== undefined) {
      const [name, of] = found;
      const isTop = node.parent === file;
      const isGuard = isTop && of.type?.getText() === "void" && throwsItself(of);
      functions.push({ where: `${path}: ${name}`, name, parameters: of.parameters.length, isGuard });
    }
    const { name } = node as { name?: ts.Node };
    const names = ts.isFunctionLike(node) || ts.isTypeElement(node) || ts.isClassElement(node);
    const isDeclared = names || ts.isVariableDeclaration(node) || ts.isInterfaceDeclaration(node);
    if (isDeclared && name !== undefined && (ts.isIdentifier(name) || ts.isPrivateIdentifier(name))) {
      declared.set(name.text, path);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
}

describe("names that a newcomer knows", () => {
  it("are looked for in all of src", () => {
    expect(functions.length).toBeGreaterThan(1500);
    expect(declared.get("explainedSteps")).toBeDefined();
  });

  it("none is of the words that say nothing of the field", () => {
    const word = /^#?(obey\w*|held\w*|tall(y|ied)\w*|stand(Until)?|shaped|misfit\w*|summits?|sweep|taker|fit)$/;
    expect([...declared].filter(([name]) => word.test(name))).toEqual([]);
  });

  it("a guard is named require, or refuse where it names what may not be", () => {
    const guards = functions.filter(({ isGuard }) => isGuard);
    expect(guards.length).toBeGreaterThan(50);
    // these do something and may fail on the way
    const workers = ["pass", "remember"];
    // a field of a shape is a guard by its place
    const others = guards.filter(({ name }) => !/^(require|refuse)[A-Z]|Shape$/.test(name) && !workers.includes(name));
    expect(others.map(({ where }) => where)).toEqual([]);
  });
});

describe("a function with many parameters takes a named bundle", () => {
  it("none has five or more", () => {
    expect(functions.filter(({ parameters }) => parameters > 4).map(({ where }) => where)).toEqual([]);
  });
});

describe("the walks in DEVELOPERS.md", () => {
  const text = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
  const walks = text.slice(text.indexOf("## Three walks"), text.indexOf("## To add something"));
  const quoted = [...walks.matchAll(/`([^`]+)`/g)].map(([, one]) => one as string);

  it("lead by functions that there are", () => {
    // of a class with its method, the method; "compare" is what a step does
    const names = quoted
      .filter((one) => /^[A-Za-z]+(\.[a-z]\w*)?$/.test(one) && !one.endsWith(".ts"))
      .map((one) => one.split(".").at(-1) as string);
    expect(names.length).toBeGreaterThan(25);
    const steps: readonly string[] = ["compare"];
    expect(names.filter((one) => !declared.has(one) && !steps.includes(one))).toEqual([]);
  });

  it("and through files that there are", () => {
    const files = quoted.filter((one) => /\.ts$|\/$/.test(one)).map((one) => (one.includes("/") ? `src/${one}` : one));
    expect(files.length).toBeGreaterThan(6);
    const all = tracked().filter((one) => one.startsWith("src/"));
    expect(files.filter((one) => !all.some((path) => path.startsWith(one) || path.endsWith(`/${one}`)))).toEqual([]);
  });
});
