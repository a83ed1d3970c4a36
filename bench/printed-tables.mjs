// Random readings by the library and by the tables keyed by hand: `node bench/printed-tables.mjs [count]`.
import { classify, judge } from "../dist/severity.js";
import { finish, report } from "./measure.mjs";
import { bundled } from "./test-module.mjs";

const COUNT = Number(process.argv[2] ?? 1e5);
const { printedDifferences } = await bundled("independent/printed-differences.ts");

const differences = printedDifferences({ classify, judge }, COUNT);
for (const one of differences.slice(0, 20)) console.log(`      ${one}`);
report(`differences in ${COUNT} judgements by the printed tables`, differences.length, 0, "");
finish("Judgements against the printed tables");
