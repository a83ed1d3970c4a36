import { convertAmplitude, linearTypeOf } from "../amplitude/index";
import { kilogramsOrNone } from "../balance/index";
import {
  finiteResult,
  inPlace,
  requireGiven,
  requireKnownKeys,
  requireList,
  requirePositive,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import { type Frequency, hertz as hertzOf } from "../frequency/index";
import { type Amplitude, type Assumption, amplitudeIn, exactAmplitude, format, union } from "../reading/index";

/** The limits of a reference shaker, from its data sheet. */
export interface Shaker {
  readonly name?: string;
  readonly lowest: Frequency;
  readonly highest: Frequency;
  /** The frequencies that it gives, where they are fixed, e.g. `["40 Hz", "80 Hz", "159.2 Hz"]`. */
  readonly frequencies?: readonly Frequency[];
  /** The level that it gives, where it gives one alone, e.g. `"10 mm/s rms"`. */
  readonly level?: string | Amplitude;
  /** Stroke, e.g. `"5 mm pp"`. */
  readonly displacement?: string;
  /** e.g. `"500 mm/s pk"`. */
  readonly velocity?: string;
  /** With a bare table, e.g. `"6 g pk"`. */
  readonly acceleration?: string;
  /** Peak force in newtons; with the moving mass it limits the acceleration under load. */
  readonly force?: { readonly newtons: number };
  /** Moving mass of the shaker itself, e.g. `"0.2 kg"`. */
  readonly movingMass?: string;
  /** Largest mass that may be mounted, e.g. `"1.5 kg"`. */
  readonly payload?: string;
  /** The smallest step in which its level is set, e.g. `"0.1 mm/s rms"`. */
  readonly resolution?: string;
  /** Uncertainty of its level: `"2 % (k=2)"`; without a coverage factor a bound with equal chance within. */
  readonly uncertainty?: string;
}

/** Whether a shaker can give a level, and what forbids it if not. */
export interface ShakerReach {
  readonly possible: boolean;
  /** What forbids it: `"frequency"`, `"level"`, `"resolution"`, `"stroke"`, `"velocity"`, `"acceleration"`, `"force"`, `"payload"`. */
  readonly limitedBy: readonly string[];
  /** The highest level at this frequency, in the type asked for; null outside the frequencies of the shaker. */
  readonly highest: number | null;
  /** What was assumed in the level and in bringing the limits of the shaker to its unit. */
  readonly assumed: readonly Assumption[];
}

const keys: Readonly<Record<keyof Shaker, true>> = /* @__PURE__ */ Object.freeze({
  name: true,
  lowest: true,
  highest: true,
  frequencies: true,
  level: true,
  displacement: true,
  velocity: true,
  acceleration: true,
  force: true,
  movingMass: true,
  payload: true,
  resolution: true,
  uncertainty: true,
});

const limits = ["displacement", "velocity", "acceleration"] as const;

const LOAD = 'a mass of sensor and fixture of zero or more, such as "0.2 kg"';
const MOVING = 'a moving mass of the shaker of zero or more, such as "0.2 kg"';
const PAYLOAD = 'a payload of zero or more, such as "0.5 kg"';

/** Whether a level is the one that a shaker gives, but for the rounding of a number that was written. */
function isSameLevel(one: number, own: number): boolean {
  return Math.abs(one - own) <= 1e-6 * own;
}

/** The lowest or the highest frequency of a shaker in hertz. */
function edgeOf(shaker: Shaker, option: "lowest" | "highest"): number {
  return inPlace({ parameter: "shaker", option }, () => hertzOf(shaker[option]));
}

/**
 * The frequencies in hertz of a shaker that has fixed ones, one or several; undefined for one that is set in a range.
 *
 * @throws {@link VeladisError} `missing-option` for an empty list, and as {@link hertzOf}
 */
export function fixedHertz(shaker: Shaker): readonly number[] | undefined {
  const { frequencies } = shaker;
  if (frequencies === undefined) {
    const lowest = edgeOf(shaker, "lowest");
    return lowest === edgeOf(shaker, "highest") ? [lowest] : undefined;
  }
  const place = { parameter: "shaker", option: "frequencies" };
  const fixed = requireList<Frequency>(frequencies, "a list of the frequencies of a shaker", place).map((one, index) =>
    inPlace({ ...place, index }, () => hertzOf(one)),
  );
  if (fixed.length > 0) return fixed;
  throw new VeladisError("missing-option", {
    expected: 'at least one frequency of a shaker with fixed ones, such as "159.2 Hz"',
    received: "nothing",
    ...place,
  });
}

/** The step in which a shaker sets its level, in a type at a frequency; undefined where none is told. */
export function resolutionOf({ resolution }: Shaker, type: string, hertz: number): Amplitude | undefined {
  if (resolution === undefined) return undefined;
  const step = convertAmplitude(resolution, type, { at: { hertz } });
  requirePositive(step.value, "a resolution of the shaker above zero", { option: "value" });
  return step;
}

/**
 * Whether a shaker can give a level at a frequency with a mass mounted on it.
 *
 * @param level - with its frequency in hertz
 * @param load - mass of sensor and fixture, e.g. `"0.2 kg"`
 * @throws {@link VeladisError} `missing-frequency`, `not-positive`, `negative`, `unknown-option` for a mistyped key, and as {@link convertAmplitude}
 * @example
 * ```ts
 * import { shakerReach } from "veladis/protection";
 *
 * const shaker = { lowest: "8 Hz", highest: "3 kHz", displacement: "5 mm pp", acceleration: "6 g pk" } as const;
 * shakerReach("9 mm/s rms at 2400 r/min", shaker, "0.2 kg").possible; // => true
 * shakerReach("200 mm/s rms at 2400 r/min", shaker, "0.2 kg").limitedBy; // => ["acceleration"]
 * shakerReach("120 mm/s rms at 600 r/min", shaker, "0.2 kg").limitedBy; // => ["stroke"]
 * const handheld = { lowest: "159.2 Hz", highest: "159.2 Hz", level: "10 mm/s rms" } as const;
 * shakerReach("9 mm/s rms at 159.2 Hz", handheld, "0.2 kg").limitedBy; // => ["level"]
 * const fixed = { lowest: "40 Hz", highest: "159.2 Hz", frequencies: ["40 Hz", "159.2 Hz"] } as const;
 * shakerReach("9 mm/s rms at 80 Hz", fixed, "0.2 kg").limitedBy; // => ["frequency"]
 * ```
 */
export function shakerReach(level: string | Amplitude, shaker: Shaker, load: string): ShakerReach {
  return withParameters({ load, level, shaker }, () => {
    const wanted = inPlace({ parameter: "level" }, () =>
      exactAmplitude(requireGiven(level, "a level with its frequency")),
    );
    requireKnownKeys(
      requireGiven(shaker, "a shaker with its limits", { parameter: "shaker" }),
      keys,
      "a limit of a shaker",
    );
    const type = linearTypeOf(wanted);
    const { hertz } = wanted;
    if (hertz === undefined) {
      throw new VeladisError("missing-frequency", {
        expected: 'a level with its frequency, such as "8 mm/s rms at 2400 r/min"',
        received: shown(format(wanted)),
        parameter: "level",
      });
    }
    const mass = kilogramsOrNone(load, LOAD, { parameter: "load" });
    const at = { at: { hertz } };
    const limitedBy: string[] = [];
    const fixed = fixedHertz(shaker);
    const inside =
      hertz >= edgeOf(shaker, "lowest") * (1 - 1e-9) &&
      hertz <= edgeOf(shaker, "highest") * (1 + 1e-9) &&
      (fixed === undefined || fixed.some((one) => Math.abs(one - hertz) <= 1e-9 * one));
    if (!inside) limitedBy.push("frequency");
    let highest = Number.POSITIVE_INFINITY;
    let assumed: readonly Assumption[] = wanted.assumed ?? [];
    const hold = (limit: string | Amplitude, name: string): void => {
      const most = inPlace({ parameter: "shaker", option: name }, () => convertAmplitude(limit, type, at));
      if (wanted.value > most.value * (1 + 1e-9)) limitedBy.push(name);
      highest = Math.min(highest, most.value);
      assumed = union(assumed, most.assumed);
    };
    if (shaker.level !== undefined) {
      const own = inPlace({ parameter: "shaker", option: "level" }, () =>
        convertAmplitude(shaker.level as string, type, at),
      );
      if (!isSameLevel(wanted.value, own.value)) limitedBy.push("level");
      highest = own.value;
      assumed = union(assumed, own.assumed);
    }
    const step = resolutionOf(shaker, type, hertz);
    if (step !== undefined) {
      const steps = wanted.value / step.value;
      if (Math.abs(steps - Math.round(steps)) > 1e-6 * Math.max(1, steps)) limitedBy.push("resolution");
      assumed = union(assumed, step.assumed);
    }
    for (const name of limits) {
      const most = shaker[name];
      if (most !== undefined) hold(most, name === "displacement" ? "stroke" : name);
    }
    if (shaker.force !== undefined) {
      const own =
        shaker.movingMass === undefined ? 0 : kilogramsOrNone(shaker.movingMass, MOVING, { option: "movingMass" });
      const moved = requirePositive(mass + own, "a moving mass above zero, in kg");
      const force = requireGiven(shaker.force, "a force such as { newtons: 100 }", { option: "force" });
      const acceleration = finiteResult(
        requirePositive(force.newtons, "a force above zero, in N", { option: "newtons" }) / moved,
      );
      hold(amplitudeIn("m/s2 pk", acceleration), "force");
    }
    if (
      shaker.payload !== undefined &&
      mass > kilogramsOrNone(shaker.payload, PAYLOAD, { option: "payload" }) * (1 + 1e-9)
    ) {
      limitedBy.push("payload");
    }
    return Object.freeze({
      possible: limitedBy.length === 0,
      limitedBy: Object.freeze(limitedBy),
      highest: inside && Number.isFinite(highest) ? highest : null,
      assumed,
    });
  });
}
