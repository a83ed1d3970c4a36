/**
 * A slow model of the trip logic, written from the text of the guides "Trip logic" and "Voting" (docs/guides/protection-*.md)
 * and from nothing else: event by event, channel by channel, in the order of its rules. It shares no code with the library.
 */

export interface SlowChannelSettings {
  readonly threshold: number;
  readonly resetLevel: number;
  readonly onDelay: number;
  readonly offDelay: number;
  readonly startsOverBelow: "threshold" | "reset level";
  readonly sensorFault: "alarm" | "hold" | "bad";
  readonly inhibit: number;
  readonly multiplier: { readonly factor: number; readonly seconds: number };
  readonly latching: boolean;
  /** The alert of the channel, where the vote is mixed. */
  readonly alert?: SlowChannelSettings;
}

export interface SlowSettings {
  readonly channels: Readonly<Record<string, SlowChannelSettings>>;
  /** Left out for a channel alone. */
  readonly vote?: {
    readonly needed: number;
    /** Others at alert, in a mixed vote. */
    readonly others?: number;
    readonly badVotes: boolean;
    readonly latching: boolean;
  };
}

/** A level, or what the signal is in place of one. */
export type SlowSignal = number | "none" | "failed" | "above";

export interface SlowCommand {
  readonly do: "reset" | "start" | "bypass on" | "bypass off" | "power lost" | "power back";
  /** The channel that a bypass is for. */
  readonly channel?: string;
}

export interface SlowEvent {
  readonly time: number;
  readonly of: string;
  readonly event: string;
}

/** One step of a 32-bit float. */
const NOISE = 2 ** -23;
/** A delay or window is over so much of it before its end. */
const EARLY = 1e-9;

/** What one channel remembers. */
class SlowChannel {
  phase: "normal" | "timing" | "set" | "clearing" = "normal";
  /** What the delay of the phase has run. */
  ran = 0;
  signal: SlowSignal = "none";
  isBypassed = false;
  isPowered = true;
  inhibited: boolean;
  multiplied: boolean;
  /** The instant at which the output was set. */
  setAt = 0;

  constructor(
    readonly settings: SlowChannelSettings,
    readonly tell: (event: string) => void,
    public windowsFrom: number,
  ) {
    this.inhibited = settings.inhibit > 0;
    this.multiplied = settings.multiplier.seconds > 0;
  }

  isSet(): boolean {
    return this.phase === "set" || this.phase === "clearing";
  }
  isFailed(): boolean {
    return this.signal === "failed";
  }
  isHeld(): boolean {
    return this.isFailed() && this.settings.sensorFault !== "alarm";
  }
  isBad(): boolean {
    return this.isFailed() && this.settings.sensorFault === "bad";
  }

  /** True at a limit or above it. */
  isUp(limit: number): boolean {
    if (this.signal === "none") return false;
    if (typeof this.signal !== "number") return true;
    const own = this.multiplied ? limit * this.settings.multiplier.factor : limit;
    return this.signal >= own - own * NOISE;
  }
  startOverLevel(): number {
    const { startsOverBelow, threshold, resetLevel } = this.settings;
    return startsOverBelow === "threshold" ? threshold : resetLevel;
  }

  /** The delay that runs, or undefined. */
  running(): number | undefined {
    if (!this.isPowered || this.isHeld()) return undefined;
    if (this.phase === "timing") return this.settings.onDelay;
    return this.phase === "clearing" ? this.settings.offDelay : undefined;
  }

  /** Step 1: a delay that has run its time. */
  end(instant: number): void {
    const delay = this.running();
    if (delay === undefined || this.ran < delay - delay * EARLY) return;
    if (this.phase === "timing") this.becomes("set", "trip", instant);
    else this.becomes("normal", "clear", instant);
  }

  becomes(phase: SlowChannel["phase"], event: string | undefined, instant: number): void {
    if (phase === "set" && !this.isSet()) this.setAt = instant;
    this.phase = phase;
    this.ran = 0;
    if (event !== undefined) this.tell(event);
  }

  startWindows(time: number): void {
    this.windowsFrom = time;
    this.inhibited = this.settings.inhibit > 0;
    this.multiplied = this.settings.multiplier.seconds > 0;
  }

