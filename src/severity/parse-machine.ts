import { cached, frozen, requireText, shown, VeladisError, withParameters } from "../core/index";
import { besideStranger, requireNoOther, type SetAside, strangerAfter } from "./beside-stranger";
import { dimensionLength } from "./dimension-length";
import { directedWords, requireNoDirection } from "./directions-in-words";
import { askedFact, eitherWay, requireApart, requireNoPart } from "./either-way";
import { type PartSaid, partAfter } from "./facts-of-driver";
import { frameAt, spacedFrameAt } from "./frame-size";
import { requireHorizontal } from "./horizontal-compressor";
import { type Lead, leadAfter, requireNoNumeral } from "./left-over";
import type { Machine } from "./machine";
import { besideAt } from "./machine-beside";
import { requirePlain } from "./machine-hedges";
import { labelAt } from "./machine-labels";
import { isThing, kindBehind, strangerBehind, tagLength } from "./machine-neighbours";
import { numberAt, symbolAt } from "./machine-numbers";
import { knownPhrases, type Phrase, phraseAt, qualifiedBy, sizesIn } from "./machine-phrases";
import { type Context, labelled } from "./machine-words";
import { nameplate, type Said } from "./nameplate";
import { near } from "./near-words";
import { otherLabelLength } from "./other-label";
import { requireNoPlace } from "./other-place";
import { plainMarks } from "./plate-marks";
import { powerFactorAt } from "./plate-power";
import { requireOneValue } from "./second-value";
import { type Neighbour, neighbourOf } from "./shaft-beside-number";
import { requireSupportOfAll } from "./support-of-all";
import { requireFixedFrequency } from "./varied-speed";

