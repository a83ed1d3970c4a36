import { convertAmplitude, currentLoop, linearTypeOf, sensor } from "../amplitude/index";
import { cautions, finiteResult, inPlace, requireGiven, shown, VeladisError, withParameters } from "../core/index";
import { hertz as hertzOf } from "../frequency/index";
import { type Amplitude, format, type Rounding, significant, union, wholeSteps } from "../reading/index";
import { benchBase, levelOfMove } from "./bench-base";
import type { Output } from "./bench-move";
import { atLeast, type BenchNumbers, type BenchWords, benchMoves, clearMove, setMove, sureLevels } from "./bench-moves";
import { IN_BAND, responseOf } from "./bench-notes";
import { orderedMoves, type PlacedMove } from "./bench-order";
import { REFERENCE } from "./bench-plan";
import { type BenchSettings, requireBenchSettings } from "./bench-settings";
import { currentAt, loopNotes, voltageAt } from "./bench-signals";
import type { InjectionPlan, InjectionStep } from "./bench-step";
import { contactText } from "./bench-texts";
import { settingsTold, toldRows } from "./bench-told";
import { movedByCurrent } from "./current-uncertainty";
import { type Injection, injectionWay } from "./injection";
import { injectionNotes, saidBeforeInjection, uncertaintyTold } from "./injection-notes";

export type { Injection } from "./injection";

/** The frequency of an injected voltage; none of a current. */
function injectedHertz(settings: BenchSettings, inject: Injection["inject"]): number | null {
  const { frequencies = [REFERENCE], band } = settings;
  if (inject === "mA") {
    if (settings.frequencies === undefined && band === undefined) return null;
    throw new VeladisError("unknown-option", {
      expected: "neither frequencies nor a band: a current of a loop has no frequency",
      received: settings.frequencies === undefined ? "a band" : "frequencies",
      option: settings.frequencies === undefined ? "band" : "frequencies",
    });
  }
  const [first, ...more] = frequencies;
  if (first === undefined || more.length > 0) {
    throw new VeladisError("out-of-range", {
      expected: "one frequency of the voltage that is injected",
      received: `${frequencies.length}`,
      option: "frequencies",
    });
  }
  const hertz = inPlace({ option: "frequencies" }, () => hertzOf(first));
  const response = responseOf(settings, hertz);
  if (response >= IN_BAND) return hertz;
  throw new VeladisError("out-of-range", {
    expected: "a frequency within the band of the device, since it proves the trip",
    received: `${significant(hertz)} Hz, where it reads ${significant(response)} of the level`,
    option: "frequencies",
  });
}

/** A line from levels to signals: `signal = offset + slope x level`. */
function lineOf(threshold: Amplitude, { inject, way }: ReturnType<typeof injectionWay>) {
  const type = linearTypeOf(threshold);
  const at = threshold.hertz === undefined ? {} : { at: { hertz: threshold.hertz } };
  if (inject === "mV") {
    return { offset: 0, slope: sensor(way).voltage({ ...threshold, value: 1 }, `mV ${threshold.detector}`).value };
  }
  const [start, end] = [4, 20].map((one) => convertAmplitude(currentLoop(way).reading(one), type, at).value) as [
    number,
    number,
  ];
  const slope = 16 / (end - start);
  return { offset: 4 - slope * start, slope: finiteResult(slope) };
}

/**
 * The steps that prove a device by a signal in the place of its sensor or transmitter, through the relay to the final
 * element: where no shaker fits, or the machine's whole path to the trip is to be proven.
 *
 * It proves nothing of sensor, mounting and cable, and says so. Its cautions come first: a signal trips a running machine.
 *
 * @param settings - as stored in the device, with `loop` for milliamperes and `sensor` for millivolts
 * @param injection - what is injected, and how well the source is known
 * @throws {@link VeladisError} `missing-option`, `out-of-range`, `unknown-option` for a mistyped key or a frequency of a
 *   current, and as {@link benchPlan}
 * @example
 * ```ts
 * import { injectionPlan } from "veladis/protection";
 *
 * const settings = { threshold: "7.6 mm/s rms", hysteresis: "5 %", onDelay: 4, latching: true } as const;
 * const plan = injectionPlan({ ...settings, loop: "0 to 20 mm/s rms" }, { inject: "mA" });
 * plan.steps[0]?.signals; // => [{ value: 5.52, type: "mA", by: "0 to 20 mm/s rms" }]
 * plan.steps.at(-1)?.what.includes("final element"); // => true
 * injectionPlan(settings, { inject: "mA" }); // throws missing-option
 * ```
 */
