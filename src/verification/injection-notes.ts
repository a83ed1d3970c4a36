import { significant } from "../reading/index";
import { stepsText } from "./bench-notes";
import type { BenchSettings } from "./bench-settings";
import type { InjectionStep } from "./bench-step";
import type { Injection } from "./injection";

/** What stands before the source of the signal and is not proven by it. */
const beyond = {
  mA: "sensor, its mounting and cable, and the transmitter",
  mV: "sensor, its mounting and its cable",
} as const satisfies Record<Injection["inject"], string>;

/** How a source is joined that could do harm. */
const joined = {
  mA: "a loop that the device feeds takes a source that sinks current; a second supply in one loop can destroy both",
  mV: "an input that feeds its sensor takes the signal through what blocks that supply; set the source to zero before it is joined",
} as const satisfies Record<Injection["inject"], string>;

/** Said before the first step: what is not proven, then what can hurt. Common practice, no source. */
export function saidBeforeInjection({ inject }: Injection, cannot: readonly InjectionStep[]): readonly string[] {
  return Object.freeze([
    `the signal proves the device from its input on, up to the final element: ${beyond[inject]} stay unproven; prove them on a shaker, or by the maker's way`,
    ...(cannot.length === 0 ? [] : [`the source cannot do ${stepsText(cannot)}: what they prove stays unproven`]),
    "the signal acts as a vibration does and trips a running machine: stop the machine, or have this device's trip bypassed under the site's permit, by those who may, with the machine protected in another way the site approves",
    "the circuits may be live, or lie in a hazardous area: work by permit, isolated and proven dead where leads are moved, with what is certified for the area, by people who are licensed for it",
    `the maker's instructions govern which terminals may be opened and what may be joined to them: ${joined[inject]}`,
    "before: record the setting as found, and write down every lead, jumper, bypass and setting that is changed, each with a place to sign that it is back",
  ]);
}

/** An uncertainty of the source as it was stated, and what its per cent are of. */
export function uncertaintyTold({ inject, uncertainty }: Injection): string | undefined {
  return inject === "mA" && uncertainty?.includes("%") ? `${uncertainty} of the current` : uncertainty;
}

/** On the steps, and on what is done after the last. */
export function injectionNotes(
  { tolerance = "5 %" }: BenchSettings,
  injection: Injection,
  hertz: number | null,
): readonly string[] {
  const { inject } = injection;
  const uncertainty = uncertaintyTold(injection);
  return [
    `levels that prove threshold and reset level lie away from them by what device and source may be off; signals are rounded further away, to what the source can set`,
    ...(hertz === null
      ? []
      : [`a sine of ${significant(hertz, 4)} Hz, whose voltage is told by the detector of the threshold`]),
    `readings are held against ${tolerance}${uncertainty === undefined ? "; how well the source is known is not told, and is taken as exact" : `; the source is known to ${uncertainty}`}`,
    ...(inject === "mA"
      ? [
          "what the device makes of a current outside its loop, as of a broken wire, is set in it: hold it against the maker's instructions",
        ]
      : []),
    "after: take the source off, put every lead, jumper and setting back, lift every bypass, see that the trip of the machine is armed, have a second person check all of it, and record who did so and when",
  ];
}