  /** True for a start inhibit that is still in force at the beginning of what comes. */
  isInhibitedNext(time: number): boolean {
    return this.inhibited && !this.isOver(this.settings.inhibit, time);
  }
  private isOver(window: number, time: number): boolean {
    return time - this.windowsFrom >= window - window * EARLY;
  }

  /** Step 2, before the commands: windows that are over. */
  endWindows(time: number): void {
    if (this.isOver(this.settings.inhibit, time)) this.inhibited = false;
    if (this.isOver(this.settings.multiplier.seconds, time)) this.multiplied = false;
  }

  /** Step 3: the level. */
  take(signal: SlowSignal): void {
    const before = this.signal;
    this.signal = signal;
    if (signal === "failed" && before !== "failed") this.tell("fault");
    if (signal !== "failed" && before === "failed") this.tell("fault over");
    if (signal === "above" && before !== "above") this.tell("above range");
    if (typeof signal === "number" && before === "above") this.tell("in range");
  }

  /** Step 4: what takes no time. */
  settle(instant: number): void {
    const { threshold, resetLevel, onDelay, offDelay, latching } = this.settings;
    if (!this.isPowered) return;
    if (this.isHeld()) {
      if (this.isBad() && this.phase === "timing") this.becomes("normal", "rode out", instant);
      return;
    }
    const isBlocked = this.isBypassed || this.inhibited;
    if (this.phase === "normal") {
      if (isBlocked || !this.isUp(threshold)) return;
      this.becomes("timing", "timing", instant);
      if (onDelay === 0) this.becomes("set", "trip", instant);
    } else if (this.phase === "timing") {
      if (isBlocked || !this.isUp(this.startOverLevel())) this.becomes("normal", "rode out", instant);
    } else if (this.phase === "set") {
      if (latching || this.isUp(resetLevel)) return;
      this.becomes("clearing", undefined, instant);
      if (offDelay === 0) this.becomes("normal", "clear", instant);
    } else if (this.isUp(resetLevel)) {
      this.phase = "set";
      this.ran = 0;
    }
  }

  /** Step 2, of a channel alone: true where a reset is accepted. */
  reset(): boolean {
    const isLow = typeof this.signal === "number" && !this.isUp(this.settings.resetLevel);
    const isAccepted = this.isSet() && this.settings.latching && this.isPowered && isLow;
    if (isAccepted) {
      this.phase = "normal";
      this.ran = 0;
    }
    this.tell(isAccepted ? "reset" : "reset refused");
    return isAccepted;
  }
  bypass(on: boolean): void {
    if (this.isBypassed === on) return;
    this.isBypassed = on;
    this.tell(on ? "bypass on" : "bypass off");
  }
  power(on: boolean, time: number): void {
    this.isPowered = on;
    if (on) this.startWindows(time);
    else {
      this.ran = 0;
      this.phase = this.isSet() && this.settings.latching ? "set" : "normal";
    }
  }
}

/** A channel alone, or several behind a vote. */
export class SlowTrip {
  readonly events: SlowEvent[] = [];
  isVoteSet = false;
  isUnable = false;
  private readonly names: readonly string[];
  private readonly channels = new Map<string, SlowChannel>();
  private readonly alerts = new Map<string, SlowChannel>();
  private instant = 0;
  private firstOutAtTrip: string | null = null;

  constructor(
    readonly settings: SlowSettings,
    public time = 0,
  ) {
    this.names = Object.keys(settings.channels);
    for (const name of this.names) {
      const own = settings.channels[name] as SlowChannelSettings;
      this.channels.set(name, new SlowChannel(own, (event) => this.tell(name, event), time));
      if (own.alert === undefined) continue;
      const tellAlert = (event: string): void => {
        if (["timing", "rode out", "trip", "clear"].includes(event)) this.tell(`${name} alert`, event);
      };
      this.alerts.set(name, new SlowChannel(own.alert, tellAlert, time));
    }
  }

  /** True before the first level. */
  isFresh(): boolean {
    return this.all().every(({ signal }) => signal === "none");
  }
  /** A fresh logic begins at the first time of a history. */
  beginAt(time: number): void {
    if (time === this.time) return;
    this.time = time;
    for (const channel of this.all()) channel.startWindows(time);
  }

