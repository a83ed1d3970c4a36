import { explain } from "../../amplitude/index";

/** Something that {@link explain} takes. */
export type Explained = Parameters<typeof explain>[0];

/** The arithmetic behind answers, below them, each behind its name where it has one. */
export function explainedText(answers: readonly (readonly [name: string, answer: Explained])[]): string {
  const steps = answers.map(([name, answer]) => {
    const lines = explain(answer).text.split("\n");
    return (name === "" ? lines : [name, ...lines.map((line) => `  ${line}`)]).map((line) => `  ${line}\n`).join("");
  });
  return `\nexplained\n${steps.join("")}`;
}

/** The same as data, for a JSON object; nothing unless it was asked for. */
export function explainedSteps(answer: Explained, asked: boolean) {
  return asked ? { explained: explain(answer).steps } : {};
}
