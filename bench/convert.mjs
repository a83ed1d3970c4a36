// Conversion: texts across quantities, compiled, arrays; against mathjs, js-quantities and convert in one process.
import { convert as convertLibrary } from "convert";
import Qty from "js-quantities";
import { all, create } from "mathjs";
import { convert, converter } from "../dist/index.js";
import { bestOf, finish, report } from "./measure.mjs";

let sink = 0;
const N = 1e6;
const SLOW = 2e4;

const loop = (n, one) => [
  n,
  () => {
    let sum = 0;
    for (let i = 1; i <= n; i++) sum += one(i * 1e-3);
    sink += sum;
  },
];

const math = create(all);
const compiled = converter("in/s pk", "mm/s rms");
const exact = converter("in/s pk", "mm/s pk");
const across = converter("in/s pk", "mil pp", { at: "1500 r/min" });
const k = compiled.factor;
const bare = (x) => x * k;

// Each of ours in five loops compiled apart, as in a program: what the engine inlines differs from one to the next.
const own = (call) =>
  Array.from({ length: 5 }, () => {
    const run = new Function("convert", `let sum = 0; for (let i = 1; i <= ${N}; i++) sum += ${call}; return sum;`);
    return [
      N,
      () => {
        sink += run(convert);
      },
    ];
  });

const ours = {
  across: own('convert(i * 1e-3, "in/s pk", "mil pp", { at: "1500 r/min" })'),
  acrossHertz: own('convert(i * 1e-3, "in/s pk", "mil pp", { at: { hertz: 25 } })'),
  same: own('convert(i * 1e-3, "in/s pk", "mm/s rms")'),
  changing: own('convert(1, "in/s pk", "mil pp", { at: { hertz: i } })'),
};

const each = bestOf({
  ...Object.fromEntries(
    Object.entries(ours).flatMap(([name, loops]) => loops.map((one, copy) => [`${name} ${copy}`, one])),
  ),
  // and once in a loop that others have used
  mathjs: loop(SLOW, (x) => math.unit(x, "inch/s").toNumber("mm/s")),
  jsQuantities: loop(SLOW, (x) => Qty(x, "in/s").to("mm/s").scalar),
  convert: loop(SLOW, (x) => convertLibrary(x, "inches").to("millimeters")),
  shared: loop(N, (x) => convert(x, "in/s pk", "mil pp", { at: "1500 r/min" })),
});
const bestCopy = (name) => Math.min(...ours[name].map((_, copy) => each[`${name} ${copy}`]));
const texts = { ...each, ...Object.fromEntries(Object.keys(ours).map((name) => [name, bestCopy(name)])) };

// Each contestant in a loop of its own, or the engine would inline none of them.
const calls = bestOf(
  {
    bare: loop(N, bare),
    compiled: [
      N,
      () => {
        let sum = 0;
        for (let i = 1; i <= N; i++) sum += compiled(i * 1e-3);
        sink += sum;
      },
    ],
    across: [
      N,
      () => {
        let sum = 0;
        for (let i = 1; i <= N; i++) sum += across(i * 1e-3);
        sink += sum;
      },
    ],
    exact: [
      N,
      () => {
        let sum = 0;
        for (let i = 1; i <= N; i++) sum += exact(i * 1e-3);
        sink += sum;
      },
    ],
    bareAgain: [
      N,
      () => {
        let sum = 0;
        for (let i = 1; i <= N; i++) sum += bare(i * 1e-3);
        sink += sum;
      },
    ],
  },
  40,
);

console.log("texts, nanoseconds a conversion");
report("convert across quantities, at in words", texts.across, 20, "ns");
report("convert across quantities, at in hertz", texts.acrossHertz, 20, "ns");
report("convert within a quantity", texts.same, 20, "ns");
report("convert across quantities, in a loop that others share", texts.shared, 30, "ns");
report("convert across quantities, another frequency each time", texts.changing, 60, "ns");
report("mathjs unit conversion over convert across quantities", texts.mathjs / texts.across, 90, "x", true);
console.log(
  `      js-quantities over convert ${(texts.jsQuantities / texts.across).toFixed(0)} x, convert (npm) ${(texts.convert / texts.across).toFixed(1)} x`,
);
console.log("compiled, against a bare multiplication");
report("compiled within a quantity over bare", calls.compiled / calls.bareAgain, 1.3, "x");
report("compiled across quantities over bare", calls.across / calls.bareAgain, 1.3, "x");
console.log(`      an exact ratio, multiplied and divided: ${(calls.exact / calls.bareAgain).toFixed(2)} x`);

/** A plain loop, compiled anew for each use, so that it knows one kind of array. */
const plainLoop = () =>
  new Function("src", "dst", "factor", "for (let i = 0; i < src.length; i++) dst[i] = src[i] * factor;");

/** [elements, kind, what is done, bound over a plain loop of like kind] */
const batches = [
  [1e4, Float64Array, "out", 1],
  [1e5, Float64Array, "out", 0.75],
  [1e6, Float64Array, "out", 0.75],
  [1e7, Float64Array, "out", 0.95],
  [1e4, Float32Array, "out", 0.75],
  [1e5, Float32Array, "out", 0.75],
  [1e6, Float32Array, "out", 0.75],
  [1e7, Float32Array, "out", 0.75],
  [1e7, Float64Array, "in place", 0.7],
  [1e7, Float64Array, "in place, all or nothing", 1.05],
];
// a factor by which values neither grow nor shrink, pass after pass: one that is not told from another before it is used
const unit = converter("mm/s rms", "mm/s rms");
console.log("batches, against a plain loop of like kind: dst[i] = src[i] * k");
for (const [n, Kind, how, bound] of batches) {
  const source = Kind.from({ length: n }, (_, i) => (i % 1000) * 1e-3);
  const inPlace = how !== "out";
  const target = inPlace ? source : new Kind(n);
  const other = inPlace ? source.slice() : source;
  const plain = plainLoop();
  const [ours, factor] = inPlace ? [unit, unit.factor] : [compiled, k];
  const options = how === "in place" ? { whole: false } : undefined;
  // many passes of a short array, or the clock tells more than the loop
  const passes = Math.max(1, 2e6 / n);
  const run = (one) => [
    n * passes,
    () => {
      for (let i = 0; i < passes; i++) one();
    },
  ];
  const times = bestOf(
    {
      plain: run(() => plain(other, inPlace ? other : target, factor)),
      array: run(() => ours.array(source, target, options)),
    },
    n > 1e6 ? 15 : 60,
  );
  const name = `.array, ${n.toExponential(0)} of ${Kind.name}, ${how}`;
  report(name, times.array / times.plain, bound, "x");
  console.log(`      ${times.array.toFixed(2)} ns an element, plain ${times.plain.toFixed(2)}`);
}

if (Number.isNaN(sink)) throw new Error("a sum that is no number");
finish("Conversion");
