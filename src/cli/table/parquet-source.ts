import { type ParquetRead, readParquet } from "../parquet/read-parquet";
import type { RowVisitor } from "./row-source";

/** Shows the rows of a Parquet file to a visitor, as {@link readParquet} does, with a breath after each portion. */
export async function visitParquet(path: string, visitor: RowVisitor): Promise<ParquetRead> {
  const reading = readParquet(path, visitor);
  try {
    for (;;) {
      const step = await reading.next();
      if (step.done) return step.value;
      await visitor.pause(step.value);
    }
  } finally {
    await reading.return(undefined as never);
  }
}
