import * as protection from "veladis/protection";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const p: Record<string, Loose> = protection;

const baseline = (readings: unknown, options?: unknown) => p.baseline(readings, options);
const as = { as: "mm/s rms" };
const five = [2, 2.1, 1.9, 2, 2.2];
const seasons = ["summer", "summer", "summer", "winter", "winter"];
const seasonal = p.baseline([2, 2.1, 1.9, 6, 6.1, 5.9], {
  as: "mm/s rms",
  modes: { readings: [...seasons, "winter"] },
});
const propose = (changed: object) =>
  p.proposeSetpoints({ scheme: "iso-10816-3-2009", machine: "group 1 rigid", baseline: "2 mm/s rms", ...changed });
const slowOnly = {
  id: "slow",
  kind: "zones",
  standard: "site rule",
  classes: [
    {
      criteria: [
        {
          as: "um pp",
          limits: { "B/C": 50, "C/D": 90 },
          when: { speed: { below: 600 } },
          source: { title: "site rule", provenance: "memory" },
        },
      ],
    },
  ],
};
const limits = { "B/C": "4.5 mm/s rms", "C/D": "7.1 mm/s rms", source: "site rule" };
const ofSite = (changed: object) => p.proposeSetpoints({ baseline: "none", limits: { ...limits, ...changed } });