  private tell(of: string, event: string): void {
    this.events.push({ time: this.time, of, event });
  }

  private all(): SlowChannel[] {
    return [...this.names.map((name) => this.channels.get(name) as SlowChannel), ...this.alerts.values()];
  }

  /** The beginning of an instant: steps 2 to 4 of all channels, then the vote. */
  begin(commands: readonly SlowCommand[], levels: Readonly<Record<string, SlowSignal>>): void {
    this.instant++;
    for (const channel of this.all()) channel.endWindows(this.time);
    for (const command of commands) this.obey(command);
    for (const name of this.names) {
      const channel = this.channels.get(name) as SlowChannel;
      channel.take(levels[name] ?? channel.signal);
    }
    for (const name of this.names) {
      const alert = this.alerts.get(name);
      alert?.take(levels[name] ?? alert.signal);
    }
    for (const channel of this.all()) channel.settle(this.instant);
    this.takeVote();
  }

  /** A command by a method: an instant of its own, but for the reset of a vote, which no vote follows; steps 3 and 4 follow with what comes next. */
  method(command: SlowCommand): void {
    const { vote } = this.settings;
    if (command.do === "reset" && vote !== undefined) {
      this.resetVote(vote.latching);
      return;
    }
    this.instant++;
    for (const channel of this.all()) channel.endWindows(this.time);
    this.obey(command);
    this.takeVote();
  }

  /** Lets what stands stand until a time, with the end of that stretch. */
  stand(until: number): void {
    for (;;) {
      const windowEnds = this.all()
        .flatMap(({ windowsFrom, settings, inhibited, multiplied }) => [
          inhibited ? windowsFrom + settings.inhibit : Number.POSITIVE_INFINITY,
          multiplied ? windowsFrom + settings.multiplier.seconds : Number.POSITIVE_INFINITY,
        ])
        .filter((at) => at < until - EARLY);
      const delayEnds = this.all().map((channel) => this.time + ((channel.running() ?? Infinity) - channel.ran));
      const next = Math.min(until, ...windowEnds, ...delayEnds);
      for (const channel of this.all()) if (channel.running() !== undefined) channel.ran += next - this.time;
      this.time = next;
      this.instant++;
      for (const channel of this.all()) channel.end(this.instant);
      this.takeVote();
      if (windowEnds.some((at) => at <= next + EARLY)) this.begin([], {});
      if (next >= until) return;
    }
  }

  private obey(command: SlowCommand): void {
    const { vote } = this.settings;
    if (command.do === "reset") {
      if (vote === undefined) for (const channel of this.all()) channel.reset();
      else this.resetVote(vote.latching);
    } else if (command.do === "start") {
      this.tellCommand("start");
      for (const channel of this.all()) channel.startWindows(this.time);
    } else if (command.do === "power lost" || command.do === "power back") {
      const on = command.do === "power back";
      if (this.isPowered() === on) return;
      this.tellCommand(command.do);
      for (const channel of this.all()) channel.power(on, this.time);
      if (!on && vote !== undefined && !vote.latching) this.isVoteSet = false;
    } else {
      const name = command.channel ?? (this.names[0] as string);
      for (const both of [this.channels, this.alerts]) both.get(name)?.bypass(command.do === "bypass on");
    }
  }

  /** A command for all stands among the events of each. */
  private tellCommand(event: string): void {
    for (const name of this.names) this.tell(name, event);
  }

  private isPowered(): boolean {
    return this.all().every(({ isPowered }) => isPowered);
  }

  private resetVote(latching: boolean): void {
    const isAccepted = this.isPowered() && this.isVoteSet && latching && !this.count(true).calls;
    if (isAccepted) this.isVoteSet = false;
    this.tell("vote", isAccepted ? "reset" : "reset refused");
  }

  /** What a channel says to the vote. */
  says(name: string): "healthy" | "bad" | "trip" | "alert" {
    const channel = this.channels.get(name) as SlowChannel;
    if (channel.isBypassed) return "healthy";
    if (channel.isBad()) return "bad";
    if (channel.isSet()) return "trip";
    return this.alerts.get(name)?.isSet() ? "alert" : "healthy";
  }

