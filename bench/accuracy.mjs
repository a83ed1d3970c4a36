// Error of random conversions in units of the last place, against mathjs at 64 digits: `node bench/accuracy.mjs [count]`.
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { convert, converter, detectors, units } from "../dist/index.js";
import { finish, report } from "./measure.mjs";

const COUNT = Number(process.argv[2] ?? 1e6);

// the exact conversion is that of the tests; with its imports it becomes one module that needs no file of its own
const { outputFiles } = await build({
  entryPoints: [fileURLToPath(new URL("../test/amplitude/exact.ts", import.meta.url))],
  bundle: true,
  format: "esm",
  platform: "node",
  write: false,
});
const { errorInUlp, exact, hertzOf } = await import(
  `data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString("base64")}`
);

let state = 20_261_125;
/** A repeatable random number from 0 to 1. */
const random = () => {
  state = (state + 0x6d2b79f5) | 0;
  let t = Math.imul(state ^ (state >>> 15), 1 | state);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
};
const oneOf = (table) => {
  const names = Object.keys(table);
  return () => names[Math.floor(random() * names.length)];
};
// what is read of a waveform of any shape has no ratio to the others, and is refused
const ofSine = Object.fromEntries(Object.entries(detectors).filter(([, { ofWaveform }]) => !ofWaveform));
const [unit, detector, frequencyUnit] = [units, ofSine, hertzOf].map(oneOf);
const between = (low, high) => low * (high / low) ** random();

const errors = { same: [], across: [] };
for (let i = 0; i < COUNT; i++) {
  const one = {
    value: between(1e-9, 1e9),
    from: [unit(), detector()],
    to: [unit(), detector()],
    frequency: [between(0.01, 1e5), frequencyUnit()],
  };
  const where = units[one.from[0]].quantity === units[one.to[0]].quantity ? "same" : "across";
  const [from, to, at] = [one.from, one.to, one.frequency].map((words) => words.join(" "));
  const want = exact(one);
  errors[where].push(
    Math.max(
      errorInUlp(convert(one.value, from, to, { at }), want),
      errorInUlp(converter(from, to, { at })(one.value), want),
    ),
  );
}

for (const [where, name, bound] of [
  ["same", "within a quantity", 2],
  ["across", "across quantities", 4],
]) {
  const sorted = Float64Array.from(errors[where]).sort();
  const at = (part) => sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))];
  report(`largest error of ${sorted.length} conversions ${name}`, at(1), bound, "ulp");
  console.log(`      99.99 of 100 within ${at(0.9999).toFixed(2)} ulp, half within ${at(0.5).toFixed(2)} ulp`);
}
finish("Error of a conversion");