const cases: Cases = {
  "askedWarnings, nothing": () => p.askedWarnings(undefined, propose({})),
  "baseline, a mistyped option": () => baseline(five, { ...as, enouhg: 5 }),
  "baseline, a mistyped part of the speeds": () =>
    baseline(five, { ...as, speed: { readings: five, atleast: "1 r/min" } }),
  "baseline, a mistyped part of the times": () => baseline(five, { ...as, time: { readings: five, form: 1 } }),
  "baseline, a number for readings": () => baseline(5, as),
  "baseline, enough below zero": () => baseline(five, { ...as, enough: -1 }),
  "baseline, a text for a percentile": () => baseline(five, { ...as, percentile: "95" }),
  "baseline, null for speeds": () => baseline(five, { ...as, speed: null }),
  "baseline, a number for a unit of speed": () => baseline(five, { ...as, speed: { readings: five, unit: 60 } }),
  "baseline, null for times": () => baseline(five, { ...as, time: null }),
  "baseline, a first time not a number": () => baseline(five, { ...as, time: { readings: five, start: Number.NaN } }),
  "baseline, a text for a last time": () => baseline(five, { ...as, time: { readings: five, end: "5" } }),
  "baseline, no options": () => baseline(five),
  "baseline, no readings": () => baseline(undefined, as),
  "baseline, in decibels": () => baseline(five, { as: "dB re 1e-9 m/s" }),
  "baseline, a percentile that is none": () => baseline(five, { ...as, percentile: 101 }),
  "baseline, a reading below zero": () => baseline([2, -2], as),
  "baseline, a reading missing": () => baseline([2, null], as),
  "baseline, marks for other readings": () => baseline(five, { ...as, mask: [true] }),
  "baseline, no speeds": () => baseline(five, { ...as, speed: {} }),
  "baseline, speeds for other readings": () => baseline(five, { ...as, speed: { readings: [1500] } }),
  "baseline, a speed below zero": () => baseline(five, { ...as, speed: { readings: [1500, -1, 1500, 1500, 1500] } }),
  "baseline, times for other readings": () => baseline(five, { ...as, time: { readings: [0] } }),
  "baseline, a time not a number": () => baseline(five, { ...as, time: { readings: [0, 1, Number.NaN, 3, 4] } }),
  "baseline, two readings": () => baseline([2, 2.1], as),
  "proposeSetpoints, a kind of machine that rule api shaft is not for": () =>
    p.proposeSetpoints({ baseline: "20 um pp", rule: "api shaft", machine: "diesel engine 1500 r/min shaft" }),
  "proposeSetpoints, a speed that rule api shaft is not for": () =>
    p.proposeSetpoints({ baseline: "20 um pp", rule: "api shaft", machine: "pump 300 r/min shaft" }),
  "proposeSetpoints, a mistyped key": () => propose({ ondelay: 3 }),
  "proposeSetpoints, a mistyped key of the sensor": () => propose({ sensor: { fullscale: "50 g pk" } }),
  "proposeSetpoints, a mistyped key of the limits": () => ofSite({ "A/B": "2 mm/s rms" }),
  "proposeSetpoints, limits of no source": () => ofSite({ source: undefined }),
  "proposeSetpoints, a machine that informative ranges are for": () =>
    propose({ limits: undefined, scheme: undefined, machine: "cooling tower fan 75 kW 150 r/min" }),
  "proposeSetpoints, a machine without its kind": () =>
    propose({ limits: undefined, scheme: undefined, machine: "90 kW" }),
  "proposeSetpoints, a displacement of a machine with a fan's limits at one place and zones at the other": () =>
    propose({ baseline: "60 um pp", scheme: undefined, machine: "fan 3 kW 1480 r/min rigid" }),
  "proposeSetpoints, rule api shaft without speed": () =>
    p.proposeSetpoints({ baseline: "20 um pp", rule: "api shaft", machine: "compressor shaft" }),
  "proposeSetpoints, rule api shaft on the housing": () =>
    p.proposeSetpoints({ baseline: "20 um pp", rule: "api shaft", machine: "compressor 3000 r/min housing" }),
  "proposeSetpoints, rule api shaft for a velocity": () =>
    p.proposeSetpoints({ baseline: "2 mm/s rms", rule: "api shaft", machine: "compressor 3000 r/min" }),
  "proposeSetpoints, a rule there is none of": () =>
    p.proposeSetpoints({ baseline: "20 um pp", rule: "api" as "api shaft", machine: "compressor 3000 r/min" }),
  "proposeSetpoints, a rule beside a scheme": () =>
    p.proposeSetpoints({ baseline: "20 um pp", rule: "api shaft", scheme: "none", machine: "compressor 3000 r/min" }),
  "proposeSetpoints, ranges that are informative": () =>
    propose({ limits: undefined, scheme: "iso-20816-1-2016-ranges", machine: "cooling tower fan 75 kW 150 r/min" }),
  "proposeSetpoints, nothing": () => p.proposeSetpoints(),
  "proposeSetpoints, null for the device": () => propose({ device: null }),
  "proposeSetpoints, null for the sensor": () => propose({ sensor: null }),
  "proposeSetpoints, zero deviations": () => propose({ k: 0 }),
  "proposeSetpoints, a device that rounds off": () => propose({ device: { rounds: "off" } }),
  "proposeSetpoints, null for the limits": () => propose({ limits: null }),
  "proposeSetpoints, null for a baseline": () => propose({ baseline: null }),
  "proposeSetpoints, statistics without a mean": () =>
    propose({ baseline: { ...baseline(five, as), mean: undefined } }),
  "proposeSetpoints, statistics without a level": () =>
    propose({ baseline: { ...baseline(five, as), level: undefined } }),
  "proposeSetpoints, statistics with a text for a level": () =>
    propose({ baseline: { ...baseline(five, as), level: "2 mm/s rms" } }),
  "proposeSetpoints, statistics with a level of another quantity than its unit": () =>
    propose({ baseline: { ...baseline(five, as), level: { ...baseline(five, as).level, quantity: "acceleration" } } }),
  "proposeSetpoints, statistics with a word for what was assumed": () =>
    propose({ baseline: { ...baseline(five, as), assumed: "sine" } }),
  "proposeSetpoints, statistics that assumed nothing known": () =>
    propose({ baseline: { ...baseline(five, as), assumed: ["cosine"] } }),
  "proposeSetpoints, no baseline": () => propose({ baseline: undefined }),
  "proposeSetpoints, a delay below zero": () => propose({ onDelay: -1 }),
  "proposeSetpoints, a scheme of grades": () => propose({ scheme: "iso-10816-6-1995-grades" }),
  "proposeSetpoints, a table that does not apply at the speed": () =>
    propose({ scheme: slowOnly, machine: "1500 r/min" }),
  "proposeSetpoints, a limit missing": () => ofSite({ "C/D": undefined }),
  "proposeSetpoints, a limit of zero": () => ofSite({ "B/C": "0 mm/s rms" }),
  "proposeSetpoints, limits out of order": () => ofSite({ "C/D": "4 mm/s rms" }),
  "baseline, modes for other readings": () => baseline(five, { ...as, modes: { readings: ["a"] } }),
  "baseline, a mistyped part of the modes": () => baseline(five, { ...as, modes: { reading: seasons } }),
  "baseline, null for modes": () => baseline(five, { ...as, modes: null }),
  "baseline, a number for the list of modes": () => baseline(five, { ...as, modes: { readings: 5 } }),
  "baseline, a mode without a name": () => baseline(five, { ...as, modes: { readings: ["a", "a", " ", "a", "a"] } }),
  "baseline, modes of names and numbers": () => baseline(five, { ...as, modes: { readings: ["a", 2, "a", 2, "a"] } }),
  "baseline, a mode not a number": () => baseline(five, { ...as, modes: { readings: [1, 2, Number.NaN, 4, 5] } }),
  "baseline, a mode that none of the readings has": () =>
    baseline(five, { ...as, modes: { readings: seasons, only: "spring" } }),
  "baseline, a number for the one mode": () => baseline(five, { ...as, modes: { readings: seasons, only: 5 } }),
  "baseline, a range of modes that falls": () => baseline(five, { ...as, modes: { readings: five, only: "9 to 2" } }),
  "baseline, a range of modes in words": () => baseline(five, { ...as, modes: { readings: five, only: "all" } }),
  "proposeSetpoints, operating modes far apart": () => propose({ baseline: seasonal }),
  "proposeSetpoints, operating modes without limits": () => propose({ baseline: seasonal, scheme: "none" }),
  "proposeSetpoints, a number for multiples": () => propose({ multiples: 2 }),
  "proposeSetpoints, null for multiples": () => propose({ multiples: null }),
  "proposeSetpoints, no multiples": () => propose({ multiples: {} }),
  "proposeSetpoints, a mistyped multiple": () => propose({ multiples: { alarms: 2 } }),
  "proposeSetpoints, multiples in other words": () => propose({ multiples: "alert twice" }),
  "proposeSetpoints, a multiple that is no number": () => propose({ multiples: "alarm two times" }),
  "proposeSetpoints, a text for a multiple": () => propose({ multiples: { alarm: "2" } }),
  "proposeSetpoints, a multiple of 1": () => propose({ multiples: { alarm: 1 } }),
  "proposeSetpoints, a trip by a lower multiple than the alarm": () => propose({ multiples: "alarm 3, trip 2" }),
  "proposeSetpoints, multiples without a baseline": () => propose({ baseline: "none", multiples: { alarm: 2 } }),
  "proposeSetpoints, multiples of zero": () => propose({ baseline: "0 mm/s rms", multiples: { alarm: 2 } }),
  "proposeSetpoints, a multiple for a trip without limits": () => propose({ scheme: "none", multiples: { trip: 3 } }),
  "proposeSetpoints, a number for a raised setpoint": () => propose({ raised: 2 }),
  "proposeSetpoints, null for a raised setpoint": () => propose({ raised: null }),
  "proposeSetpoints, a factor with two points": () =>
    propose({ raised: "2.2.2 times from 900 to 1400 r/min for 30 s" }),
  "proposeSetpoints, seconds with two points": () => propose({ raised: "2 times from 900 to 1400 r/min for 3.3.3 s" }),
  "proposeSetpoints, an empty raised setpoint": () => propose({ raised: "" }),
  "proposeSetpoints, a raised setpoint without speeds": () => propose({ raised: "2 times" }),
  "proposeSetpoints, a mistyped part of a raised setpoint": () => propose({ raised: { factors: 2 } }),
  "proposeSetpoints, a raised setpoint without an end": () => propose({ raised: { factor: 2, from: "900 r/min" } }),
  "proposeSetpoints, a text for a factor": () => propose({ raised: { factor: "2" } }),
  "proposeSetpoints, a factor of a bypass": () => propose({ raised: "10 times from 900 to 1400 r/min for 30 s" }),
  "proposeSetpoints, raised within speeds that fall": () =>
    propose({ raised: "2 times from 1400 to 900 r/min for 30 s" }),
  "proposeSetpoints, raised for no time": () => propose({ raised: "2 times from 900 to 1400 r/min for 0 s" }),
  "proposeSetpoints, raised without a time": () => propose({ raised: "2 times from 900 to 1400 r/min" }),
  "proposeSetpoints, raised without a running speed": () =>
    propose({ raised: "2 times from 900 to 1400 r/min for 30 s" }),
  "proposeSetpoints, raised at the running speed": () =>
    propose({ machine: "group 1 rigid 1490 r/min", raised: "2 times from 900 to 1490 r/min for 30 s" }),
  "proposeSetpoints, raised beyond all that is read": () =>
    propose({
      machine: "group 1 rigid 1490 r/min",
      raised: "2 times from 700 to 900 r/min for 30 s",
      sensor: { fullScale: "10 mm/s rms" },
    }),
  "proposeSetpoints, raised without a trip": () =>
    propose({ machine: "1490 r/min", scheme: "none", raised: "2 times from 700 to 900 r/min for 30 s" }),
  "delayAdvice, a machine near one": () => p.delayAdvice("pumpe", 25),
  "delayAdvice, at a standstill": () => p.delayAdvice("pump", 0),
};

holdWording("setpoints", cases);
