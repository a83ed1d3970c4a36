import { plainNumber, significant } from "../reading/index";
import type { RaisedSetpoints } from "./raised-setpoints";

/** Raised setpoints in words: how many times, within which speeds, for how long, and what they are. */
export function raisedText({ factor, speed, seconds, alarm, trip }: RaisedSetpoints, as: string): string {
  const [from, to] = speed.map((one) => significant(one, 4));
  const levels = [alarm && `ALARM ${significant(alarm.value, 4)}`, trip && `TRIP ${significant(trip.value, 4)}`];
  const time = seconds === undefined ? "" : `, for ${plainNumber(seconds)} s at the most`;
  return `${plainNumber(factor)} times from ${from} to ${to} r/min${time}: ${levels.filter((one) => one !== null).join(", ")} ${as}`;
}
