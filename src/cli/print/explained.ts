import { explain } from "../../amplitude/index";
import { visibleText } from "../../core/index";

/** Something that {@link explain} takes, and its name; the only one needs none. */
export type Explained = readonly [name: string, answer: Parameters<typeof explain>[0]];

/** The arithmetic behind answers, to stand below them. */
export function explainedText(answers: readonly Explained[]): string {
  const blocks = answers.map(([name, answer]) => {
    const lines = explain(answer).text.split("\n");
    return name === "" ? lines : [visibleText(name), ...lines.map((line) => `  ${line}`)];
  });
  const lines = blocks.flat().map((line) => `  ${line}\n`);
  return `\nexplained\n${lines.join("")}`;
}

/** The same as data for a JSON object: the steps of the only answer, or of each by its name; nothing unless asked for. */
export function explainedList(asked: boolean, answers: readonly Explained[]) {
  if (!asked) return {};
  const all = Object.fromEntries(answers.map(([name, answer]) => [name, explain(answer).steps]));
  return { explained: all[""] ?? all };
}

/** The same of a few. */
export function explainedSteps(asked: boolean, ...answers: readonly Explained[]) {
  return explainedList(asked, answers);
}
