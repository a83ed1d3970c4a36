import { type ConvertedAmplitude, convertAmplitude, notedAmplitude } from "../amplitude/index";
import { requireGiven, requireKnownOptions, shown, VeladisError } from "../core/index";
import { deviceSettings, type TripRules, tripRules } from "../device/index";
import { type Amplitude, type Assumption, exactAmplitude, typeOf, union } from "../reading/index";
import { requireTimeConstant } from "./detected-levels";
import type { ImmunitySettings } from "./immunity-settings";
import type { ShockedDevice } from "./shocked-device";
import { requireCorner } from "./unit-pulse";

/** A device that runs at a level, with what was told of it. */
export interface RunningDevice {
  readonly device: ShockedDevice;
  readonly rules: TripRules;
  /** Frequency of the running vibration. */
  readonly hertz: number;
  /** Corner of the high-pass of a device that forms velocity. */
  readonly corner: number;
  readonly assumed: readonly Assumption[];
}

const SETTINGS = "settings with threshold, hysteresis, delay and detector";
const RUNNING = 'running vibration with its frequency, such as "2.6 mm/s rms at 1485 r/min"';

/**
 * A device that runs at a level below its threshold.
 *
 * @throws {@link VeladisError} `missing-frequency`, `wrong-quantity`, `out-of-range`, and as {@link TripLogic}
 */
export function runningDevice(settings: ImmunitySettings, running: string | Amplitude): RunningDevice {
  const known: Readonly<Record<keyof ImmunitySettings, true>> = deviceSettings;
  requireKnownOptions(settings, known, {
    what: "a setting of a device",
    form: SETTINGS,
    place: { parameter: "settings" },
  });
  const rules = tripRules({ ...settings, sensorFault: "alarm" }, false);
  const { threshold } = rules;
  const reading = notedAmplitude(
    exactAmplitude(requireGiven(running, RUNNING, { parameter: "running" })),
    "running vibration",
  );
  const hertz = reading.hertz ?? threshold.hertz;
  if (hertz === undefined) {
    throw new VeladisError("missing-frequency", {
      expected: RUNNING,
      received: shown(running),
      parameter: "running",
    });
  }
  if (threshold.quantity === "displacement") {
    throw new VeladisError("wrong-quantity", {
      expected: "a threshold in acceleration or velocity, which a shock reaches",
      received: shown(rules.type),
      option: "type",
    });
  }
  const tau = requireTimeConstant(settings.detector);
  const corner = requireCorner(settings.highPass ?? 10);
  const rms = settings.detector.kind === "rms";
  const { type } = typeOf(threshold.quantity === "velocity" ? "m/s" : "m/s2", rms ? "rms" : "pk");
  const [before, start, reset] = [reading, threshold, rules.reset].map((one) =>
    convertAmplitude(one, type, { at: { hertz } }),
  ) as [ConvertedAmplitude, ConvertedAmplitude, ConvertedAmplitude];
  const [level, set] = [before.value, start.value];
  const hold = settings.timerResets === "below threshold" ? set : reset.value;
  const assumed = union(union(before.assumed, start.assumed), reset.assumed);
  if (level >= hold) {
    throw new VeladisError("out-of-range", {
      expected: "running vibration below the threshold and below what the on-delay starts over at",
      received: shown(running),
      parameter: "running",
    });
  }
  const device = { rms, tau, hertz, level, set, hold };
  return { device, rules, hertz, corner, assumed };
}
