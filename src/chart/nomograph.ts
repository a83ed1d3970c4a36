import { scaleLog } from "d3-scale";
import { convertAmplitude } from "../amplitude/index";
import {
  requireChoice,
  requireKnownKeys,
  requireList,
  requirePositive,
  requireText,
  shown,
  VeladisError,
  withParameters,
} from "../core/index";
import type { Detector } from "../detectors/index";
import { type Amplitude, amplitudeOf, format, typeOf } from "../reading/index";
import { assumedNotes } from "./assumed-notes";
import { logTicks, spacedTicks, tickText } from "./axis";
import { chartDocument, clipped } from "./chart-document";
import { type ChartOptions, requireOptions, requireWidth, textOrDefault } from "./chart-options";
import { diagonals, families, type LogFrame, type Obstacle } from "./diagonals";
import { label, stroke, tag } from "./markup";
import { nomographZones } from "./nomograph-zones";
import { requirePair } from "./require-pair";
import { shortened, widthOf } from "./text-width";
import { notDrawnNotes } from "./within";
import { type ChartSeverity, zonesFor } from "./zones";

/** A reading shown as a point; its frequency must be known. */
export interface NomographReading {
  readonly reading: string | Amplitude;
  /** Words beside the point; the reading itself if not given. */
  readonly label?: string;
}

/** What {@link nomograph} draws. */
export interface NomographOptions extends Omit<ChartOptions, "height"> {
  /** Readings with their frequencies, e.g. `"4.1 mm/s rms at 1490 r/min"`. */
  readonly readings?: readonly (string | Amplitude | NomographReading)[];
  /** A table and a machine whose zones are shown. */
  readonly severity?: ChartSeverity;
  /** Detector of all scales; `"rms"` if not given. */
  readonly detector?: Detector;
  /** Units of the diagonals; velocity is shown in both systems in any case. */
  readonly units?: keyof typeof families;
  /** Frequencies shown, in hertz; 1 to 2000 if not given. */
  readonly frequency?: readonly [low: number, high: number];
  /** Velocities shown, in mm/s; 0.1 to 100 if not given. */
  readonly velocity?: readonly [low: number, high: number];
}

const own = /* @__PURE__ */ Object.freeze({
  readings: true,
  severity: true,
  detector: true,
  units: true,
  frequency: true,
  velocity: true,
} as const);

const readingKeys = /* @__PURE__ */ Object.freeze({ reading: true, label: true });

const LEFT = 46;
const RIGHT = 52;

/** The frame holds no more than this: each decade has lines of its own. */
const LEAST = 1e-12;
const MOST = 1e12;

function range(given: readonly [number, number] | undefined, usual: readonly [number, number], what: string) {
  const [low, high] = requirePair(given ?? usual, what);
  requirePositive(low, `${what} above zero`);
  if (requirePositive(high, `${what} above zero`) / low >= 2 && low >= LEAST && high <= MOST)
    return [low, high] as const;
  throw new VeladisError("out-of-range", {
    expected: `${what} from low to high, the high one twice the low one or more, within ${LEAST} to ${MOST}`,
    received: `${low} to ${high}`,
  });
}

