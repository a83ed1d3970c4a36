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

for (const n of [1e6, 1e7]) {
  const source = Float64Array.from({ length: n }, (_, i) => (i % 1000) * 1e-3);
  const target = new Float64Array(n);
  const inPlace = source.slice();
  const unit = converter("mm/s rms", "mm/s rms");
  function plain(src, dst, factor) {
    for (let i = 0; i < src.length; i++) dst[i] = src[i] * factor;
  }
  const arrays = bestOf(
    {
      plain: [n, () => plain(source, target, k)],
      array: [n, () => compiled.array(source, target)],
      inPlace: [n, () => unit.array(inPlace, inPlace)],
    },
    n > 1e6 ? 15 : 60,
  );
  console.log(`.array on ${n.toExponential(0)} elements, against a plain loop dst[i] = src[i] * k`);
  report(`.array, ${n.toExponential(0)} elements into a destination`, arrays.array / arrays.plain, 0.65, "x");
  report(`.array, ${n.toExponential(0)} elements in place`, arrays.inPlace / arrays.plain, 0.65, "x");
}
if (Number.isNaN(sink)) throw new Error("a sum that is no number");
finish("Conversion");
