import { conversionAssumes, convertAmplitude, linearTypeOf, notedAmplitude, sineFrequency } from "../amplitude/index";
import {
  finiteResult,
  inPlace,
  requireGiven,
  requireKnownOptions,
  requireList,
  requirePositive,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import { type Amplitude, type Assumption, exactAmplitude, madeOf, type Step, union } from "../reading/index";

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
  /** What was assumed in setting and limit, and in bringing them to one unit at this speed. */
  readonly assumed: readonly Assumption[];
  /** The steps that led to the velocity, and with a limit to how many times the limit it is. */
  readonly history: readonly Step[];
}

/** What an acceleration-operated switch can and cannot see. */
export interface SwitchReach {
  readonly setting: Amplitude;
  readonly rows: readonly SwitchRow[];
  /** Below this frequency a sine at the limit does not operate the switch, in hertz; null without a limit. */
  readonly blindBelow: { readonly hertz: number; readonly speed: number } | null;
  /** What was assumed for any row and for the frequency below which it is blind. */
  readonly assumed: readonly Assumption[];
  /** What was taken for granted of the switch, in words. */
  readonly assumedFacts: readonly string[];
}

/** What {@link mechanicalSwitch} may be told. */
export interface SwitchOptions {
  /** Speeds to tabulate. */
  readonly speeds?: readonly Frequency[];
  /** A severity limit in velocity or displacement, e.g. `"7.1 mm/s rms"`. */
  readonly limit?: string | Amplitude;
}

const keys: Readonly<Record<keyof SwitchOptions, true>> = /* @__PURE__ */ Object.freeze({ speeds: true, limit: true });

const assumedFacts: readonly string[] = /* @__PURE__ */ Object.freeze([
  "all of the vibration is one sine at the stated frequency",
  "the setting is the peak acceleration at which the switch operates, without the weight of its armature (common practice, no source)",
]);

const LIMIT = { parameter: "options", option: "limit" };

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
  return withParameters({ options, setting }, () => {
    const { speeds = [], limit } = requireKnownOptions(options, keys, {
      what: "an option of a switch",
      form: 'options such as { limit: "7.1 mm/s rms" }',
    });
    const operates = inPlace({ parameter: "setting" }, () =>
      notedAmplitude(exactAmplitude(requireGiven(setting, 'a setting such as "2 g pk"')), "setting"),
    );
    if (operates.quantity !== "acceleration") {
      throw new VeladisError("wrong-quantity", {
        expected: 'the setting of an acceleration-operated switch, such as "2 g pk"',
        received: shown(`${operates.value} ${operates.unit} ${operates.detector}`),
      });
    }
    requirePositive(operates.value, "a setting above zero");
    const level =
      limit === undefined
        ? null
        : inPlace(LIMIT, () =>
            notedAmplitude(exactAmplitude(requireGiven(limit, 'a limit such as "7.1 mm/s rms"')), "limit"),
          );
    if (level?.quantity === "acceleration") {
      throw new VeladisError("wrong-quantity", {
        expected: "a severity limit in velocity or displacement",
        received: shown(limit),
        option: "limit",
      });
    }
    if (level !== null) requirePositive(level.value, "a limit above zero", LIMIT);
    const place = { parameter: "options", option: "speeds" };
    const rows = requireList(speeds, "a list of speeds", place).map((speed, index) =>
      inPlace({ ...place, index }, () => switchRow(operates, level, hertzOf(speed))),
    );
    const blind = level === null ? undefined : sineFrequency(operates, level);
    const parts = [
      operates.assumed,
      level?.assumed,
      ...rows.map((row) => row.assumed),
      level === null ? [] : conversionAssumes(linearTypeOf(operates), linearTypeOf(level)),
    ];
    return Object.freeze({
      setting: operates,
      rows: Object.freeze(rows),
      blindBelow: blind === undefined ? null : Object.freeze({ hertz: blind, speed: finiteResult(blind * 60) }),
      assumed: parts.reduce<readonly Assumption[]>((all, one) => union(all, one), []),
      assumedFacts,
    });
  });
}

/** What a setting means at one frequency, and against a limit if there is one. */
function switchRow(operates: Amplitude, limit: Amplitude | null, hertz: number): SwitchRow {
  const at = { at: { hertz } };
  const velocity = convertAmplitude(operates, "mm/s rms", at);
  const displacement = convertAmplitude(operates, "um pp", at);
  const most = limit === null ? null : convertAmplitude(limit, "mm/s rms", at);
  const timesLimit = most === null ? null : finiteResult(velocity.value / most.value);
  const way =
    most === null || timesLimit === null
      ? velocity
      : madeOf([velocity, most], {
          ...({ does: "scale", over: most.value, value: timesLimit, type: "" } as const),
          note: "times the limit",
        });
  return Object.freeze({
    hertz,
    speed: finiteResult(hertz * 60),
    velocity,
    displacement,
    timesLimit,
    protects: timesLimit === null ? null : timesLimit <= 1 + 1e-9,
    assumed: union(displacement.assumed, way.assumed),
    history: way.history as readonly Step[],
  });
}
