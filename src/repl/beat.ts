import { VeladisError } from "../core/index";
import { type Amplitude, format, madeOf, significant, typeOf } from "../reading/index";
import { operands } from "./operands";
import { behind, type Report } from "./value";

/** How two readings of two near frequencies swell and fade: the least and the most of them, and how often. */
export function beat(one: Amplitude, other: Amplitude): Report {
  const [a, b] = operands([one, other], "beat") as [Amplitude, Amplitude];
  const difference = Math.abs((a.hertz ?? Number.NaN) - (b.hertz ?? Number.NaN));
  if (!(difference > 0)) {
    throw new VeladisError("wrong-frequency", {
      expected: "two readings at two frequencies, as in 3.4 mm/s rms at 1480 r/min and 1.2 mm/s rms at 1492 r/min",
      received: [one, other]
        .map(
          (reading) =>
            `${format(reading)} at ${reading.hertz === undefined ? "no frequency" : `${Number(reading.hertz.toPrecision(6))} Hz`}`,
        )
        .join(" and "),
    });
  }
  const [least, most, seconds] = [Math.abs(a.value - b.value), a.value + b.value, 1 / difference];
  const { type } = typeOf(a.unit, a.detector);
  const way = madeOf([a, b], { does: "sum", value: most, type, note: "the most of a beat" });
  const text = `from ${significant(least)} to ${significant(most)} ${type}, one swell every ${significant(seconds)} s`;
  return { report: `${text}${behind(way)}`, data: { least, most, type, seconds, ...way } };
}