interface Placed {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

/** Which side of its point words stand: right, left where the right has no room, above or below it where neither has. */
function sideOf(x: number, long: number, width: number): 1 | -1 | 0 {
  if (x + 12 + long <= width) return 1;
  return x - 15 - long >= 0 ? -1 : 0;
}

/** Points with their words, which step aside for one another and for the edge; and the places they take. */
function points(placed: readonly Placed[], width: number): { markup: string; taken: Obstacle[] } {
  const rows: number[] = [];
  const taken: Obstacle[] = [];
  const markup = [...placed]
    .sort((a, b) => a.y - b.y)
    .map(({ x, y, text }) => {
      const long = widthOf(text);
      const side = sideOf(x, long, width);
      const isTaken = (row: number): boolean => rows.some((other) => Math.abs(other - row) < 14);
      let row = side !== 0 ? y + 4 : isTaken(y - 11) ? y + 20 : y - 11;
      while (isTaken(row)) row += 2;
      rows.push(row);
      const middle = Math.min(Math.max(x, long / 2 + 4), width - long / 2 - 4);
      const start = side === 0 ? middle - long / 2 : x;
      for (let along = 0; along < long + 12; along += 9) taken.push([start + (side || 1) * along, row - 4]);
      const words = label(side === 0 ? middle : x + side * 11, row, text, {
        kind: "halo",
        "text-anchor": (["end", "middle", "start"] as const)[side + 1],
      });
      return tag("circle", { kind: "point", cx: x, cy: y, r: 5.5 }) + words;
    })
    .join("");
  return { markup, taken };
}

/**
 * The log-log nomograph of a sine: velocity up, frequency along, displacement and acceleration as diagonals, with the
 * zones of a severity table and readings as points.
 *
 * Decades are as long upwards as along, so that the diagonals stand at 45 degrees. Where a table limits several
 * quantities, a zone ends at the lowest of them. A reading stands at its stated frequency: for an overall that is
 * right only where one frequency dominates.
 *
 * @param options - `readings`, `severity`, `detector`, `units`, ranges in hertz and mm/s, and {@link ChartOptions}
 * @returns an SVG document as text
 * @throws {@link VeladisError} `missing-frequency` for a reading without one, `not-positive` for a reading of zero,
 *   `out-of-range`, and as {@link parseAmplitude} and `limitsFor`
 * @example
 * ```ts
 * import { nomograph } from "veladis/chart";
 *
 * const svg = nomograph({
 *   readings: [{ reading: "0.25 in/s pk at 1490 r/min", label: "fan, drive end" }],
 *   severity: { scheme: "iso-10816-3-2009", machine: "group 1 rigid" },
 * });
 * svg.includes("fan, drive end"); // => true
 * nomograph({ readings: ["4.1 mm/s rms"] }); // throws missing-frequency
 * ```
 */
export function nomograph(options: NomographOptions = {}): string {
  return withParameters({ options }, () => {
    const {
      readings = [],
      severity,
      detector = "rms",
      units = "metric",
    } = requireOptions(options, own, 'options such as { readings: ["4.1 mm/s rms at 1490 r/min"] }');
    requireChoice(units, Object.keys(families), "units of the diagonals", { option: "units" });
    const { type: as } = typeOf("mm/s", requireText(detector, "a detector", { option: "detector" }));
    const frequency = range(options.frequency, [1, 2000], "frequencies in Hz");
    const velocity = range(options.velocity, [0.1, 100], "velocities in mm/s");
    const room = requireWidth(options) - LEFT - RIGHT;
    const [along, up] = [frequency, velocity].map(([low, high]) => Math.log10(high / low)) as [number, number];
    // never much higher than wide: what a page can show
    const decade = Math.min(room / along, (1.4 * room) / up);
    const width = Math.round(decade * along);
    const height = Math.round(decade * up);
    const x = scaleLog(frequency, [0, width]);
    const y = scaleLog(velocity, [height, 0]);
    const frame: LogFrame = { x, y, frequency, velocity, as, decade };
    const shownPoints = requireList(readings, "a list of readings", { option: "readings" }).map((one) => {
      const { reading, label: words } =
        typeof one === "object" && "reading" in one
          ? requireKnownKeys(one, readingKeys, "a part of a reading on the nomograph")
          : { reading: one, label: undefined };
      const amplitude = amplitudeOf(reading);
      if (amplitude.hertz === undefined) {
        throw new VeladisError("missing-frequency", {
          expected: `a reading with its frequency, as in "4.1 mm/s rms at 1490 r/min"`,
          received: shown(typeof reading === "string" ? reading : format(reading)),
        });
      }
      const { value, assumed } = convertAmplitude(amplitude, as);
      requirePositive(value, "a reading above zero, since a logarithmic scale has no zero", { option: "value" });
      return {
        x: x(amplitude.hertz),
        y: y(value),
        text: shortened(textOrDefault(words, format(amplitude), "a label", "label"), width),
        value,
        hertz: amplitude.hertz,
        assumed,
        history: amplitude.history,
      };
    });
    const zones = severity === undefined ? undefined : zonesFor(severity);
    const areas = zones === undefined ? undefined : nomographZones(zones, frame, height);
    const dots = points(shownPoints, width);
    const outside = shownPoints.filter((p) => p.x < 0 || p.x > width || p.y < 0 || p.y > height).length;
    const inches = y.copy().domain(velocity.map((v) => v / 25.4));
    const turns = x.copy().domain(frequency.map((f) => f * 60));
    const foot = spacedTicks(logTicks(frequency[0], frequency[1], x, 40), (text) => widthOf(text) + 6);
    const side = logTicks(velocity[0], velocity[1], y, 18);
    const right = spacedTicks(logTicks(velocity[0] / 25.4, velocity[1] / 25.4, inches, 18), () => 14);
    const head = spacedTicks(logTicks(frequency[0] * 60, frequency[1] * 60, turns, 52), (text) => widthOf(text) + 10);
    const middle = { "text-anchor": "middle" };
    return chartDocument(options, {
      title: "Velocity, displacement and acceleration of a sine",
      description:
        `Nomograph of velocity in mm/s and in/s ${detector} against frequency in Hz and r/min, with diagonals of displacement and acceleration.` +
        `${zones === undefined ? "" : ` Zones ${zones.names.join(", ")}.`}` +
        shownPoints
          .map(
            ({ text, value, hertz }) =>
              ` ${text}: ${format(value, as)} at ${tickText(Number(hertz.toPrecision(4)))} Hz.`,
          )
          .join(""),
      notes: [
        ...(zones?.notes ?? []),
        ...(zones?.band ? [`Zones from ${zones.band.join(" to ")} Hz, which the table judges; none beyond.`] : []),
        ...(shownPoints.length > 0
          ? ["Each reading stands at its stated frequency, as if it were all of the vibration."]
          : []),
        ...notDrawnNotes(shownPoints),
        ...assumedNotes(
          [...shownPoints.flatMap(({ assumed }) => assumed), ...(areas?.assumed ?? [])],
          zones?.assumedFacts,
        ),
        ...(outside > 0 ? [`${outside} of ${shownPoints.length} readings lie outside the frame.`] : []),
      ],
      left: LEFT,
      right: RIGHT,
      top: 42,
      bottom: 38,
      plotHeight: height,
      plot: [
        clipped(width, height, areas?.areas ?? ""),
        ...foot.map(({ at }) => stroke([at, 0], [at, height], "grid")),
        ...side.map(({ at }) => stroke([0, at], [width, at], "grid")),
        clipped(
          width,
          height,
          diagonals(units, detector, frame, [...(areas?.taken ?? []), ...dots.taken]),
          areas?.letters ?? "",
        ),
        tag("path", { kind: "axis", fill: "none", d: `M0,0H${Math.round(width)}V${height}H0Z` }),
        ...foot.map(({ at, text }) => label(at, height + 17, text, middle)),
        ...side.map(({ at, text }) => label(-7, at + 4, text, { "text-anchor": "end" })),
        ...right.map(({ at, text }) => stroke([width, at], [width + 4, at], "axis") + label(width + 8, at + 4, text)),
        ...head.map(({ at, text }) => stroke([at, -4], [at, 0], "axis") + label(at, -9, text, middle)),
        label(-38, -26, as, { kind: "unit" }),
        label(width + RIGHT - 12, -26, `in/s ${detector}`, { kind: "unit", "text-anchor": "end" }),
        label(width / 2, -26, "r/min", { kind: "unit", ...middle }),
        label(width / 2, height + 34, "Hz", { kind: "unit", ...middle }),
        clipped(width, height, dots.markup),
      ].join(""),
    });
  });
}
