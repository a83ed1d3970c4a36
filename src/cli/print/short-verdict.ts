import { isVerified, provenances } from "../../core/index";
import { format, historyOf } from "../../reading/index";
import { conditionText, type Judgement, type Limit, type Verdict } from "../../severity/index";
import { assumedWords } from "./assumed-words";
import { labelled } from "./labelled";
import { machineLine } from "./machine-line";
import { judgedText, marginOf, notJudged, shortZone, TAKEN, takenFor, worsePossible } from "./verdict-parts";

/** How a verdict is printed. */
export interface VerdictSettings {
  readonly digits: number;
  /** With all that it rests on, and not in a few lines. */
  readonly full: boolean;
  /** What tables say of themselves, whatever the reading: left out of a short answer. */
  readonly notes: ReadonlySet<string>;
  /** What to know of the reading, before what the verdict says. */
  readonly cautions?: readonly string[];
}

/** What every answer about a machine says, and where the rest stands. */
const GOVERN = "the maker's limits, site rules, local codes and licensed practice govern; more: --full";

/** The limits, and how they are known: of zones the zone that ends there, of fans and tests the name that the table gives it. */
function limitsText(verdict: Verdict, digits: number): string {
  const { kind, zones, provenance } = verdict;
  const limits = Object.entries<Limit>(verdict.limits);
  const sizes = limits.map(([name, limit], i) => {
    const size = format(limit, { digits }).split(" ")[0];
    return kind === "zones" ? `${zones[i]} to ${size}` : `${name} ${size}`;
  });
  const check = isVerified(provenance) ? "" : ": check the source";
  return `${sizes.join(", ")} ${(limits[0] as [string, Limit])[1].as} (${provenances[provenance].cell}${check})`;
}

/** The reading as it was judged, where it was given in another type. */
function convertedText(verdict: Verdict, digits: number): string[] {
  const { value, unit, detector } = verdict.judged;
  const [given] = historyOf(verdict.judged);
  const isAsGiven = given === undefined || (given.value === value && given.type === `${unit} ${detector}`);
  return isAsGiven && verdict.bound === "exact" ? [] : [judgedText(verdict, digits)];
}

/** What one of several schemes was taken for, behind it. */
function takenText(verdict: Verdict, one: Judgement): string {
  const taken = takenFor(verdict, one).map((text) => text.replace(TAKEN, ""));
  return taken.length === 0 ? "" : `, taken for ${taken.join(" and ")}`;
}

/** What was assumed of the reading and by all schemes alike, in few words: the label says that it was. */
function assumedInShort(verdict: Verdict): string[] {
  const { assumed, assumedFacts, judged, judgements } = verdict;
  const short = (text: string) =>
    text
      .replace(TAKEN, "")
      .replace(/: not given, and taken for its lower limits$/, " (the lower limits)")
      .replace(/: assumed$/, "");
  const { crestFactor } = judged;
  const told = judgements.length < 2 ? [] : judgements.flatMap((one) => takenFor(verdict, one));
  const words = [
    ...assumedFacts.filter((text) => !told.includes(text)).map(short),
    ...assumedWords({ assumed, crestFactor }),
  ];
  return words.length === 0 ? [] : [words.join("; ")];
}

const WITHDRAWN = "withdrawn edition, ";

const SAID = /^limits .*(: check them against the standard before relying on them|licensed practice govern)$/;

/** What a verdict warns of beside what is said elsewhere here and what the tables say of themselves. */
function warnings({ cautions }: Verdict, notes: ReadonlySet<string>): string[] {
  return cautions.filter((text) => !notes.has(text) && !SAID.test(text));
}

/**
 * A verdict below its headline in a few lines: nothing that was assumed, set aside or not judged is left out, nor what
 * it warns of for this reading and machine.
 */
export function shortVerdict(verdict: Verdict, settings: VerdictSettings): string {
  const { digits, notes, cautions = [] } = settings;
  const { standard, edition, machineClass, judgements, setAside } = verdict;
  const known = machineLine(verdict.machine);
  const which = conditionText(machineClass);
  const others = judgements.slice(1).map((one) => {
    const its = conditionText(one.machineClass);
    return `${one.scheme}${its && `, ${its}`}${takenText(verdict, one)}: ${shortZone(one)}`;
  });
  const isTaken = verdict.assumedFacts.some((text) => text.startsWith("support "));
  const ruled = verdict.supportRule === undefined || isTaken ? [] : [verdict.supportRule.text];
  const warned = [...new Set([...cautions, ...warnings(verdict, notes)])];
  // of one table alone it is plain which of them it is about
  const withdrawn = others.length > 0 ? undefined : warned.find((text) => text.startsWith(WITHDRAWN));
  const status =
    others.length > 0
      ? ` (${verdict.scheme}${takenText(verdict, judgements[0] as Judgement)})`
      : withdrawn === undefined
        ? ""
        : `; ${withdrawn}`;
  const line = (label: string, texts: readonly string[]): string => labelled(label, texts, 12);
  return [
    line("machine", known === "" ? [] : [known]),
    line("judged", convertedText(verdict, digits)),
    line("also", worsePossible(verdict, digits)),
    line("by", [`${standard} (${edition})${which && `, ${which}`}${status}`]),
    line("also by", others),
    line("limits", [limitsText(verdict, digits)]),
    line("margin", [marginOf(verdict, digits)]),
    line("not judged", notJudged(verdict)),
    line("support", ruled),
    line("assumed", assumedInShort(verdict)),
    line("set aside", setAside),
    line(
      "confirmed",
      verdict.confirmed.map((text) => text.replace(/^confirmed /, "")),
    ),
    line("caution", [...warned.filter((text) => text !== withdrawn), GOVERN]),
  ].join("");
}
