import { requireChoice, requireKnownKeys, requireList, shown, VeladisError } from "../core/index";
import type { TripRules } from "../device/index";
import { assumptionNames } from "../reading/index";
import type { TripEvent } from "./trip-events";

const keys: Readonly<Record<"time" | "event" | "level" | "cause" | "assumed", true>> = /* @__PURE__ */ Object.freeze({
  time: true,
  event: true,
  level: true,
  cause: true,
  assumed: true,
});

const FIRST_OUT = "a snapshot of a trip logic, with firstOut";

function refuse(is: string, received: unknown, code: "wrong-type" | "out-of-range" = "out-of-range"): never {
  throw new VeladisError(code, { expected: `${FIRST_OUT}: ${is}`, received: shown(received) });
}

/** Whether a trip has the level that its cause has: none with a failed sensor, else one at which it can have tripped. */
function isLevelOf({ cause, level }: TripEvent, rules: TripRules): boolean {
  if (cause === "sensor fault") return level === null;
  if (typeof level !== "number" || !Number.isFinite(level)) return false;
  return level >= (cause === "level" ? rules.startOverAt : 0);
}

/**
 * The trip that set a stored output, copied, refused when it is none that these settings could have made.
 *
 * @throws {@link VeladisError} `wrong-type`, `unknown-option`, `out-of-range`
 */
export function requireFirstOut(from: TripEvent | null, rules: TripRules): TripEvent {
  if (from === null) refuse("the trip that set the output", from, "out-of-range");
  requireKnownKeys(from, keys, "a part of the first-out of a snapshot");
  if (from.event !== "trip") refuse("an event that is a trip", from.event, "wrong-type");
  if (typeof from.time !== "number" || !Number.isFinite(from.time)) refuse("its time in s", from.time, "wrong-type");
  const cause = requireChoice(from.cause, ["level", "sensor fault", "above range"], `${FIRST_OUT}: its cause`, {
    option: "cause",
  });
  if (cause === "sensor fault" && rules.sensorFault !== "alarm") {
    refuse(`a cause that trips; a sensor fault is set to ${rules.sensorFault}`, cause);
  }
  if (!isLevelOf(from, rules)) refuse("the level that it tripped at", from.level);
  if (from.assumed === undefined) return { ...from };
  const assumed = [...requireList(from.assumed, `${FIRST_OUT}: what was assumed`, { option: "assumed" })];
  for (const one of assumed) requireChoice(one, assumptionNames, `${FIRST_OUT}: what was assumed`);
  return { ...from, assumed };
}
