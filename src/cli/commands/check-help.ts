/** The page that `veladis check --help` prints. */
export const help = `veladis check --known "<reading>" --indicated "<reading>" --tolerance "<share>"

What a device shows, held against the known vibration of a reference shaker.

  veladis check --known "0.40 in/s pk at 1800 r/min" --indicated "0.43 in/s pk" --tolerance "10 %"
  veladis check --known "10 mm/s rms at 79.4 Hz" --indicated "9.6 mm/s rms" --tolerance "5 %" --uncertainty "3 %"
  veladis check --known "0.40 in/s pk at 1800 r/min" --indicated "0.43 in/s pk" --as-left "0.40 in/s pk" \\
    --tolerance "5 %" --sheet markdown --name "Boiler-feed pump 2, drive end"
  printf 'known,indicated\\n2,2.1\\n5,5.1\\n10,10.1\\n' | veladis check --from "mm/s rms" --tolerance "5 %"

  --known <reading>        level of the shaker, with its frequency
  --indicated <reading>    what the device shows; in another quantity it is converted at the known frequency
  --as-left <reading>      what it shows after an adjustment; --indicated is then as found
  --tolerance <share>      "5 %", "0.5 dB" or an amount such as "0.02 in/s pk"
  --uncertainty <share>    expanded uncertainty (k = 2) of the known level
  --rule <name>            "simple acceptance" or "guard band"; guard band if there is an uncertainty
  --file <csv>             or piped CSV: columns known and indicated, for linearity over several levels
  --from <type>            what that CSV is written in
  --sheet markdown|html|json  the check as a sheet to sign, in place of the answer
  --name <text>            the machine's name on the sheet
  --json                   one JSON object

The verdict is pass, fail or undecided; the exit code is 0 for all three, and 2 for refused input.
`;
