import { VeladisError } from "../../../src/index";

/** The text of a field, refused where it has ±, which no page carries: the command that does is named. */
export function withoutPlusMinus(text) {
  if (!/±|\+\/[-−]/.test(text)) return text;
  throw new VeladisError("syntax", {
    expected:
      'a value without ±, which this page does not carry. The command carries that of a reading: veladis judge "4.9 ± 0.3 mm/s rms (k=2)" --machine "pump 90 kW 2980 r/min category II", or veladis "4.9 ± 0.3 mm/s rms (k=2) to in/s pk". Here, take a reading plus its uncertainty; try a setting at both ends of it',
    received: JSON.stringify(text),
  });
}
