import { all, create } from "mathjs";
import { completions, evaluateLine, helpText, newSession, registerAmplitudes } from "veladis/mathjs";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

const line = (text: unknown) => evaluateLine(text as string);
const after = async (...texts: string[]) => {
  const session = newSession();
  for (const text of texts) await evaluateLine(text, session);
};
const full = async () => {
  const session = newSession();
  for (let i = 0; i < 1000; i++) session.variables.set(`a${i}`, i);
  await evaluateLine("more = 1", session);
};
const math = registerAmplitudes(create(all as NonNullable<typeof all>));

const cases: Cases = {
  "a line for the shell": () => line("veladis judge \"4.9 mm/s rms\""),
  "a remainder, or a percentage before more arithmetic": () => line("10 % + 5 %"),
  "a session that is none": () => evaluateLine("2 * 3", {} as never),
  "no session to complete from": () => completions("4 mm", undefined as never),
  "a number to complete": () => completions(4 as never, newSession()),
  "help about a number": () => helpText(4 as never),
  "no instance to register in": () => registerAmplitudes(undefined as never),
  "an instance that is none": () => registerAmplitudes({ typed: () => 0 } as never),
  "schemes that are no list": () => newSession("iso-20816-3-2022" as never),
  "ids in place of schemes": () => newSession(["iso-20816-3-2022"] as never),
  "a scheme without classes": () => newSession([{ id: "site", kind: "zones", standard: "site rule" }] as never),
  "an empty place in a list of schemes": () => newSession([undefined] as never),
  "null for schemes": () => newSession(null as never),
  "no line": () => line(undefined),
  "an empty line": () => line(" "),
  "a function without a call": () => line("judge"),
  "a function without a call, in arithmetic": () => line("2 * rss"),
  "a function of numbers without a call": () => line("log10"),
  "a line of any length": () => line("1+".repeat(500)),
  "brackets within brackets": () => line("(".repeat(40)),
  "an expression of too many parts": () => after("b = 1", `${"2b+".repeat(160)}2b`),
  "an expression that breaks off": () => line("2 + * 3"),
  "two assignments": () => line("a = b = 2"),
  "a to within brackets": () => line("rss(c to g rms, 1 g rms)"),
  "several types for a name": () => line("a = 2 mm/s rms to in/s rms, in/s pk"),
  "no target after to": () => line("2 mm/s rms to"),
  "a name of a function": () => line("mean = 2"),
  "a name with an underscore in front": () => line("_a + 1"),
  "a crest factor for nothing": () => line("2 mm/s rms crest factor 3"),
  "a crest factor with a decimal comma": () => line("2 mm/s rms crest factor 3,5 to mm/s pk"),
  "a number as an amplitude": () => line("2 * 3 to mm/s rms"),
  "a number with a unit alone": () => line("2 mm/s + 1"),
  "no frequency after at": () => line("2 mm/s rms at + 1"),
  "a frequency that is none": () => line("2 mm/s rms at 25 furlongs"),
  "more variables than a session holds": () => full(),
  "a variable near one": () => after("reading = 2", "raeding * 2"),
  "a function near one": () => line("maen(1, 2)"),
  "a function of something else": () => after("b = 1", "b.c(3)"),
  "no value for a function": () => line("mean()"),
  "too few values for a function": () => line("change(2 mm/s rms)"),
  "an empty list": () => line("mean([])"),
  "a text among numbers": () => line('mean(1, "two")'),
  "a vector difference without an angle": () => line('vectorDifference(3 mil pp, 1 mil pp, "square")'),
  "a number among amplitudes": () => line("rss(2.1 mm/s rms, 0.8)"),
  "a text for a function of numbers": () => line('sqrt("two")'),
  "a function without finite value": () => line("log(0)"),
  "a root without real value": () => line("sqrt(-1)"),
  "a quotient without finite value": () => line("1 / 0"),
  "a number beyond all numbers": () => line("1e999"),
  "a text times a number": () => line('"two" * 2'),
  "an amplitude times an amplitude": () => line("2 mm/s rms * 3 mm/s rms"),
  "the sign of an amplitude": () => line("-(2 mm/s rms)"),
  "a difference below zero": () => line("2 mm/s rms - 3 mm/s rms"),
  "velocity and displacement": () => line("2 mm/s rms + 3 um rms"),
  "RMS and peak": () => line("2 mm/s rms + 3 mm/s pk"),
  "two frequencies": () => line("2 mm/s rms at 25 Hz + 3 mm/s rms at 50 Hz"),
  "two levels to add": () => line("95 dB re 1e-9 m/s + 95 dB re 1e-9 m/s"),
  "two levels of two references": () => line("95 dB re 1e-9 m/s - 95 dB re 1e-8 m/s"),
  "a level without a reference": () => line("95 dB to mm/s rms"),
  "a level that lacks its reference": () => line("95 dB re"),
  "a number of decibels plus a number": () => line("6 dB + 3"),
  "a reading taken off a number of decibels": () => line("6 dB - 4.5 mm/s rms"),
  "a number of decibels with a decimal comma": () => line("6,5 dB"),
  "a number of decibels over zero": () => line("6 dB / 0"),
  "a reading raised beyond all numbers": () => line("4.5 mm/s rms + 99999 dB"),
  "a reading lowered to nothing": () => line("4.5 mm/s rms - 99999 dB"),
  "no number of decibels, in an instance of mathjs": () => math.evaluate("decibels(NaN)"),
  "peaks in a sum of squares": () => line("rss(2 mm/s pk, 3 mm/s pk)"),
  "an operator that is none": () => line("5!"),
  "a choice": () => line("1 ? 2 : 3"),
  "a part of a value": () => line("[1, 2][1]"),
  "a definition": () => line("f(x) = x"),
  "the number of a number": () => line("value(2)"),
  "a reading type that is no text": () => line("value(2 mm/s rms, 3)"),
  "another frequency of a number": () => line('at(2, "25 Hz")'),
  "a frequency that is no text": () => line("at(2 mm/s rms, 25)"),
  "the frequency of a number": () => line("hertz(2)"),
  "a frequency that is not known": () => line("hertz(2 mm/s rms)"),
  "the change of a number": () => line("change(2, 3 mm/s rms)"),
  "the change from a number": () => line("change(2 mm/s rms, 3)"),
  "the change from zero": () => line("change(2 mm/s rms, 0 mm/s rms)"),
  "the zone of a number": () => line('judge(2, "pump 90 kW rigid")'),
  "a machine that is no text": () => line("judge(2 mm/s rms, 3)"),
  "a scheme that is no text": () => line('judge(2 mm/s rms, "pump 90 kW rigid", 3)'),
  "setpoints from a number": () => line('setpoints(2, "pump 90 kW rigid")'),
  "setpoints for a machine that is no text": () => line("setpoints(2 mm/s rms, 3)"),
  "setpoints by a scheme that is no text": () => line('setpoints(2 mm/s rms, "pump 90 kW rigid", 3)'),
  "an explanation of a number": () => line("explain 2 * 3"),
  "an explanation of nothing": () => line("explain"),
  "an amplitude over none": () => line("2 mm/s rms / 0 mm/s rms"),
  "an amplitude over zero": () => line("2 mm/s rms / 0"),
  "an amplitude times less than zero": () => line("2 mm/s rms * (0 - 1)"),
  "an amplitude over no number, in an instance of mathjs": () => math.evaluate('amplitude("2 mm/s rms") / Infinity'),
  "an amplitude times no number, in an instance of mathjs": () => math.evaluate('amplitude("2 mm/s rms") * NaN'),
  "help on a topic near one": () => helpText("rrs"),
  "help on a topic near none": () => helpText("weather"),
  "a number among amplitudes in an instance of mathjs": () => math.evaluate('rss(amplitude("2 mm/s rms"), 3)'),
  "lists of two lengths in an instance of mathjs": () =>
    math.evaluate('[amplitude("2 mm/s rms")] + [amplitude("2 mm/s rms"), amplitude("1 mm/s rms")]'),
  "a list times a list in an instance of mathjs": () => math.evaluate('[amplitude("2 mm/s rms")] * [1]'),
  "a number over a list in an instance of mathjs": () => math.evaluate('[1] / [amplitude("2 mm/s rms")]'),
  "an order to sort by that is none, in an instance of mathjs": () =>
    math.evaluate('sort([amplitude("2 mm/s rms")], "up")'),
  "an amplitude times a complex number, in an instance of mathjs": () => math.evaluate('amplitude("2 mm/s rms") * 2i'),
  "an amplitude times more than a number holds, in an instance of mathjs": () =>
    math.evaluate('amplitude("2 mm/s rms") * bignumber("1e400")'),
  "an amplitude times less than a number holds, in an instance of mathjs": () =>
    math.evaluate('amplitude("2 mm/s rms") * bignumber("1e-400")'),
};

holdWording("repl", cases);
