/** What must not compile: `npm run types` fails when one of these compiles after all. */
import { convert, converter } from "../../src/index";

/** Never called: its body is for the compiler alone. */
export function neverCompiles(rpm: number, unknown: string): void {
  // another quantity without a frequency
  // @ts-expect-error
  convert(0.25, "in/s pk", "mil pp");
  // @ts-expect-error
  converter("g pk", "mm/s rms");
  // @ts-expect-error
  convert(0.25, "in/s pk", "mil pp", {});
  // @ts-expect-error
  convert(0.25, "in/s pk", "mil pp", { crestFactor: 3 });
  // @ts-expect-error
  convert(95, "dB re 1e-9 m/s", "um pp");
  // @ts-expect-error
  convert(95, "dB re ISO 1683 velocity", "g rms");
  // misspelt units
  // @ts-expect-error
  convert(1, "in/sec pk", "mm/s rms");
  // @ts-expect-error
  convert(1, "mm/s rms", "inch/s pk");
  // @ts-expect-error
  convert(1, "gal pk", "g pk");
  // misspelt, missing or doubled detectors
  // @ts-expect-error
  convert(1, "mm/s rsm", "in/s pk");
  // @ts-expect-error
  convert(1, "mm/s", "in/s pk");
  // @ts-expect-error
  convert(1, "mm/s RMS", "in/s pk");
  // @ts-expect-error
  convert(1, "mm/s rms pk", "in/s pk");
  // levels without a reference, or with one that is none
  // @ts-expect-error
  convert(95, "dB", "mm/s rms");
  // @ts-expect-error
  convert(95, "dB re m/s", "mm/s rms");
  // @ts-expect-error
  convert(95, "dB re 1e-9 furlong", "mm/s rms");
  // @ts-expect-error
  convert(95, "dB re ISO 9999 velocity", "mm/s rms");
  // frequencies
  // @ts-expect-error
  convert(1, "mm/s rms", "um pp", { at: "25 hz" });
  // @ts-expect-error
  convert(1, "mm/s rms", "um pp", { at: "fast" });
  // @ts-expect-error
  convert(1, "mm/s rms", "um pp", { at: 25 });
  // @ts-expect-error
  convert(1, "mm/s rms", "um pp", { at: { rpm } });
  // a text of unknown content
  // @ts-expect-error
  convert(1, unknown, "mm/s rms");
  // @ts-expect-error
  convert(1, "mm/s rms", "um pp", { at: unknown });
  // a union of another quantity on both sides
  // @ts-expect-error
  convert(1, "mm/s rms" as "mm/s rms" | "in/s pk", "um pp" as "um pp" | "g pk");
  // a level has no factor
  // @ts-expect-error
  converter("dB re 1e-9 m/s", "mm/s rms").factor;
  // what is read-only
  // @ts-expect-error
  converter("in/s pk", "mm/s rms").factor = 2;
  // @ts-expect-error
  convert("0.25", "in/s pk", "mm/s rms");
}
