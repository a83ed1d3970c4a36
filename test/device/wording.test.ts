import * as protection from "veladis/protection";
import { currentLoop } from "veladis/sensor";
import { multiplierOfText } from "../../src/device/index";
import { holdWording } from "../refusals/hold-wording";
import type { Cases } from "../refusals/refused";
import { settings } from "../trip/trip-settings";

// biome-ignore lint/suspicious/noExplicitAny: what no type allows is handed over on purpose
type Loose = any;
const p: Record<string, Loose> = protection;

const trip = (changed: object) => new p.TripLogic({ ...settings, ...changed });
const relay = { latching: true, contact: "normally open", coil: "normally energised" };

const cases: Cases = {
  "a multiplier without its time": () => multiplierOfText("2"),
  "a multiplier, no factor": () => multiplierOfText("twice for 30 s"),
  "a multiplier, no time": () => multiplierOfText("2 for a while"),
  "TripLogic, null for a threshold": () => trip({ threshold: null }),
  "TripLogic, a hysteresis in decibels": () => trip({ hysteresis: "3 dB" }),
  "TripLogic, latching not said": () => trip({ latching: undefined }),
  "TripLogic, a word for latching": () => trip({ latching: "yes" }),
  "TripLogic, contact not said": () => trip({ contact: undefined }),
  "TripLogic, a contact that is none": () => trip({ contact: "normally opened" }),
  "TripLogic, coil not said": () => trip({ coil: undefined }),
  "TripLogic, a coil that is none": () => trip({ coil: "energized" }),
  "TripLogic, no threshold": () => trip({ threshold: undefined }),
  "TripLogic, a threshold without unit": () => trip({ threshold: 0.51 }),
  "TripLogic, a threshold above the range of a loop": () =>
    trip({ threshold: currentLoop("0 to 0.5 in/s pk").reading(20.9) }),
  "TripLogic, a threshold of zero": () => trip({ threshold: "0 mm/s rms" }),
  "TripLogic, no hysteresis": () => trip({ hysteresis: undefined }),
  "TripLogic, a hysteresis as large as the threshold": () => trip({ hysteresis: "100 %" }),
  "TripLogic, timerResets not said": () => trip({ timerResets: undefined }),
  "TripLogic, a timerResets that is none": () => trip({ timerResets: "below treshold" }),
  "TripLogic, a multiplier of nothing": () => trip({ multiplier: { factor: 0, seconds: 10 } }),
  "TripLogic, a multiplier of 1": () => trip({ multiplier: { factor: 1, seconds: 10 } }),
  "TripLogic, a multiplier for no time": () => trip({ multiplier: { factor: 2, seconds: 0 } }),
  "TripLogic, no onDelay": () => trip({ onDelay: undefined }),
  "TripLogic, an onDelay below zero": () => trip({ onDelay: -1 }),
  "TripLogic, an offDelay below zero": () => trip({ offDelay: -1 }),
  "TripLogic, a startInhibit below zero": () => trip({ startInhibit: -1 }),
  "TripLogic, sensorFault not said": () => trip({ sensorFault: undefined }),
  "TripLogic, a sensorFault that is none": () => trip({ sensorFault: "trip" }),
  "TripLogic, null for the multiplier": () => trip({ multiplier: null }),
  "TripLogic, a mistyped key of the multiplier": () => trip({ multiplier: { factor: 2, second: 10 } }),
  "relayStatus, no settings": () => p.relayStatus(undefined, true, true),
  "relayStatus, a mistyped key": () => p.relayStatus({ ...relay, contacts: "normally open" }, true, true),
  "relayStatus, a word for the trip": () => p.relayStatus(relay, "trip", true),
  "relayStatus, power not said": () => p.relayStatus(relay, true),
  "storedSetpoint, no device": () => p.storedSetpoint("4 mm/s rms"),
  "storedSetpoint, no setpoint": () => p.storedSetpoint(undefined, {}),
  "storedSetpoint, a setpoint of zero": () => p.storedSetpoint("0 mm/s rms", {}),
  "storedSetpoint, no lowest level": () => p.storedSetpoint("4 mm/s rms", { step: "0.1 mm/s rms", lowest: null }),
  "storedSetpoint, a rounding that is none": () => p.storedSetpoint("4 mm/s rms", { rounds: "nearer" }),
  "storedSetpoint, a rounding told that is none": () => p.storedSetpoint("4 mm/s rms", {}, undefined, "off"),
  "storedSetpoint, a step of zero": () => p.storedSetpoint("4 mm/s rms", { step: "0 mm/s rms" }),
  "storedSetpoint, below what the device holds": () => p.storedSetpoint("0.4 mm/s rms", { lowest: "1 mm/s rms" }),
  "storedSetpoint, a mistyped key": () => p.storedSetpoint("4 mm/s rms", { stepp: "0.1 mm/s rms" }),
  "storedSetpoint, null for a band": () => p.storedSetpoint("4 mm/s rms", { band: null }),
  "bandResponse, no band": () => p.bandResponse("25 Hz"),
  "bandResponse, edges out of order": () => p.bandResponse("25 Hz", { lowest: "1000 Hz", highest: "10 Hz" }),
  "bandResponse, an order of zero": () => p.bandResponse("25 Hz", { lowest: "10 Hz", highest: "1000 Hz", order: 0 }),
  "bandResponse, a mistyped key": () => p.bandResponse("25 Hz", { lowest: "10 Hz", highest: "1 kHz", oder: 2 }),
};

holdWording("device", cases);
