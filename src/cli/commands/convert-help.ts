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

units      m/s2 mm/s2 cm/s2 Gal g mg in/s2 ft/s2, m/s cm/s mm/s um/s in/s ft/s,
           m cm mm um nm in mil ft, and the ways people write them (ips, micron, thou)
detectors  rms, pk (peak), pp (peak-to-peak), avg (rectified average)
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

Behind an answer, in brackets, what was taken for granted:
  sine           peak, RMS and average are related as for one sine wave
  one frequency  all of the vibration is at the stated frequency
Refused input is explained on standard error, and the exit code is 2.
`;
