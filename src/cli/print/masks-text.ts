import { significant } from "../../reading/index";
import type { TripMask, TripOutcome } from "../../trip/index";
import { hasThresholds, type Simulation, secondsText, type TimeText } from "./simulation-text";
import { textTable } from "./text-table";

/** A mask with its setting. */
function maskText(mask: TripMask, { logic, onDelay }: Simulation): string {
  const { inhibit, factor, multiplied, sensorFault } = logic.rules;
  const settings: Partial<Record<TripMask, string>> = {
    "on-delay": ` of ${secondsText(onDelay)} s`,
    "start inhibit": ` of ${secondsText(inhibit)} s`,
    multiplier: ` of ${factor} for ${secondsText(multiplied)} s`,
    "sensor fault": ` set to ${sensorFault}`,
  };
  return `without the ${mask}${settings[mask] ?? ""}`;
}

/** What came of it, in words. */
function outcomeText({ first, trips }: TripOutcome, timeText: TimeText): string {
  if (first === null) return "no trip";
  return trips === 1 ? `trip at ${timeText(first.time)}` : `${trips} trips, the first at ${timeText(first.time)}`;
}

/** One on-delay: a row a mask, with what would have happened without it. */
function rowsOf(simulation: Simulation, timeText: TimeText): string[][] {
  const { asSet, without, onDelayAlone, withoutAny, otherLatch } = simulation.unmasked;
  const hasDelay = without[0]?.mask === "on-delay";
  const said = (outcome: TripOutcome): string => outcomeText(outcome, timeText);
  return [
    ["as set", `${said(asSet)}; at the end ${asSet.end}`],
    ...without.map((one) => [maskText(one.mask, simulation), said(one)]),
    ...(hasDelay && without.length > 2 ? [["with the on-delay alone", said(onDelayAlone)]] : []),
    ...(without.length > 1 ? [["without any of these", said(withoutAny)]] : []),
    ...(asSet.trips + otherLatch.trips > 0
      ? [
          [
            otherLatch.latching ? "with a latch" : "without the latch",
            `${said(otherLatch)}; at the end ${otherLatch.end}`,
          ],
        ]
      : []),
  ];
}

/** Several on-delays: a column each, with the time of the first trip. */
function comparedRows(simulations: readonly Simulation[], timeText: TimeText): string[][] {
  const [first] = simulations as [Simulation];
  const row = (name: string, outcomeOf: (simulation: Simulation) => TripOutcome | undefined): string[] => [
    name,
    ...simulations.map((simulation) => {
      const trip = outcomeOf(simulation)?.first ?? null;
      return trip === null ? "-" : timeText(trip.time);
    }),
  ];
  const others = first.unmasked.without.map(({ mask }) => mask).filter((mask) => mask !== "on-delay");
  return [
    ...others.map((mask) =>
      row(maskText(mask, first), ({ unmasked }) => unmasked.without.find((one) => one.mask === mask)),
    ),
    ...(others.length > 1 ? [row("with the on-delay alone", ({ unmasked }) => unmasked.onDelayAlone)] : []),
    row("without an on-delay", ({ unmasked }) => {
      return unmasked.without.find(({ mask }) => mask === "on-delay") ?? unmasked.asSet;
    }),
    ...(others.length > 0 ? [row("without any of these", ({ unmasked }) => unmasked.withoutAny)] : []),
  ];
}

/** Several thresholds: a row each, with the time of the first trip without any mask, which no delay changes. */
function thresholdRows(simulations: readonly Simulation[], timeText: TimeText): string {
  const first = simulations.filter(
    ({ logic }, i) => simulations.findIndex((other) => other.logic.rules.setAt === logic.rules.setAt) === i,
  );
  return textTable(
    [{ title: "threshold" }, { title: "without any delay or other mask" }],
    first.map(({ logic: { rules }, unmasked }) => [
      `${significant(rules.threshold.value)} ${rules.type}`,
      outcomeText(unmasked.withoutAny, timeText),
    ]),
  );
}

/** What would have happened without each of the masks in force. */
export function masksText(simulations: readonly Simulation[], timeText: TimeText): string {
  const [first, ...more] = simulations as [Simulation, ...Simulation[]];
  if (more.length === 0)
    return `\n${textTable([{ title: "masks" }, { title: "what happens" }], rowsOf(first, timeText))}`;
  if (hasThresholds(simulations)) return `\n${thresholdRows(simulations, timeText)}`;
  const delays = simulations.map(({ onDelay }) => ({
    title: `${secondsText(onDelay)} s`,
    align: "right" as const,
  }));
  return `\n${textTable([{ title: "masks: first trip" }, ...delays], comparedRows(simulations, timeText))}`;
}
