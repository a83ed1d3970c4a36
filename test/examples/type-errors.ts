import ts from "typescript";
import { type Fence, root } from "./fences";

/** What the compiler says against the fences, each compiled as a module of its own under the project's options. */
export function typeErrorsOf(fences: readonly Fence[]): string[] {
  const { config } = ts.readConfigFile(`${root}/tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const virtual = new Map(fences.map((fence, i) => [`${root}/test/examples/__fence_${i}.ts`, fence]));
  const compilerOptions = { ...options, noUnusedLocals: false, noUnusedParameters: false, noEmit: true };
  const host = ts.createCompilerHost(compilerOptions);
  const readFile = host.readFile.bind(host);
  const fileExists = host.fileExists.bind(host);
  host.fileExists = (name) => virtual.has(name) || fileExists(name);
  host.readFile = (name) => (virtual.has(name) ? `${virtual.get(name)?.code}\nexport {};\n` : readFile(name));
  const getSourceFile = host.getSourceFile.bind(host);
  host.getSourceFile = (name, version, ...rest) =>
    virtual.has(name)
      ? ts.createSourceFile(name, host.readFile(name) ?? "", version, true)
      : getSourceFile(name, version, ...rest);
  const program = ts.createProgram([...virtual.keys()], compilerOptions, host);
  return [...virtual].flatMap(([name, fence]) =>
    ts.getPreEmitDiagnostics(program, program.getSourceFile(name)).map((diagnostic) => {
      const at = diagnostic.file?.getLineAndCharacterOfPosition(diagnostic.start ?? 0).line ?? 0;
      return `${fence.file}:${fence.line + at}: ${ts.flattenDiagnosticMessageText(diagnostic.messageText, "\n")}`;
    }),
  );
}