const FORM = 'a machine such as "pump 90 kW 2980 r/min rigid"';
const LONGEST = 300;
/** What stands between words and says nothing, single marks among them. */
const BETWEEN = /^(?:[\s,;:=()[\]|"]|[.&/+–—-]+(?=[\s,;]|$))+/;

/** True where words such as natural, mains or height lead to a number that they are about. */
function leadsOn(behind: string, leads: Context): boolean {
  if (leads === "") return true;
  const said = numberAt(behind.replace(/^[\s:=]+(?:of\b[\s:=]*)?/, ""), leads);
  const { naturalFrequency, height, shaftHeight } = said?.facts ?? {};
  return (said?.lineFrequency ?? naturalFrequency ?? height ?? shaftHeight) !== undefined;
}

/** What the next words say, and how they are read. */
interface Read extends Said {
  readonly leads?: Context;
  /** True for a label behind its name. */
  readonly label?: true;
}

/**
 * A single word such as rigid or shaft with what it says. Together with a thing that it belongs to, it says nothing; before
 * another word that is not understood it may be meant either way.
 *
 * @throws {@link VeladisError} `syntax` for a fact that may not be left open
 */
function phraseBefore(rest: string, phrase: Phrase): Read {
  const { type, ...facts } = phrase.facts;
  const word = rest.slice(0, phrase.length);
  if (type !== undefined) return { ...phrase, beside: sizesIn(word) };
  // spring mounted piping
  const isSeveral = /[\s‐‑-]/.test(word) && !/(?:mounted|supported)$/i.test(word);
  if (Object.keys(facts).length === 0 || isSeveral) return phrase;
  const stranger = strangerBehind(rest.slice(phrase.length));
  if (stranger === 0) return phrase;
  const length = phrase.length + stranger;
  const behind = rest.slice(phrase.length, length).trim().replace(/\s+/g, " ");
  if (isThing(behind)) return { length, didYouMean: [] };
  const fact = askedFact(facts);
  if (fact !== undefined) throw eitherWay(fact, word, `${word}, ${behind}`, `${word} ${behind}`);
  // where the fact is left open, the lowest limits judge
  return { length, didYouMean: [`${word}, ${behind}`] };
}

/** A label with what it says; before a word such as other it may be that of another machine. */
function labelBefore(rest: string, label: Read): Read {
  const own = rest.slice(0, label.length);
  const [behind = ""] = /^\s+(?:others?|another|different)(?![\p{L}\d])/iu.exec(rest.slice(label.length)) ?? [];
  if (behind === "") return label;
  return { length: label.length + behind.length, didYouMean: [own] };
}

/** Natural 20 to 30 Hz: a range of what is no speed, how many characters it takes with the words before it. */
function rangeLength(rest: string, phrase: Phrase): number {
  if ((phrase.leads ?? "") === "") return 0;
  const [gap] = /^[\s:=]+(?:of\b[\s:=]*)?/.exec(rest.slice(phrase.length)) ?? [""];
  const number = numberAt(rest.slice(phrase.length + gap.length), "");
  return number?.isRange && number.facts === undefined ? phrase.length + gap.length + number.length : 0;
}

/** What the next words say; a word that says nothing is set aside. */
function saidBy(rest: string, context: Context): Read {
  const symbol = symbolAt(rest);
  if (symbol > 0) return { length: symbol };
  const factor = powerFactorAt(rest);
  if (factor !== undefined) return factor;
  const other = otherLabelLength(rest);
  if (other > 0) return { length: other, didYouMean: [], plain: true };
  const dimension = dimensionLength(rest);
  if (dimension > 0) return { length: dimension, didYouMean: [], plain: true };
  const spaced = context === "" ? spacedFrameAt(rest) : undefined;
  if (spaced !== undefined) return { length: spaced.length, spacedFrame: spaced.facts };
  const frame = context === "" ? frameAt(rest) : undefined;
  const said = frame ?? numberAt(rest, context);
  if (said !== undefined) return said;
  // for heating and ventilating: what a fan is for, and no other machine
  const use = /^for\s+(?:the\s+)?/i.exec(rest)?.[0] ?? "";
  if (use !== "" && phraseAt(rest.slice(use.length))?.facts.application !== undefined) return { length: use.length };
  // mounting on springs says how the machine stands, not how it is mounted for a test
  if (/^mounting[\s:=]+on\b/i.test(rest)) return { length: "mounting".length };
  const phrase = phraseAt(rest);
  const machineBeside = phrase?.facts.type !== undefined ? undefined : besideAt(rest);
  if (machineBeside !== undefined) return { length: machineBeside.length, machineBeside };
  if (phrase?.mayBe !== undefined) return { length: phrase.length, didYouMean: phrase.mayBe, mayBe: phrase.mayBe };
  if (phrase?.aside) return { length: phrase.length, didYouMean: [], plain: true };
  if (phrase !== undefined && leadsOn(rest.slice(phrase.length), phrase.leads ?? "")) return phraseBefore(rest, phrase);
  const range = phrase === undefined ? 0 : rangeLength(rest, phrase);
  if (range > 0)
    return { length: range, didYouMean: [], plain: true, ...(phrase?.leads === "line" && { isLineRange: true }) };
  const label = labelAt(rest);
  if (label !== undefined) return labelBefore(rest, label);
  const tag = tagLength(rest);
  if (tag > 0) return { length: tag, didYouMean: [], plain: true };
  const word = /^[^\s,;()[\]|"]+/.exec(rest)?.[0] ?? rest;
  requireApart(word);
  const kinds = qualifiedBy(word);
  // vacuum pump: of another kind than pump
  const kind = /\d|driven$/i.test(word) || !/\p{L}/u.test(word) ? 0 : kindBehind(rest.slice(word.length));
  return {
    length: word.length + kind,
    didYouMean: kinds.length > 0 ? kinds : near(word, [...knownPhrases(), ...labelled]),
  };
}

function machineIn(written: string): Machine {
  const isLong = written.length > LONGEST;
  // Ⅱ is a sign of its own
  const line = isLong ? "" : written.replace(/[\u2160-\u217f]/g, (numeral) => numeral.normalize("NFKC"));
  let rest = line.replace(BETWEEN, "");
  if (rest === "") throw new VeladisError("syntax", { expected: FORM, received: shown(written) });
  const { add, machine } = nameplate();
  let context: Context = "";
  // a word that says nothing of its own, right before the rest
  let before = "";
  let lead: Lead | undefined;
  let label: Lead | undefined;
  let neighbour: Neighbour | undefined;
  let part: PartSaid = {};
  let stranger = "";
  const aside: SetAside[] = [];
  let gap = "";
  while (rest !== "") {
    const said = saidBy(rest, context);
    const words = rest.slice(0, said.length).replace(/\s+/g, " ");
    const isRead = said.plain ?? (said.didYouMean === undefined && !said.label);
    requirePlain(words, rest.slice(said.length), isRead);
    requireOneValue(said, words, rest.slice(said.length));
    lead = leadAfter(lead, said, rest);
    if (lead?.label !== undefined) label = lead;
    else requireNoNumeral(label, said, words, line.slice(0, line.length - rest.length));
    neighbour = neighbourOf(neighbour, said, words, gap);
    requireNoPart(before, words, said.facts);
    part = partAfter(part, said, words, gap);
    const taken = besideStranger(said, rest, stranger, gap);
    if (taken !== said) aside.push({ facts: said.facts ?? {}, words });
    stranger = strangerAfter(stranger, taken, words, gap);
    add(taken, words);
    const says = said.plain === undefined ? said.didYouMean === undefined : phraseAt(rest) === undefined;
    const isApart = !/^\s/.test(rest.slice(said.length));
    before = says || isApart || !/^[\p{L}‐‑-]+$/u.test(words) ? "" : words;
    context = said.leads === "" ? context : (said.leads ?? "");
    const behind = rest.slice(said.length);
    rest = behind.replace(BETWEEN, "");
    gap = behind.slice(0, behind.length - rest.length);
  }
  const found = machine();
  requireNoOther(found, aside);
  return found;
}

/** The kind of machine that a line says; undefined where none is said or the line is refused. */
function kindIn(line: string): string | undefined {
  try {
    return machineIn(line).type;
  } catch (error) {
    if (error instanceof VeladisError) return undefined;
    throw error;
  }
}

const read = /* @__PURE__ */ cached((line): Machine => {
  const written = line.trim();
  const { line: plain, ...directed } = directedWords(written.length > LONGEST ? "" : plainMarks(written));
  const isDirected = Object.keys(directed).length > 0;
  const machine = machineIn(written.length > LONGEST ? written : plain);
  if (machine.naturalFrequency !== undefined) requireNoDirection(plain);
  requireSupportOfAll(machine, plain);
  requireHorizontal(machine, plain);
  requireFixedFrequency(machine, plain);
  requireNoPlace(written, machine.type, kindIn);
  return isDirected ? frozen<Machine>({ ...machine, ...directed }) : machine;
});

/**
 * The machine that a line of words says: a kind of machine, a power, a speed or a range of speeds, a frame size or shaft
 * height, poles and line frequency, `rigid` or `on springs`, `natural 65 Hz`, `shaft` or `housing`, `new`, and labels
 * such as `group 2`, `class between bearings`, `BV-3`. A label runs to the next fact or comma; one that holds the words
 * of a fact stands in quotation marks: `part "cylinder (rod)"`.
 *
 * A fact is taken only where it is said plainly. A word that is not understood says nothing, nor does a fact in words
 * such as `flexible` before it or up to a comma behind it, nor a label such as `category II` behind it, nor a kind of machine right behind it (`flexible pipe`, `heat pump`); `notUnderstood`
 * names them, with the nearest words that are. `new` and `shaft` right before such a word are refused, unless it is a
 * thing that they are known to be about (`new bearing`); a comma parts them: `new, premium`. So is
 * `shaft` beside a power (`90 kW at shaft`), and a place that makes another machine (`generator in diesel hall`). What a word
 * is only taken for, and what drives the machine, `assumedFacts` names: a chiller for a compressor, 500 kVA of a generator for 350 to 500 kW, 4 poles at 50 Hz for 1500 r/min.
 *
 * @throws {@link VeladisError} `syntax` for facts that contradict each other, with both named, for a second value of a label
 *   (`category II / I`), for a word that makes
 *   another kind of a machine (`pump, diesel`), for a word that leaves
 *   a fact open (not, up to, about, max, or, `<`, `?` ...), and for `new` or `shaft` before a word that is not understood; a fact without a comma beside the name of
 *   another machine (`driven by motor on springs`); `missing-fact` for a generator with its driver; `not-a-number` for a
 *   comma that may be decimal or not; `out-of-range` for a range that falls, or poles that the speed does not fit
 * @example
 * ```ts
 * import { parseMachine } from "veladis/severity";
 *
 * parseMachine("pump 90 kW rigid");
 * // => { type: "pump", power: "90 kW", support: "rigid" }
 * parseMachine("ID fan 250 kW on springs BV-3");
 * // => { type: "fan", power: "250 kW", support: "flexible", category: "BV-3",
 * //   assumedFacts: ['support flexible: for "springs"'] }
 * parseMachine("motor 280M rigd").notUnderstood;
 * // => [{ word: "rigd", didYouMean: ["rigid"] }]
 * ```
 */
export function parseMachine(line: string): Machine {
  return withParameters({ line }, () => {
    return read(requireText(line, FORM, { parameter: "line" }));
  });
}
