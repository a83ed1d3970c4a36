import { requireChoice, requireGiven, requireKnownKeys, requirePositive, shown, VeladisError } from "../core/index";
import { type Device, requireDevice } from "../device/index";
import type { Amplitude } from "../reading/index";
import type { MachineRef, SchemeRef } from "../severity/index";
import type { Baseline } from "./baseline";
import { type BaselineMultiples, requireMultiples } from "./multiples";
import type { OwnLimits } from "./own-limits";
import { type RaisedRange, requireRaised } from "./raised";
import type { SensorLimits } from "./setpoint-warnings";

/** What {@link proposeSetpoints} is told. */
export interface ProposalRequest {
  /** Statistics by {@link baseline}, one reading such as `"2 mm/s rms"`, or `"none"`. */
  readonly baseline: Baseline | Amplitude | string;
  /**
   * The scheme, by id or as data. Without it and without limits, the schemes by which `judge` judges the machine; of
   * several the lowest limits. `"none"`: a statistical alarm alone.
   */
  readonly scheme?: SchemeRef | "none";
  /** The schemes among which the facts of the machine choose where none is named; the built-in ones if not given. */
  readonly schemes?: readonly SchemeRef[];
  /**
   * A rule of its own in place of a scheme: `"api shaft"`, alarm and trip of the shaft as a handbook quotes API; for
   * machines with fluid-film bearings at 1000 to 30 000 r/min.
   */
  readonly rule?: "api shaft";
  /** Limits of the maker or the site, in place of a scheme. */
  readonly limits?: OwnLimits;
  /** The machine, as the scheme asks for it; its type and speed also decide the delays. */
  readonly machine?: MachineRef;
  readonly sensor?: SensorLimits;
  readonly device?: Device;
  /**
   * Alarm and trip as multiples of the baseline, the user's own choice, e.g. `"alarm 1.5 times, trip 3 times"`; never above
   * what the rules allow.
   */
  readonly multiples?: BaselineMultiples | string;
  /**
   * Setpoints multiplied within a range of speeds below the running speed, e.g. `"2 times from 1900 to 2600 r/min for 30
   * s"`; what is left unprotected is told.
   */
  readonly raised?: RaisedRange | string;
  /** Standard deviations above the mean of the statistical alternative; 3 if not given. */
  readonly k?: number;
  /** On-delay of the trip that is planned, in seconds, to be judged. */
  readonly onDelay?: number;
}

const keys: Readonly<Record<keyof ProposalRequest, true>> = /* @__PURE__ */ Object.freeze({
  baseline: true,
  scheme: true,
  schemes: true,
  rule: true,
  limits: true,
  machine: true,
  sensor: true,
  device: true,
  multiples: true,
  raised: true,
  k: true,
  onDelay: true,
});

const sensorKeys: Readonly<Record<keyof SensorLimits, true>> = /* @__PURE__ */ Object.freeze({
  noiseFloor: true,
  fullScale: true,
  loop: true,
});

/** The request itself, without a key that no request has, and what it left out. */
export function requireRequest(request: ProposalRequest) {
  const {
    sensor = {},
    device = {},
    k = 3,
  } = requireGiven(request, "a request with baseline, and scheme or limits", { parameter: "request" });
  requireKnownKeys(request, keys, "a part of a request for setpoints");
  if (request.rule !== undefined) {
    requireChoice(request.rule, ["api shaft"], "a rule for setpoints", { option: "rule" });
    if (request.scheme !== undefined || request.limits !== undefined)
      throw new VeladisError("out-of-range", {
        expected: "one of a rule, a scheme and limits of the maker or the site",
        received: `rule ${shown(request.rule)} with ${request.scheme === undefined ? "limits" : "a scheme"}`,
      });
  }
  requireDevice(device);
  requireKnownKeys(
    requireGiven(sensor, 'limits of a sensor such as { fullScale: "50 g pk" }; {} where nothing is known of it', {
      option: "sensor",
    }),
    sensorKeys,
    "a limit of a sensor",
  );
  return {
    ...request,
    sensor,
    device,
    multiples: request.multiples === undefined ? {} : requireMultiples(request.multiples),
    raised: request.raised === undefined ? undefined : requireRaised(request.raised),
    k: requirePositive(k, "a number of standard deviations above zero", { option: "k" }),
  };
}
