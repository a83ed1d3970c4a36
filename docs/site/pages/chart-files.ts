import { charts } from "../charts";

/** Each chart of the documentation, wide and narrow. */
export function chartFiles(): Record<string, string> {
  return Object.fromEntries(
    Object.entries(charts).flatMap(([name, draw]) => [
      [`${name}.svg`, draw(640)],
      [`${name}-narrow.svg`, draw(350)],
    ]),
  );
}
