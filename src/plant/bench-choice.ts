import { convertAmplitude } from "../amplitude/index";
import { inPlace } from "../core/index";
import { type Amplitude, amplitudeIn, significant, wholeSteps } from "../reading/index";
import { type Shaker, shakerReach } from "../verification/index";
import { levelWithin } from "./bench-level";
import { type BenchWindow, benchWindow, type NoWindow, SHAKER_TYPE } from "./bench-window";
import type { PlantMachine } from "./plant-machine";

/** One level of a shaker, and the windows that it lies in. */
export interface ChosenLevel {
  readonly level: number;
  readonly windows: readonly BenchWindow[];
}

/** What a shaker can do at one frequency, in {@link SHAKER_TYPE}. */
interface Ability {
  readonly only: number | undefined;
  readonly most: number;
  readonly step: number | undefined;
}

function abilityAt(hertz: number, shaker: Shaker, load: string): Ability | undefined {
  const at = { at: { hertz } };
  const levelIn = (level: string | Amplitude): number => convertAmplitude(level, SHAKER_TYPE, at).value;
  const only = shaker.level === undefined ? undefined : levelIn(shaker.level);
  const step = shaker.resolution === undefined ? undefined : levelIn(shaker.resolution);
  const { highest, limitedBy } = shakerReach({ ...amplitudeIn(SHAKER_TYPE, only ?? step ?? 1), hertz }, shaker, load);
  if (limitedBy.includes("frequency") || limitedBy.includes("payload")) return undefined;
  return { only, most: highest ?? Number.POSITIVE_INFINITY, step };
}

/** A window as far as the shaker reaches and its steps lie in it; or why it has none. */
function reached(window: BenchWindow, hertz: number, { only, most, step }: Ability): BenchWindow | NoWindow {
  const { lowest, highest } = window;
  const range = `${significant(lowest)} to ${significant(highest)} ${SHAKER_TYPE} at ${significant(hertz)} Hz`;
  const slack = 1e-9 * highest;
  if (only !== undefined) {
    if (only >= lowest - slack && only <= highest + slack) return { ...window, lowest: only, highest: only };
    const why = `the one level of the shaker, ${significant(only)} ${SHAKER_TYPE}, is not in ${range}`;
    return { why, mend: "take a shaker whose level can be set, or inject a signal by a plan of its own" };
  }
  const end = Math.min(highest, most);
  const low = step === undefined ? lowest : wholeSteps(lowest, step, "up");
  const high = step === undefined ? end : wholeSteps(end, step, "down");
  if (low <= high) return { ...window, lowest: low, highest: high };
  const why =
    lowest > most
      ? `the shaker gives no more than ${significant(most)} ${SHAKER_TYPE}`
      : "no step of the shaker lies within";
  return {
    why: `${why}: the check asks for ${range}`,
    mend: "take a shaker that reaches it, another frequency in the band, or inject a signal",
  };
}

/** The level in most windows: of several the lowest; undefined where there are none. */
function mostServing(windows: readonly BenchWindow[], step: number | undefined): ChosenLevel | undefined {
  const byLowest = [...windows].sort((a, b) => a.lowest - b.lowest);
  const ends = windows.map(({ highest }) => highest).sort((a, b) => a - b);
  let [best, at, closed] = [0, 0, 0];
  for (const [i, { lowest }] of byLowest.entries()) {
    while ((ends[closed] as number) < lowest * (1 - 1e-9)) closed++;
    if (i + 1 - closed <= best) continue;
    best = i + 1 - closed;
    at = lowest;
  }
  if (best === 0) return undefined;
  const there = windows.filter(({ lowest, highest }) => lowest <= at && highest >= at * (1 - 1e-9));
  const highest = Math.min(...there.map((one) => one.highest));
  return { level: levelWithin(at, Math.max(at, highest), step), windows: there };
}

/** A frequency to test at, and what is asked of the shaker there. */
export interface BenchCandidate {
  readonly hertz: number;
  /** Why no level serves a machine there; undefined where one does. */
  refusal(machine: PlantMachine): NoWindow | undefined;
  /** The level that serves most of some machines. */
  best(machines: ReadonlySet<PlantMachine>): ChosenLevel | undefined;
}

/** What a shaker can do for machines at a frequency; undefined where it cannot run there, or not with this mass on it. */
export function benchCandidate(
  hertz: number,
  machines: readonly PlantMachine[],
  shaker: Shaker,
  load: string,
): BenchCandidate | undefined {
  const ability = abilityAt(hertz, shaker, load);
  if (ability === undefined) return undefined;
  const windows = new Map<PlantMachine, BenchWindow | NoWindow>();
  for (const machine of machines) {
    const window = inPlace({ parameter: "plant" }, () => benchWindow(machine, hertz));
    windows.set(machine, "why" in window ? window : reached(window, hertz, ability));
  }
  return {
    hertz,
    refusal(machine) {
      const window = windows.get(machine);
      return window !== undefined && "why" in window ? window : undefined;
    },
    best: (left) =>
      mostServing(
        [...left].flatMap((machine) => {
          const window = windows.get(machine);
          return window === undefined || "why" in window ? [] : [window];
        }),
        ability.only ?? ability.step,
      ),
  };
}