  /** At this end, or at the beginning of what comes: how many votes are needed, how many good channels there are, and whether the vote calls for a trip. */
  count(isNext = false): {
    readonly needed: number;
    readonly others: number;
    readonly good: number;
    readonly calls: boolean;
  } {
    let needed = this.settings.vote?.needed ?? 1;
    let others = this.settings.vote?.others ?? 0;
    let [good, trips, alerts] = [0, 0, 0];
    for (const name of this.names) {
      const channel = this.channels.get(name) as SlowChannel;
      const word = this.says(name);
      if (word === "trip") trips++;
      if (word === "alert") alerts++;
      if (word !== "bad" && !channel.isBypassed) good++;
      const isInhibited = isNext ? channel.isInhibitedNext(this.time) : channel.inhibited;
      const counts = word === "bad" && this.settings.vote?.badVotes === true && (!isInhibited || channel.isSet());
      if (counts && needed > 0) needed--;
      else if (counts && others > 0) others--;
    }
    // one at its trip that is not needed as such is as good as one at its alert
    const calls = trips >= needed && trips - needed + alerts >= others;
    return { needed, others, good, calls };
  }

  firstOut(): string | null {
    if (this.isVoteSet) return this.firstOutAtTrip;
    let first: string | null = null;
    for (const name of this.names) {
      if (this.says(name) !== "trip") continue;
      const own = (this.channels.get(name) as SlowChannel).setAt;
      if (first === null || own < (this.channels.get(first) as SlowChannel).setAt) first = name;
    }
    return first;
  }

  private takeVote(): void {
    const { vote } = this.settings;
    if (vote !== undefined && this.isPowered()) {
      const { needed, others, good, calls } = this.count();
      const isUnable = needed + others > good;
      if (isUnable !== this.isUnable) this.tell("vote", isUnable ? "protection lost" : "protection back");
      this.isUnable = isUnable;
      if (calls && !this.isVoteSet) {
        this.firstOutAtTrip = this.firstOut();
        this.isVoteSet = true;
        this.tell("vote", "trip");
      } else if (!calls && this.isVoteSet && !vote.latching) {
        this.isVoteSet = false;
        this.tell("vote", "clear");
      }
    }
  }

  /** True where the output behind all is set; the contact of a channel alone follows its own output. */
  isOutputSet(): boolean {
    return this.settings.vote === undefined ? this.all().some((channel) => channel.isSet()) : this.isVoteSet;
  }
  hasPower(): boolean {
    return this.isPowered();
  }
}

/** A history as levels at times: each stands until the next; commands split it where they fall between. */
export function slowHistory(
  trip: SlowTrip,
  rows: readonly { readonly at: number; readonly levels: Readonly<Record<string, SlowSignal>> }[],
  commands: readonly (SlowCommand & { readonly time: number })[],
  end: number,
): void {
  let given = 0;
  const first = (rows[0] as { at: number }).at;
  if (trip.isFresh()) trip.beginAt(first);
  // what a command by a method left to do, if the first level comes later
  if (first > trip.time + EARLY) trip.begin([], {});
  const until = (time: number): void => {
    while (given < commands.length && (commands[given] as { time: number }).time < time - EARLY) {
      const at = (commands[given] as { time: number }).time;
      trip.stand(at);
      const now: SlowCommand[] = [];
      while (given < commands.length && (commands[given] as { time: number }).time <= at + EARLY)
        now.push(commands[given++] as SlowCommand);
      trip.begin(now, {});
    }
    trip.stand(time);
  };
  for (const [i, { at, levels }] of rows.entries()) {
    if (at > trip.time) until(at);
    // of several levels at one time the last has the commands
    const isLast = rows[i + 1] === undefined || (rows[i + 1] as { at: number }).at > at + EARLY;
    const now: SlowCommand[] = [];
    while (isLast && given < commands.length && (commands[given] as { time: number }).time <= at + EARLY)
      now.push(commands[given++] as SlowCommand);
    trip.begin(now, levels);
  }
  const last = rows[rows.length - 1] as { at: number };
  if (end > last.at) until(end);
  if (given < commands.length) trip.begin(commands.slice(given), {});
}
