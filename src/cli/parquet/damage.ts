import { VeladisError } from "../../core/index";

/**
 * Refuses a file as damaged.
 *
 * @param where - the part of it, such as `column "level", row group 2`
 * @throws {@link VeladisError} `syntax`
 */
export function damaged(where: string, what: string): never {
  throw new VeladisError("syntax", { expected: "a Parquet file that is whole", received: `${where}: ${what}` });
}
