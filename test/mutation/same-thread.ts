/** Reads Parquet in the thread of the test: a mutant is switched on in that thread alone. */

import { type Portion, parquetPortions } from "../../src/cli/parquet/portions";
import { shown, VeladisError } from "../../src/core/index";

export async function* parquetRows(path: string): AsyncGenerator<Portion> {
  try {
    yield* parquetPortions(path, () => undefined);
  } catch (error) {
    if (!(error instanceof VeladisError)) throw error;
    const { code, expected, received } = error;
    const named = received.includes(shown(path)) ? received : `${shown(path)}, ${received}`;
    throw new VeladisError(code, { expected, received: named });
  }
}
