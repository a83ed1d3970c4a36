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

const fits = (text: string, room: number): boolean => widthOf(text) + 8 <= room;

/** A lane with a block for each span, and words in those that have room for them whole. */
function blocks(spans: readonly Span[], x: (time: number) => number, top: number): string {
  return mergedSpans(spans, x)
    .map(({ from, to, text, strong }) => {
      const [left, right] = [x(from), x(to)];
      const room = right - left;
      const body: Attributes = {
        kind: strong ? "on" : "lane",
        x: left,
        y: top,
        width: Math.max(room - 1, 1),
        height: LANE,
      };
      const words = fits(text, room) ? text : "";
      return (
        tag("rect", body) +
        label((left + right) / 2, top + LANE / 2 + 4, words, {
          "text-anchor": "middle",
          kind: strong ? "on-text" : undefined,
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
function spanNote(lane: string, spans: readonly Span[], x: (time: number) => number): string[] {
  if (spans.length > MOST_TOLD || spans.every(({ from, to, text }) => fits(text, x(to) - x(from)))) return [];
  const told = spans.map(({ to, text }, i) => (i === spans.length - 1 ? text : `${text} until ${tickText(to)} s`));
  return [`${lane}: ${told.join(", ")}.`];
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
  const states = spansOf(segments, ({ status }) => status.state, output);
  const contacts = spansOf(segments, ({ status }) => status.contact, output);
  const whole = `contact (${contact}, coil ${coil})`;
  const short = `contact (${contact})`;
  const hasRoom = widthOf(whole) <= width;
  const name = (text: string, i: number): string =>
    label(0, top + i * STEP - 5, shortened(text, width), { kind: "unit" });
  const drawn = [
    name(`on-delay, ${logic.rules.onDelay} s`, 0),
    timer(playback, x, top, width),
    name(`state${latching ? " (latching)" : ""}`, 1),
    blocks(states, x, top + STEP),
    name(hasRoom ? whole : short, 2),
    blocks(contacts, x, top + 2 * STEP),
  ].join("");
  const notes = [
    ...spanNote("State", states, x),
    ...spanNote("Contact", contacts, x),
    ...(hasRoom ? [] : [`Coil: ${coil}.`]),
  ];
  return { drawn, notes };
}
