import { readFile } from "node:fs/promises";
import { shown, VeladisError } from "../../core/index";
import { defineScheme, type Scheme, type SchemeInput, schemeOf } from "../../severity/index";

/**
 * The scheme that a JSON file holds.
 *
 * @throws {@link VeladisError} `unreadable` when it cannot be read, `syntax` when it is no JSON, and all of
 *   {@link defineScheme}; `out-of-range` for one with the id of a built-in scheme that is another
 */
export async function schemeFromFile(path: string): Promise<Scheme> {
  const text = await readFile(path, "utf8").catch(() => {
    throw new VeladisError("unreadable", { expected: "a file that can be read", received: shown(path) });
  });
  try {
    return schemeOf(defineScheme(JSON.parse(text) as SchemeInput));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    throw new VeladisError("syntax", { expected: "a scheme as JSON", received: `${shown(path)}: ${error.message}` });
  }
}
