/** The page that `veladis check --help` prints. */
export const help = `veladis check --known "<reading>" --indicated "<reading>" --tolerance "<share>"

What a device shows, held against the known vibration of a reference shaker.

  veladis check --known "8 mm/s rms at 2400 r/min" --indicated "7.3 mm/s rms" --tolerance "5 %"
  veladis check --known "8 mm/s rms at 2400 r/min" --indicated "7.7 mm/s rms" --tolerance "5 %" --uncertainty "2 %"
  veladis check --known "8 mm/s rms at 2400 r/min" --indicated "7.3 mm/s rms" --as-left "7.9 mm/s rms" \\
    --tolerance "5 %" --sheet markdown --name "ID fan 1, fan bearing"
  printf 'known,indicated\\n2,2.1\\n5,5.1\\n10,10.1\\n' | veladis check --from "mm/s rms" --tolerance "5 %"

  --known <reading>        level of the shaker, with its frequency
  --indicated <reading>    what the device shows; in another quantity it is converted at the known frequency
  --as-left <reading>      what it shows after an adjustment; --indicated is then as found
  --tolerance <share>      "5 %", "0.5 dB" or an amount such as "0.4 mm/s rms"
  --uncertainty <share>    expanded uncertainty (k = 2) of the known level
  --rule <name>            "simple acceptance" or "guard band"; guard band if there is an uncertainty
  --file <csv>             or piped CSV: columns known and indicated, for linearity over several levels
  --from <type>            what that CSV is written in
  --sheet markdown|html|json  the check as a sheet to sign, in place of the answer
  --name <text>            the machine's name on the sheet
  --json                   one JSON object

The verdict is pass, fail or undecided; the exit code is 0 for all three, and 2 for refused input.
`;
