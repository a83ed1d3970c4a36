import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { root } from "../examples/fences";

const folder = join(root, "test/surface");

const namesOf = ({ parameters }: ts.SignatureDeclarationBase): string[] =>
  parameters.map(({ name }) => (ts.isIdentifier(name) ? name.text : "?"));

/** The parameters of every public function, by its name, and of every method, as `Type.method`; `Type()` is a call. */
export function parameterNames(): ReadonlyMap<string, readonly string[]> {
  const all = new Map<string, readonly string[]>();
  const add = (name: string, of: ts.SignatureDeclarationBase): void => {
    if ((all.get(name)?.length ?? -1) < of.parameters.length) all.set(name, namesOf(of));
  };
  for (const page of readdirSync(folder).filter((one) => one.endsWith(".txt"))) {
    const file = ts.createSourceFile(page, readFileSync(join(folder, page), "utf8"), ts.ScriptTarget.Latest, true);
    for (const node of file.statements) {
      if (ts.isFunctionDeclaration(node) && node.name) add(node.name.text, node);
      if (!ts.isInterfaceDeclaration(node) && !ts.isClassDeclaration(node)) continue;
      for (const member of node.members) {
        const type = ts.isPropertySignature(member) && member.type;
        const name = `${node.name?.text}.${member.name?.getText() ?? ""}`;
        if (ts.isMethodSignature(member) && member.name.getText() === "new") add(`new ${node.name?.text}`, member);
        else if (ts.isMethodDeclaration(member) && member.name.getText() === "new") add(`new ${node.name?.text}`, member);
        else if (ts.isMethodSignature(member) || ts.isMethodDeclaration(member)) add(name, member);
        else if (type && ts.isFunctionTypeNode(type)) add(name, type);
        else if (ts.isConstructSignatureDeclaration(member)) add(`new ${node.name?.text}`, member);
        else if (ts.isCallSignatureDeclaration(member)) add(`${node.name?.text}()`, member);
      }
    }
  }
  return all;
}
