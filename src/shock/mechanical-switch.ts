import { type Amplitude, amplitudeOf, convertAmplitude } from "../amplitude/index";
import { given, held, knownKeys, list, positive, shown, VeladisError } from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";

/** What the setting of an acceleration-operated switch means at one speed. */
export interface SwitchRow {
  readonly hertz: number;
  /** r/min. */
  readonly speed: number;
  /** Velocity in mm/s RMS at which a sine of this frequency operates the switch. */
  readonly velocity: Amplitude;
  /** Displacement in um peak-to-peak. */
  readonly displacement: Amplitude;
  /** Velocity at which it operates, over the severity limit; null without a limit. */
  readonly timesLimit: number | null;
  /** Whether it operates at the limit or below; null without a limit. */
  readonly protects: boolean | null;
}

/** What an acceleration-operated switch can and cannot see. */
export interface SwitchReach {
  readonly setting: Amplitude;
  readonly rows: readonly SwitchRow[];
  /** Below this frequency a sine at the limit does not operate the switch, in hertz; null without a limit. */
  readonly blindBelow: { readonly hertz: number; readonly speed: number } | null;
  readonly assumed: readonly string[];
}

/** What {@link mechanicalSwitch} may be told. */
export interface SwitchOptions {
  /** Speeds to tabulate. */
  readonly speeds?: readonly Frequency[];
  /** A severity limit in velocity or displacement, e.g. `"7.1 mm/s rms"`. */
  readonly limit?: string | Amplitude;
}

const keys: Readonly<Record<keyof SwitchOptions, true>> = /* @__PURE__ */ Object.freeze({ speeds: true, limit: true });

const assumed: readonly string[] = /* @__PURE__ */ Object.freeze([
  "all of the vibration is one sine at the stated frequency",
  "the setting is the peak acceleration at which the switch operates, without the weight of its armature (common practice, no source)",
]);

/**
 * The setting in g of an acceleration-operated mechanical switch as velocity and displacement across speeds, and the
 * speed below which it cannot protect at a severity limit.
 *
 * The slower the machine, the less acceleration goes with the same velocity: at low speed such a switch sees knocks
 * and high frequencies, not the unbalance of the shaft.
 *
 * @param setting - the acceleration at which it operates, e.g. `"2 g pk"`
 * @param options - `speeds` to tabulate, and `limit` in velocity or displacement, e.g. `"7.1 mm/s rms"`
 * @throws {@link VeladisError} `wrong-quantity` for a setting that is no acceleration or a limit that is one
 * @example
 * ```ts
 * import { format } from "veladis";
 * import { mechanicalSwitch } from "veladis/protection";
 *
 * const reach = mechanicalSwitch("2 g pk", { speeds: ["900 r/min", "2980 r/min"], limit: "7.1 mm/s rms" });
 * reach.rows.map(({ velocity }) => format(velocity)); // => ["147 mm/s rms", "44.4 mm/s rms"]
 * reach.rows.map(({ protects }) => protects); // => [false, false]
 * reach.blindBelow?.speed.toFixed(0); // => "18653"
 * ```
 */
export function mechanicalSwitch(setting: string | Amplitude, options: SwitchOptions = {}): SwitchReach {
  const { speeds = [], limit } = knownKeys(
    given(options, 'options such as { limit: "7.1 mm/s rms" }'),
    keys,
    "an option of a switch",
  );
  const operates = amplitudeOf(given(setting, 'a setting such as "2 g pk"'));
  if (operates.quantity !== "acceleration") {
    throw new VeladisError("wrong-quantity", {
      expected: 'the setting of an acceleration-operated switch, such as "2 g pk"',
      received: shown(`${operates.value} ${operates.unit} ${operates.detector}`),
    });
  }
  const peak = positive(convertAmplitude(operates, "m/s2 pk").value, "a setting above zero");
  const level = limit === undefined ? null : amplitudeOf(given(limit, 'a limit such as "7.1 mm/s rms"'));
  if (level?.quantity === "acceleration") {
    throw new VeladisError("wrong-quantity", {
      expected: "a severity limit in velocity or displacement",
      received: shown(limit),
    });
  }
  if (level !== null) positive(level.value, "a limit above zero");
  const rows = list(speeds, "a list of speeds").map((speed): SwitchRow => {
    const hertz = hertzOf(speed);
    const at = { at: { hertz } };
    const velocity = convertAmplitude(operates, "mm/s rms", at);
    const most = level === null ? null : convertAmplitude(level, "mm/s rms", at).value;
    const timesLimit = most === null ? null : held(velocity.value / most);
    return Object.freeze({
      hertz,
      speed: held(hertz * 60),
      velocity,
      displacement: convertAmplitude(operates, "um pp", at),
      timesLimit,
      protects: timesLimit === null ? null : timesLimit <= 1 + 1e-9,
    });
  });
  return Object.freeze({
    setting: operates,
    rows: Object.freeze(rows),
    blindBelow: level === null ? null : blindSpeed(peak, level),
    assumed,
  });
}

/** The frequency at which a sine of the limit has the peak acceleration of the setting. */
function blindSpeed(peak: number, level: Amplitude) {
  const radians =
    level.quantity === "velocity"
      ? peak / convertAmplitude(level, "m/s pk").value
      : Math.sqrt(peak / convertAmplitude(level, "m pk").value);
  const hertz = radians / (2 * Math.PI);
  return Object.freeze({ hertz, speed: held(hertz * 60) });
}
