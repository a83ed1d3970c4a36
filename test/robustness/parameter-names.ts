import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { root } from "../examples/fences";

const folder = join(root, "test/surface");

const all = new Map<string, readonly string[]>();

/** Of several declarations by one name the longest counts. */
function add(name: string, { parameters }: ts.SignatureDeclarationBase): void {
  const names = parameters.map((one) => (ts.isIdentifier(one.name) ? one.name.text : ""));
  if ((all.get(name)?.length ?? -1) < names.length) all.set(name, names);
}

for (const page of readdirSync(folder).filter((one) => one.endsWith(".txt"))) {
  // a declaration is a paragraph, and stands alone, so that nothing before it is taken as its beginning
  for (const text of readFileSync(join(folder, page), "utf8").split("\n\n")) {
    const [node] = ts.createSourceFile(page, text, ts.ScriptTarget.Latest, true).statements;
    if (node === undefined) continue;
    if (ts.isFunctionDeclaration(node) && node.name) add(node.name.text, node);
    if (!ts.isInterfaceDeclaration(node) && !ts.isClassDeclaration(node)) continue;
    for (const member of node.members) {
      if (
        ts.isMethodSignature(member) ||
        ts.isMethodDeclaration(member) ||
        ts.isConstructSignatureDeclaration(member)
      ) {
        const method = member.name?.getText() ?? "new";
        add(method === "new" ? `new ${node.name?.text}` : `${node.name?.text}.${method}`, member);
      }
    }
  }
}

/** What is made by a function and has its methods on no page by that name. */
const made: Readonly<Record<string, readonly string[]>> = {
  "converter()": ["value"],
  "converter of levels()": ["value"],
  "converter.array": ["source", "target", "options"],
  "converter of levels.array": ["source", "target", "options"],
  "classifier()": ["value"],
  "classifier.index": ["value"],
  "classifier.array": ["source", "target", "options"],
  // called by an instance of mathjs, with the name that its function has
  "registerAmplitudes.amplitude": ["reading"],
  // what is attempted: convert
  attempt: ["value", "from", "to"],
};

/** The parameters of a call with these arguments, as the pages in `test/surface/` name them. */
export function parameterNames(name: string, args: readonly unknown[]): readonly string[] | undefined {
  if (made[name] !== undefined) return made[name];
  // of its two ways to be called
  if (name === "format") return typeof args[0] === "number" ? ["value", "type", "options"] : ["reading", "options"];
  const plain = name.replace(" from a state", "");
  return all.get(plain) ?? all.get(plain.charAt(0).toUpperCase() + plain.slice(1));
}