export function injectionPlan(settings: BenchSettings, injection: Injection): InjectionPlan {
  return withParameters({ injection, settings }, () => {
    requireBenchSettings(
      requireGiven(settings, "settings with threshold, hysteresis, onDelay and latching", { parameter: "settings" }),
    );
    const way = injectionWay(
      requireGiven(injection, 'an injection such as { inject: "mA" }', { parameter: "injection" }),
      settings,
    );
    const { inject, step } = way;
    const hertz = inPlace({ parameter: "settings" }, () => injectedHertz(settings, inject));
    const {
      threshold: plain,
      reset,
      numbers: base,
      assumed: first,
    } = benchBase(settings, inject === "mA" ? undefined : injection.uncertainty, "source");
    const threshold = hertz === null ? plain : { ...plain, hertz };
    const line = inPlace({ parameter: "settings" }, () => lineOf(threshold, way));
    const { offset, slope } = line;
    const settable = (share: number, side: Rounding): number => {
      const exact = offset + slope * threshold.value * share;
      const set = wholeSteps(exact, step ?? 10 ** (Math.floor(Math.log10(exact)) - 2), side);
      const level = (set - offset) / slope;
      if (level > 0) return finiteResult(level / threshold.value);
      throw new VeladisError("out-of-range", {
        expected: `a resolution of the source that sets ${format({ ...threshold, value: threshold.value * share })}`,
        received: shown(injection.resolution),
        option: "resolution",
      });
    };
    const words: BenchWords = {
      source: "source",
      off: inject === "mA" ? "current back to 4 mA" : "signal to 0 mV",
      input: "signal",
    };
    const response = hertz === null ? 1 : responseOf(settings, hertz);
    const ofCurrent =
      inject === "mA" && injection.uncertainty !== undefined
        ? { moved: movedByCurrent(injection.uncertainty, threshold, line) }
        : {};
    const numbers: BenchNumbers = { ...base, ...ofCurrent, response, own: undefined, settable, words };
    const element = injection.finalElement ?? "the final element (breaker, contactor or stop valve)";
    const last: PlacedMove = {
      what: `with the machine stopped and the relay joined to ${element}: raise to above the threshold and take the time up to where it has moved`,
      share: atLeast(sureLevels(1, numbers).over, numbers),
      hertz,
      from: "clear",
      leaves: "set",
      expect: `trip after ${settings.onDelay} s${contactText(settings, "tripped")}; every link from the relay on acts in turn, and ${element} moves to its safe state: note each, and the time`,
    };
    const signalOf = (level: Amplitude) => (inject === "mA" ? currentAt : voltageAt)(level, way.way);
    const canDo = (move: PlacedMove): boolean => {
      const level = levelOfMove(threshold, move);
      return level === null || signalOf(level).carried;
    };
    let assumed = first;
    const stepOf = (move: PlacedMove, number: number): InjectionStep => {
      const level = levelOfMove(threshold, move);
      const at = level === null ? null : signalOf(level);
      assumed = union(assumed, at?.assumed);
      return Object.freeze({
        number,
        what: move.what,
        hertz,
        speed: hertz === null ? null : finiteResult(60 * hertz),
        level,
        displacement: null,
        acceleration: null,
        signals: Object.freeze(at === null ? [] : [Object.freeze(at.signal)]),
        possible: at?.carried ?? true,
        limitedBy: at === null || at.carried ? [] : ["loop"],
        expect: move.expect,
      });
    };
    const moves = [...benchMoves(settings, numbers).map((move) => ({ ...move, hertz })), last];
    const between = {
      clear: (output: Output) => clearMove(settings, output, words),
      set: setMove(settings, numbers),
      source: words.source,
    };
    const steps = inPlace({ parameter: "settings" }, () =>
      orderedMoves(moves, canDo, between).map((move, i) => stepOf(move, i + 1)),
    );
    const cannot = steps.filter(({ possible }) => !possible);
    return Object.freeze({
      threshold: plain,
      reset,
      assumed,
      steps: Object.freeze(steps),
      possible: cannot.length === 0,
      told: Object.freeze([
        ...settingsTold(settings, plain, reset),
        ...toldRows([
          ["injected", `${inject} by ${way.way}`],
          [
            "source, smallest step",
            injection.resolution ?? (inject === "mA" ? "0.01 mA, taken" : "three digits, taken"),
          ],
          ["source, uncertainty", uncertaintyTold(injection)],
          ["final element", injection.finalElement],
        ]),
      ]),
      before: saidBeforeInjection(injection, cannot),
      notes: Object.freeze([...loopNotes(threshold, settings), ...injectionNotes(settings, injection, hertz)]),
      cautions,
    });
  });
}
