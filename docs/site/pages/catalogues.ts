import {
  detectorFacts,
  errorCodes,
  frequencyUnitFacts,
  levelReferenceSources,
  unitFacts,
} from "../../../src/entries/facts";
import { sensorFaults, setpointRules, tripEvents, tripStates } from "../../../src/entries/protection";
import { facts, machineTypes } from "../../../src/entries/severity";
import { noiseBandwidth, type WindowName, windows, windowWeights } from "../../../src/entries/signal";
import {
  detectors,
  frequencyUnits,
  levelReferences,
  quantities,
  type UnitSymbol,
  units,
  type VeladisErrorCode,
} from "../../../src/index";
import { codes, KNOWN, known, MADE, page, sourceText, table } from "./markdown";
import { remedies } from "./remedies";

type Row = { readonly also?: readonly string[]; readonly spoken?: readonly string[] };

const spellings = ({ also = [], spoken = [] }: Row): string => codes([...also, ...spoken]);

function unitPage(): string {
  const sections = (Object.keys(quantities) as (keyof typeof quantities)[]).map((quantity) => {
    const rows = (Object.keys(units) as UnitSymbol[])
      .filter((symbol) => units[symbol].quantity === quantity)
      .map((symbol) => {
        const { num, den, ...row } = units[symbol] as (typeof units)[UnitSymbol] & Row;
        const { name, source } = unitFacts[symbol];
        return [
          `\`${symbol}\``,
          name,
          den === 1 ? String(num) : `${num}/${den}`,
          spellings(row),
          known(source),
          sourceText(source),
        ];
      });
    const si = { acceleration: "m/s2", velocity: "m/s", displacement: "m" }[quantity];
    return `## ${quantity}\n\n${table(["symbol", "name", `exactly, in ${si}`, "also read", "known by", "source"], rows)}`;
  });
  return page("Units", [
    `A unit of vibration is an exact ratio of whole numbers to the SI unit of its quantity. ${MADE}`,
    "Squares are read as `2`, `²` or `^2`, micro as `u`, `µ` or `μ`, and `per second` as `/s`.",
    KNOWN,
    ...sections,
  ]);
}

function detectorPage(): string {
  const ratio = ({ num, den, pi, rootTwo }: { num: number; den: number; pi: number; rootTwo: number }): string =>
    ((num / den) * Math.PI ** pi * Math.SQRT2 ** rootTwo).toFixed(6);
  const rows = Object.entries(detectors).map(([symbol, entry]) => {
    const { name, source } = detectorFacts[symbol as keyof typeof detectorFacts];
    return [`\`${symbol}\``, name, ratio(entry), codes(entry.spoken), known(source), sourceText(source)];
  });
  return page("Detectors", [
    `A detector says what was measured of the wave. ${MADE}`,
    "The third column is its reading of a sine whose peak is 1. Case, spaces, dashes, slashes and dots do not matter.",
    KNOWN,
    table(["symbol", "name", "of a sine", "also read", "known by", "source"], rows, [2]),
  ]);
}

function frequencyPage(): string {
  const rows = Object.entries(frequencyUnits).map(([symbol, row]) => {
    const { name, source } = frequencyUnitFacts[symbol as keyof typeof frequencyUnitFacts];
    const per = "radian" in row ? "1/(2 pi)" : row.den === 1 ? String(row.num) : `${row.num}/${row.den}`;
    return [`\`${symbol}\``, name, per, spellings(row), known(source), sourceText(source)];
  });
  return page("Frequencies and shaft speeds", [
    `${MADE} An order stands before a speed: \`2x 1500 r/min\` is 50 Hz.`,
    KNOWN,
    table(["symbol", "name", "in hertz", "also read", "known by", "source"], rows),
  ]);
}

function referencePage(): string {
  const rows = Object.entries(levelReferences).map(([name, { value, unit }]) => {
    const source = levelReferenceSources[name as keyof typeof levelReferenceSources];
    return [`\`dB re ${name}\``, `${value} ${unit}`, known(source), sourceText(source)];
  });
  return page("References of decibel levels", [
    `A level is 20 lg of an RMS value over its reference. ${MADE}`,
    "A level without its reference is refused. Any other reference is written out: `dB re 1e-6 in/s`.",
    KNOWN,
    table(["written", "0 dB is", "known by", "source"], rows),
  ]);
}

function protectionPage(): string {
  const pairs = (of: Readonly<Record<string, string>>): string[][] =>
    Object.entries(of).map(([name, meaning]) => [`\`${name}\``, meaning]);
  const rules = Object.entries(setpointRules).map(([name, { text, source }]) => [
    name,
    text,
    known(source),
    sourceText(source),
  ]);
  return page("Words of protection", [
    `What the trip logic says, and the rules behind proposed setpoints. ${MADE}`,
    `## States of a trip channel\n\n${table(["state", "meaning"], pairs(tripStates))}`,
    `## Events\n\n${table(["event", "meaning"], pairs(tripEvents))}`,
    `## What a sensor fault can do\n\n${codes(sensorFaults)}: it counts as a level above the threshold; output and timers stand still; or the output stays and a voter is told.`,
    `## Rules for setpoints\n\n${KNOWN}\n\n${table(["rule", "text", "known by", "source"], rules)}`,
  ]);
}

function machinePage(): string {
  const types = Object.entries(machineTypes).map(([name, { also }]) => [`\`${name}\``, codes(also)]);
  const asked = Object.entries(facts).map(([name, fact]) => [
    `\`${name}\``,
    fact.ask,
    "unit" in fact ? fact.unit : "words",
  ]);
  return page("Machines and what is asked of them", [
    MADE,
    `## Kinds of machine\n\n${table(["kind", "also read"], types)}`,
    `## Facts\n\nEvery fact may be left out; a table that needs one asks for it.\n\n${table(["fact", "what it is", "given in"], asked)}`,
  ]);
}

function errorPage(): string {
  const rows = (Object.entries(errorCodes) as [VeladisErrorCode, string][]).map(([code, meaning]) => [
    `\`${code}\``,
    meaning,
    remedies[code],
  ]);
  return page("Error codes", [
    `The library throws one class, \`VeladisError\`, and a program branches on its \`code\`. ${MADE}`,
    "An error also carries `expected` (what would have been right), `received` (what came; `nothing` where nothing came), `didYouMean` (the nearest names) and `allowed` (the whole list, where there is one); its `message` puts them into one line. The command prints them on standard error, a line each, or as one JSON object with `--json`, and ends with exit code 2.",
    table(["code", "meaning", "what to do"], rows),
  ]);
}

function windowPage(): string {
  const rows = Object.entries(windows).map(([id, { name, spoken, use, source }]) => [
    `\`${id}\``,
    name,
    noiseBandwidth(windowWeights(id as WindowName, 4096)).toFixed(4),
    use,
    codes(spoken),
    known(source),
    sourceText(source),
  ]);
  return page("Windows", [
    `Windows that a spectrum can be weighed with. ${MADE}`,
    "The third column is the noise bandwidth in lines, by which the sum of squares is divided for an overall.",
    KNOWN,
    table(["window", "name", "noise bandwidth", "for", "also read", "known by", "source"], rows, [2]),
  ]);
}

/** One page a catalogue. */
export function catalogues(): Record<string, string> {
  return {
    "units.md": unitPage(),
    "detectors.md": detectorPage(),
    "frequencies.md": frequencyPage(),
    "level-references.md": referencePage(),
    "protection-words.md": protectionPage(),
    "machines.md": machinePage(),
    "windows.md": windowPage(),
    "errors.md": errorPage(),
  };
}
