import { tickText } from "./axis";
import { type Attributes, label, rounded, tag } from "./markup";
import { shortened, widthOf } from "./text-width";
import type { TripPlayback, TripSegment } from "./trip-playback";

const LANE = 26;
/** From the top of a lane to that of the next: its name stands between. */
const STEP = 48;

/** Height of the lanes below a plot. */
export const LANES = 144;

/** A span of a lane: what it says, and whether the contact has tripped in it. */
interface Span {
  readonly from: number;
  to: number;
  readonly text: string;
  strong: boolean;
  /** Stands in the span where its words have no room. */
  readonly number?: number;
}

/** Spans too short to be seen made one with those beside them; one that holds a trip shows it. */
function mergedSpans(spans: readonly Span[], x: (time: number) => number): Span[] {
  const kept: Span[] = [];
  for (const span of spans) {
    const last = kept.at(-1);
    const short = last !== undefined && x(last.to) - x(last.from) < 1.5;
    if (short && x(span.to) - x(last.from) < 1.5) {
      last.to = span.to;
      last.strong ||= span.strong;
    } else kept.push({ ...span });
  }
  return kept;
}

/** The sizes that words of a lane may have, with the room that they leave about them. */
const sizes = [
  { size: 12, margin: 8 },
  { size: 10.5, margin: 3 },
] as const;

/** The size in which words stand in a span whole; undefined where they do not. */
function sizeIn(text: string, room: number): number | undefined {
  return sizes.find(({ size, margin }) => widthOf(text, size) + margin <= room)?.size;
}

/** Narrowest span that holds a number in the place of its words. */
const LEAST = 13;

/** A lane with a block for each span, and words in those that have room for them whole. */
function blocks(spans: readonly Span[], x: (time: number) => number, top: number): string {
  return mergedSpans(spans, x)
    .map(({ from, to, text, strong, number }) => {
      const [left, right] = [x(from), x(to)];
      const room = right - left;
      const body: Attributes = {
        kind: strong ? "on" : "lane",
        x: left,
        y: top,
        width: Math.max(room - 1, 1),
        height: LANE,
      };
      const size = sizeIn(text, room);
      const words = size !== undefined ? text : room >= LEAST && number !== undefined ? `${number}` : "";
      return (
        tag("rect", body) +
        label((left + right) / 2, top + LANE / 2 + 4, words, {
          "text-anchor": "middle",
          kind: [strong ? "on-text" : "halo", ...(size === 12 ? [] : (["small"] as const))],
        })
      );
    })
    .join("");
}

/** Spans joined where the text does not change. */
function spansOf(
  segments: readonly TripSegment[],
  textOf: (one: TripSegment) => string,
  isStrong: (one: TripSegment) => boolean,
) {
  const spans: Span[] = [];
  for (const one of segments) {
    const [text, strong] = [textOf(one), isStrong(one)];
    const last = spans.at(-1);
    if (last?.text === text && last.strong === strong) last.to = one.to;
    else spans.push({ from: one.from, to: one.to, text, strong });
  }
  return spans;
}

/** Most spans that a note tells one by one. */
const MOST_TOLD = 12;

/** The spans of a lane in words, where some have no room for theirs and few enough do to be told. */
function spanNote(lane: string, spans: readonly Span[]): string[] {
  if (spans.every(({ number }) => number === undefined)) return [];
  const told = spans.map(({ to, text, number }, i) => {
    const words = number === undefined ? text : `(${number}) ${text}`;
    return i === spans.length - 1 ? words : `${words} until ${tickText(to)} s`;
  });
  return [`${lane}: ${told.join(", ")}.`];
}

/** Spans with numbers for those whose words have no room, where few enough are to be told. */
function numbered(spans: readonly Span[], x: (time: number) => number): Span[] {
  if (spans.length > MOST_TOLD) return [...spans];
  let last = 0;
  return spans.map((span) =>
    sizeIn(span.text, x(span.to) - x(span.from)) === undefined ? { ...span, number: ++last } : span,
  );
}

/** The on-delay as it runs: up from the floor of its lane, full height when it has run out. */
function timer({ segments, logic }: TripPlayback, x: (time: number) => number, top: number, width: number): string {
  const { onDelay } = logic.rules;
  const floor = top + LANE;
  // Of ramps on one pixel column the highest is seen.
  const highest = new Map<number, { from: number; to: number; share: number }>();
  for (const { from, to, status } of segments) {
    if (status.state !== "timing") continue;
    const share = onDelay > 0 ? Math.min((to - from) / onDelay, 1) : 1;
    const column = Math.floor(x(from));
    if ((highest.get(column)?.share ?? 0) < share) highest.set(column, { from, to, share });
  }
  const ramps = [...highest.values()].map(({ from, to, share }) =>
    tag("path", {
      kind: "timer",
      d: `M${rounded(x(from))},${floor}L${rounded(x(to))},${rounded(floor - share * LANE)}V${floor}Z`,
    }),
  );
  return tag("rect", { kind: "lane", x: 0, y: top, width, height: LANE }) + ramps.join("");
}

/**
 * The three lanes below the level: the on-delay, what the channel is doing, and its contact; and notes of what has no room
 * in them.
 */
export function tripLanes(playback: TripPlayback, x: (time: number) => number, top: number, width: number) {
  const { segments, logic } = playback;
  const { latching, coil, contact } = logic.relay;
  const output = ({ status }: TripSegment): boolean => status.output === "trip";
  const states = numbered(
    spansOf(segments, ({ status }) => status.state, output),
    x,
  );
  const contacts = numbered(
    spansOf(segments, ({ status }) => status.contact, output),
    x,
  );
  const whole = `contact (${contact}, coil ${coil})`;
  const short = `contact (${contact})`;
  const hasRoom = widthOf(whole) <= width;
  const name = (text: string, i: number): string =>
    label(0, top + i * STEP - 5, shortened(text, width), { kind: ["unit", "halo"] });
  const drawn = [
    name(`on-delay, ${logic.rules.onDelay} s`, 0),
    timer(playback, x, top, width),
    name(`state${latching ? " (latching)" : ""}`, 1),
    blocks(states, x, top + STEP),
    name(hasRoom ? whole : short, 2),
    blocks(contacts, x, top + 2 * STEP),
  ].join("");
  const notes = [
    ...spanNote("State", states),
    ...spanNote("Contact", contacts),
    ...(hasRoom ? [] : [`Coil: ${coil}.`]),
  ];
  return { drawn, notes };
}
