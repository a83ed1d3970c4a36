import { detectorFacts } from "../../detectors/index";
import { type Unit, units } from "../../units/index";

/** The symbols of all units, a line for each quantity. */
function unitLines(): string {
  const all = Object.entries<Unit>(units);
  const quantities = [...new Set(all.map(([, { quantity }]) => quantity))];
  return quantities
    .map((one) =>
      all
        .filter(([, { quantity }]) => quantity === one)
        .map(([symbol]) => symbol)
        .join(" "),
    )
    .join(",\n           ");
}

/** The page that `veladis --help` prints of this command. */
export const help = `veladis "<reading> [at <frequency>] [with crest factor <n>] [to <type>, <type> ...]"

A reading is a value, a unit and a detector. Without "to", all everyday equivalents.

  veladis "0.25 in/s pk at 1500 r/min to mm/s rms"
  veladis "0.25 in/s pk at 1500 r/min to mm/s rms, mil pp, g pk"
  veladis "0.25 in/s pk at 1500 r/min"
  veladis "95 dB re 1e-9 m/s to mm/s rms"
  veladis "2 g rms with crest factor 4 to g pk"
  printf '4.1 mm/s rms\\n0.2 in/s pk\\n' | veladis --to "mm/s rms"
  veladis --file route.txt --to "mm/s rms"
  veladis --file levels.csv --column 2 --from "g rms" --to "m/s2 rms, g pk"

units      ${unitLines()},
           and the ways people write them (m/s², ips, µm, micron, thou)
detectors  ${Object.entries(detectorFacts)
  .map(([symbol, { name }]) => `${symbol} (${name})`)
  .join(", ")}
frequency  25 Hz, 1500 r/min (rpm, cpm), 157 rad/s, 2x 1500 r/min
levels     dB re 1e-9 m/s, dB re ISO 1683 velocity

options
  --to <types>      what to convert to, when the lines do not say it
  --from <type>     reading type of lines or cells that are bare numbers
  --at <frequency>  frequency for readings that have none of their own
  --file <path>     a route file: "place: reading" lines, # for remarks; printed as one table
  --column <name>   a column of a CSV file or of piped CSV, by name or number; prints CSV
  --digits <n>      significant digits, 3 if not given; CSV and JSON values are always whole
  --json            one JSON object a line
  --keep-going      exit 0 although some lines were refused (they are still reported)

Behind an answer, in brackets, what was assumed:
  sine           peak, RMS and average are related as for one sine wave
  one frequency  all of the vibration is at the stated frequency
Refused input is explained on standard error, and the exit code is 2.
`;
