import type { SignalSource } from "../../amplitude/index";
import { VeladisError } from "../../core/index";
import { loopUse } from "../../device/index";
import { type Amplitude, amplitudeOf } from "../../reading/index";
import { vibrationOf } from "../options/signal-options";
import { signalsText } from "../print/signals-text";
import { wrapped } from "../print/wrapped";

/** What loop and sensor give at the known level, and at the trip where it is told. */
export function signalsOfCheck(threshold: string | undefined, source: SignalSource, known: Amplitude): string {
  if (threshold !== undefined && source.loop === undefined && source.sensor === undefined) {
    throw new VeladisError("missing-option", {
      expected: "--loop or --sensor beside --threshold, which tell it as a signal: without them it plays no part",
      received: "neither",
      option: "loop",
    });
  }
  const trip = threshold === undefined ? undefined : amplitudeOf(vibrationOf(threshold, source));
  const told = signalsText(
    [["known", known] as const, ...(trip === undefined ? [] : [["trip", trip] as const])],
    source,
    known.hertz ?? trip?.hertz,
  );
  if (trip === undefined || source.loop === undefined) return told;
  const at = trip.hertz ?? known.hertz;
  const { remark } = loopUse(trip, source.loop, at === undefined ? {} : { at: { hertz: at } });
  return told + (remark === null ? "" : wrapped(remark));
}
