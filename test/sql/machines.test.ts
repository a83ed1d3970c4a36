import { describe } from "vitest";
import { clickhouse, duckdbRows, postgres } from "./engines";
import { type EngineTypes, judgesMachines } from "./judges-machines";

const engines: readonly EngineTypes[] = [
  ["duckdb", duckdbRows, "VARCHAR", "DOUBLE"],
  ["postgresql", postgres, "TEXT", "DOUBLE PRECISION"],
  ["clickhouse", clickhouse, "String", "Nullable(Float64)"],
];

describe.each(engines)("%s", (...engine) => judgesMachines(engine));
