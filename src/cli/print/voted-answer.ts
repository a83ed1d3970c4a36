import { cautions, counted } from "../../core/index";
import { type Assumption, significant } from "../../reading/index";
import { bypassCost, type LevelGaps, type VoteAlternative, type VotedEvent, type VotedStatus } from "../../trip/index";
import { assumptionLines } from "./assumption-lines";
import { cautionsText } from "./cautions-text";
import { type Clock, clockOf, clockTime, countedFrom, type Moment, timeAndClock } from "./clock-time";
import { gapsText, longestText } from "./gaps-text";
import { jsonLine } from "./json-line";
import { highestOf, secondsText, type TimeText } from "./simulation-text";
import { numberColumn, textTable } from "./text-table";
import { type VotedTold, votedSettingsText } from "./voted-settings-text";
import { wrapped } from "./wrapped";

/** What `simulate --vote` found. */
export interface VotedAnswer extends Omit<VotedTold, "longestGap" | "times" | "timeText"> {
  readonly file: string;
  readonly history: { readonly begins?: Moment };
  /** The levels as they are written, by the name of their channel. */
  readonly histories: { readonly [name: string]: Float64Array };
  /** How they were read, as data. */
  readonly read: object;
  /** What the levels are written in. */
  readonly from: string;
  readonly events: readonly VotedEvent[];
  readonly end: VotedStatus;
  readonly alternatives: readonly VoteAlternative[];
  readonly assumed: readonly Assumption[];
  /** Undefined where levels are evenly spaced. */
  readonly gaps: LevelGaps | undefined;
  readonly isGapGiven: boolean;
}

/** What there is to say of an event beside its time, channel and level. */
function remarkOf({ first, cost, reason, cause }: VotedEvent, isFirst: boolean): string {
  const why = reason ?? (cause === "level" ? undefined : cause);
  const by = typeof first === "string" ? `first out ${first}` : undefined;
  return [isFirst && "first out", by, cost, why].filter(Boolean).join("; ");
}

/**
 * The trips of channels that are the first out of the trip of the vote behind them; one that was first and cleared before
 * is not.
 */
function firstOuts(events: readonly VotedEvent[]): ReadonlySet<VotedEvent> {
  let next: VotedEvent | undefined;
  const found = new Set<VotedEvent>();
  for (const one of [...events].reverse()) {
    if (one.channel === "vote" && one.event === "trip") next = one;
    if (one.firstOut === true && (next === undefined || next.first === one.channel)) found.add(one);
  }
  return found;
}

/** Every event of the channels and the vote. */
function eventRows({ events }: VotedAnswer, clock: Clock | undefined): string {
  if (events.length === 0) return "nothing happened\n";
  const isFirst = firstOuts(events);
  const columns = [numberColumn("time, s"), ...(clock ? [{ title: clock.title }] : []), { title: "channel" }];
  return textTable(
    [...columns, { title: "event" }, numberColumn("level"), { title: "" }],
    events.map((event) => [
      secondsText(event.time),
      ...(clock ? [clock.text(event.time)] : []),
      event.channel,
      event.event,
      event.level === null ? "-" : significant(event.level),
      remarkOf(event, isFirst.has(event)),
    ]),
  );
}

/** How things stand behind the last level. */
function endText({ end, given }: VotedAnswer): string {
  const says = Object.entries(end.channels).map(([name, word]) => `${name} ${word}`);
  const relay = given.relay ? `, contact ${end.contact}` : "";
  const latch = end.latched ? ", by its latch alone" : "";
  return (
    wrapped(
      `at the end: output ${end.output}${latch}${relay}; ${says.join(", ")}; vote ${end.effective}` +
        `${end.firstOut === null ? "" : `, first out ${end.firstOut}`}`,
      "  ",
      "",
    ) + (end.unable ? "at the end no trip is possible: too few good channels are left\n" : "")
  );
}

