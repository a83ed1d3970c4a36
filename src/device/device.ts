import { linearTypeOf } from "../amplitude/index";
import { inPlace, requireChoice, requireGiven, requireKnownKeys } from "../core/index";
import type { DeviceBand } from "./band-response";

/** What a device does with a setting between two of its steps. */
export const roundings = /* @__PURE__ */ Object.freeze(["down", "nearest", "up"] as const);

/** How a device stores a setpoint, from its data sheet. */
export interface Device {
  /** Smallest step of a setpoint, e.g. `"0.2 mm/s rms"`; its unit and detector are the device's. */
  readonly step?: string;
  /** Lowest setpoint it holds, with its unit. */
  readonly lowest?: string;
  /** Highest setpoint it holds, with its unit. */
  readonly highest?: string;
  /** What it does with a setting between two steps; `nearest` if not given. */
  readonly rounds?: (typeof roundings)[number];
  /** Band in which it measures; a -3 dB band reads 0.707 at its edges. */
  readonly band?: Pick<DeviceBand, "lowest" | "highest">;
}

const keys: Readonly<Record<keyof Device, true>> = /* @__PURE__ */ Object.freeze({
  step: true,
  lowest: true,
  highest: true,
  rounds: true,
  band: true,
});

/** A word for a rounding, checked. */
export function requireRounding(rounds: (typeof roundings)[number]): (typeof roundings)[number] {
  return requireChoice(rounds, roundings, "what the device does between two steps", { parameter: "rounds" });
}

/** The device itself if it is one, without a key that no device has. */
export function requireDevice(device: Device): Device {
  requireGiven(device, 'a device such as { step: "0.1 mm/s rms" }; {} where nothing is known of it', {
    parameter: "device",
  });
  if (device.band !== undefined)
    requireGiven(device.band, 'a band such as { lowest: "10 Hz", highest: "1 kHz" }', { option: "band" });
  if (device.rounds !== undefined) inPlace({ option: "rounds" }, () => requireRounding(device.rounds as "down"));
  return requireKnownKeys(device, keys, "a fact of a device");
}

/** The device's own reading type: that of its step or of an end of its range; else the one given. */
export function deviceType({ step, highest, lowest }: Device, otherwise: string): string {
  const own = step ?? highest ?? lowest;
  return own === undefined ? otherwise : linearTypeOf(own);
}
