import { convertAmplitude } from "../amplitude/index";
import type { StoredSetpoint } from "../device/index";
import { significant } from "../reading/index";
import type { Baseline } from "./baseline";
import type { Proposal, ProposedSetpoint } from "./proposal";

/** A level on the one scale of a proposal. */
export interface ScaleRow {
  readonly name: string;
  readonly value: number;
  readonly text: string;
  readonly kind: "baseline" | "setpoint" | "mark";
  /** What the rules allow, or how far readings reach. */
  readonly span?: readonly [from: number, to: number];
  /** The level below which it clears. */
  readonly reset?: number;
}

/** A limit across the scale. */
export interface ScaleMark {
  readonly name: string;
  readonly value: number;
}

/** Levels and limits of a proposal, in its type. */
export interface ProposalScale {
  readonly rows: readonly ScaleRow[];
  readonly marks: readonly ScaleMark[];
  /** The end of the scale; it begins at zero. */
  readonly most: number;
}

const names = {
  zones: ["B/C", "C/D"],
  operation: ["alarm limit", "shutdown limit"],
} as const;

function setpointRow(name: string, setpoint: ProposedSetpoint | null): ScaleRow[] {
  if (setpoint === null) return [];
  const { stored, reset, range } = setpoint;
  return [
    {
      ...{ name, kind: "setpoint", value: stored.value, span: range, reset: reset.value },
      text: `${significant(stored.value, 4)}, clears below ${significant(reset.value, 4)}`,
    },
  ];
}

function baselineRow({ baseline }: Proposal, statistics: Baseline | undefined): ScaleRow[] {
  if (baseline === null) return [];
  const text = significant(baseline, 4);
  if (statistics === undefined) return [{ name: "baseline", kind: "baseline", value: baseline, text }];
  const { as, lowest, highest, count } = statistics;
  // the scale is that of the device, the readings have the baseline's own
  const { unit, detector } = statistics.level;
  const share = statistics.level.value === 0 || as !== `${unit} ${detector}` ? null : baseline / statistics.level.value;
  const plain = share !== null && Math.abs(share - 1) < 1e-9;
  return [
    {
      ...{ name: "baseline", kind: "baseline", value: baseline },
      ...(plain && { span: [lowest, highest] as const }),
      text: plain ? `${text}, ${count} readings from ${significant(lowest)} to ${significant(highest)}` : text,
    },
  ];
}

/** The levels of a proposal as rows on one scale, with its limits. */
export function scaleOfProposal(
  proposal: Proposal,
  { statistics, asked }: { readonly statistics?: Baseline; readonly asked?: Pick<StoredSetpoint, "stored"> } = {},
): ProposalScale {
  const { as, alarm, trip, raised, limits } = proposal;
  const own = asked && convertAmplitude(asked.stored, as);
  const up = (name: string, level: NonNullable<typeof raised>["trip"]): ScaleRow[] =>
    level === null ? [] : [{ name, kind: "mark", value: level.value, text: significant(level.value, 4) }];
  const rows: ScaleRow[] = [
    ...baselineRow(proposal, statistics),
    ...setpointRow("ALARM", alarm),
    ...setpointRow("TRIP", trip),
    ...(own ? [{ name: "as asked", kind: "mark", value: own.value, text: significant(own.value, 4) } as const] : []),
    ...(raised === undefined ? [] : [...up("raised ALARM", raised.alarm), ...up("raised TRIP", raised.trip)]),
  ];
  const marks: ScaleMark[] =
    limits === undefined
      ? []
      : [
          { name: names[limits.kind][0], value: limits.lower },
          ...(limits.upper === null ? [] : [{ name: names[limits.kind][1], value: limits.upper }]),
        ];
  const values = [...rows.flatMap(({ value, span = [] }) => [value, ...span]), ...marks.map(({ value }) => value)];
  return { rows, marks, most: 1.1 * Math.max(0, ...values) };
}
