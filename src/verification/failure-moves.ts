import { isFailSafe } from "../device/index";
import type { BenchMove } from "./bench-move";
import type { BenchSettings } from "./bench-settings";
import { clearsText, contactText, waitOf } from "./bench-texts";

/** What a sensor fault does, and when. */
function faultText(settings: BenchSettings, input: string): string | undefined {
  const { sensorFault, onDelay, latching } = settings;
  if (sensorFault === undefined) return undefined;
  const back = latching
    ? `it stays set once the ${input} is back`
    : `once the ${input} is back ${clearsText(settings)}`;
  const when = onDelay > 0 ? `${onDelay} s after the ${input} is disconnected` : "at once";
  return {
    alarm: `the fault counts as a level above the threshold: the output sets ${when}${contactText(settings, "tripped")}; ${back}`,
    hold: `the relay does not act: the output stays as it was${contactText(settings, "healthy")}, and the fault is shown`,
    bad: "the channel is shown as bad at once and the vote changes as set",
  }[sensorFault];
}

/** The steps that take sensor, or its signal, and power away. */
export function failureMoves(settings: BenchSettings, input: string): BenchMove[] {
  const { coil, sensorFault, latching } = settings;
  const power =
    coil === undefined
      ? "record what the contact does; a fail-safe one trips"
      : isFailSafe(coil)
        ? `the relay drops and trips${contactText(settings, "without power")}`
        : `the relay does not move${contactText(settings, "without power")}: loss of power goes unseen and needs another alarm`;
  const fault = faultText(settings, input);
  return [
    {
      what: `disconnect the ${input} for ${waitOf(settings)} s${sensorFault === "alarm" ? " and take the time" : ""}, then connect it again`,
      share: null,
      expect: fault ?? "record what the device does",
      from: "clear",
      ...(fault === undefined && { leaves: "either" as const }),
      // what does not latch clears by itself once the sensor is back
      ...(sensorFault === "alarm" && { leaves: settings.latching ? ("set" as const) : ("either" as const) }),
    },
    // a relay that a trip has moved already does not show what the loss of power does
    {
      what: "take the power away, then give it back",
      share: null,
      expect: power,
      from: "clear",
      // some that latch come back latched
      ...(latching && { leaves: "either" as const }),
    },
  ];
}
