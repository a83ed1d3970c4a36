import { defineConfig, type Options } from "tsup";
import manifest from "./package.json";

/** The entries of the package, as its manifest names them: `.` is src/index.ts, the others are in src/entries. */
const library = Object.fromEntries(
  Object.keys(manifest.exports)
    .filter((path) => path !== "./package.json")
    .map((path) => (path === "." ? ["index", "src/index.ts"] : [path.slice(2), `src/entries/${path.slice(2)}.ts`])),
);

const common = {
  target: "node20",
  platform: "node",
  splitting: true,
  // a chunk of which nothing is used is not loaded either
  treeshake: { moduleSideEffects: "no-external" },
  // `node:sqlite` and the like have no other name
  removeNodeProtocol: false,
  // tsup sets an option that TypeScript 6 calls deprecated
  dts: { entry: library, compilerOptions: { ignoreDeprecations: "6.0" } },
} satisfies Options;

/** The command, and the thread in which it reads Parquet, are ES modules alone: as CommonJS nothing would load them. */
export default defineConfig([
  {
    ...common,
    format: "esm",
    entry: { ...library, cli: "src/cli/main.ts", "parquet-worker": "src/cli/parquet/parquet-worker.ts" },
  },
  { ...common, format: "cjs", entry: library },
]);
