import { choice, knownKeys, nonNegative, shown, text, VeladisError } from "../core/index";
import { deviceSettings } from "../device/index";
import type { BenchSettings } from "./bench-plan";

/** Refuses settings that a plan would print and that are none; the threshold and what is a share of it apart. */
export function checkBench(settings: BenchSettings): void {
  const known: Readonly<Record<keyof BenchSettings, true>> = deviceSettings;
  const { onDelay, offDelay, latching, contact, coil, sensorFault } = knownKeys(
    settings,
    known,
    "a setting of a device",
  );
  nonNegative(onDelay, "onDelay: a time of zero or more, in s");
  if (offDelay !== undefined) nonNegative(offDelay, "offDelay: a time of zero or more, in s");
  if (typeof latching !== "boolean") {
    throw new VeladisError(latching === undefined ? "missing-fact" : "wrong-type", {
      expected: "latching: whether a set output stays until it is reset by hand",
      received: shown(latching),
      allowed: ["true", "false"],
    });
  }
  if (contact !== undefined) {
    choice(contact, ["normally open", "normally closed"], "contact: its position while the coil is de-energised");
  }
  if (coil !== undefined) {
    choice(coil, ["normally energised", "normally de-energised"], "coil: its state while nothing is wrong");
  }
  if (sensorFault !== undefined) text(sensorFault, "sensorFault: what a sensor fault does");
}