/** How high each channel came, and how often it was at its trip. */
function channelRows({ histories, events, from }: VotedAnswer): string {
  return textTable(
    [{ title: "channel" }, numberColumn(`highest, ${from}`), numberColumn("trips"), numberColumn("first trip, s")],
    Object.entries(histories).map(([name, levels]) => {
      const trips = events.filter(({ channel, event }) => channel === name && event === "trip");
      return [name, significant(highestOf(levels), 3), `${trips.length}`, trips[0] ? secondsText(trips[0].time) : "-"];
    }),
  );
}

/** What came of it, and what would have come of it without each mask and with other votes. */
function alternativeRows({ alternatives }: VotedAnswer, timeText: TimeText): string {
  return textTable(
    [{ title: "otherwise" }, { title: "what happens" }],
    alternatives.map(({ what, first, firstOut, trips }) => {
      const out = firstOut === null ? "" : `, first out ${firstOut}`;
      const when = first === null ? "no trip" : `trip at ${timeText(first)}${out}`;
      return [what, trips > 1 ? `${trips} trips, the first ${when}` : when];
    }),
  );
}

/** Channels that are bypassed together at any time, with what that costs. */
function bypassLines({ commands, settings: { vote } }: VotedAnswer): string[] {
  const bypassed = new Set<string>();
  const costs = commands
    .filter(({ channel }) => channel !== undefined)
    .sort((a, b) => a.time - b.time)
    .flatMap(({ do: name, channel = "" }) => {
      if (name === "bypass off") bypassed.delete(channel);
      else bypassed.add(channel);
      return name === "bypass on" ? [bypassCost(vote, [...bypassed]).text] : [];
    });
  return [...new Set(costs)];
}

/** The answer as text. */
export function votedText(answer: VotedAnswer): string {
  const { file, history, histories, settings, rules, gaps, isGapGiven, end } = answer;
  const { begins } = history;
  const clock = begins && clockOf(begins, end.time);
  const timeText: TimeText = (at) => timeAndClock(secondsText(at), at, clock);
  const [levels] = Object.values(histories) as [Float64Array];
  const costs = bypassLines(answer);
  return (
    `${file}: ${counted(levels.length, "row")} of ${Object.keys(histories).length} channels over ${significant(end.time, 4)} s\n` +
    `vote ${settings.vote}: threshold ${significant(rules.threshold.value, 4)} ${rules.type}, ` +
    `clears below ${significant(rules.reset.value, 4)}, ${settings.latching ? "latching" : "non-latching"}\n\n` +
    eventRows(answer, clock) +
    `\n${endText(answer)}` +
    `\n${channelRows(answer)}` +
    (costs.length === 0 ? "" : `\n${costs.map((cost) => `${cost}\n`).join("")}`) +
    `\n${alternativeRows(answer, timeText)}` +
    (gaps === undefined ? "" : gapsText(gaps, rules.type, timeText)) +
    votedSettingsText({
      ...answer,
      longestGap: gaps === undefined ? "none: evenly spaced" : longestText(gaps, isGapGiven),
      times: `${gaps === undefined ? "in s from the first level" : countedFrom(begins)}; so are those of commands`,
      timeText,
    }) +
    assumptionLines(answer) +
    cautionsText()
  );
}

/** The answer as a line of JSON. */
export function votedLine(answer: VotedAnswer): string {
  const { file, history, histories, from, settings, commands, rules, alert, gaps, read, given } = answer;
  const { events, end, alternatives, assumed } = answer;
  const { threshold, reset } = rules;
  const { begins } = history;
  const clocked = begins ? events.map((one) => ({ ...one, clock: clockTime(begins, one.time) })) : events;
  return jsonLine(
    "voted simulation",
    {
      ...{ threshold, reset, events: clocked, end, alternatives, assumed },
      ...(alert && { alert: alert.threshold }),
    },
    {
      ...{ file, rows: Object.values(histories)[0]?.length, from, read, settings, commands },
      ...(begins && { begins: clockTime(begins, 0) }),
      ...(gaps && { gaps }),
      notGiven: Object.entries(given).flatMap(([name, isGiven]) => (isGiven ? [] : [name])),
      timesCountFrom: gaps === undefined ? "the first level" : "the first row",
      cautions,
    },
  );
}
