/**
 * The main job by the public names, as code that runs anywhere: `job` takes the functions and gives plain data.
 * It is text, since it is written into the files of a consumer.
 */
export const job = `({ convert, classify, TripLogic }) => {
  const machine = { type: "motor", shaftHeight: "355 mm", support: "rigid" };
  const judged = ["4.1 mm/s rms", "4.6 mm/s rms"].map((reading) =>
    classify(reading, { scheme: "iso-10816-3-2009", machine }));
  const logic = new TripLogic({
    threshold: "7.1 mm/s rms", hysteresis: "5 %", onDelay: 3, timerResets: "below threshold", sensorFault: "alarm",
    latching: false, contact: "normally closed", coil: "normally energised",
  });
  let refused;
  try { convert(1, "mm/s", "in/s pk"); } catch (error) { refused = error.code; }
  return {
    inches: convert(25.4, "mm/s pk", "in/s pk"),
    mils: convert(0.25, "in/s pk", "mil pp", { at: "1500 r/min" }).toFixed(9),
    zones: judged.map(({ zone }) => zone),
    limit: judged[0].limit.value,
    events: logic.run([4, 4, 9, 9, 4, 8, 8, 8, 8, 4], 1).map(({ time, event }) => time + " s " + event),
    refused,
  };
}`;

/**
 * What it gives. The inch is 25.4 mm (NIST SP 811, Appendix B.8). A displacement is the velocity over 2 pi f (Thomson,
 * Theory of Vibration, section 1.3): 0.25 in/s over 50 pi, doubled for peak to peak, is 10/pi mil. ISO 10816-3:2009,
 * Table A.1, rigid: B to C at 4.5 mm/s. Above 7.1 for 2 s is too short for 3 s; from 5 s on it is long enough at 8 s.
 */
export const answers = {
  inches: 1,
  mils: (10 / Math.PI).toFixed(9),
  zones: ["B", "C"],
  limit: 4.5,
  events: ["8 s trip", "9 s clear"],
  refused: "missing-detector",
} as const;

/** The imports of the job as an ES module, from these places. */
export function jobImports(at: (entry: string) => string = (entry) => entry): string {
  return [
    `import { convert } from "${at("veladis")}";`,
    `import { classify } from "${at("veladis/severity")}";`,
    `import { TripLogic } from "${at("veladis/protection")}";`,
    `const result = (${job})({ convert, classify, TripLogic });`,
  ].join("\n");
}
