/** What a Parquet file begins and ends with. A heading may be the same: where text is read, only bytes that are none tell. */
export const PARQUET = "PAR1";

/** Why a Parquet file is refused where text is read. */
export const parquetFault = {
  expected: "text (Parquet is read by table and by overall, by the ending .parquet)",
  received: "what a Parquet file begins with (PAR1)",
} as const;
