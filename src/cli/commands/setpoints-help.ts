/** The page that `veladis setpoints --help` prints. */
export const help = `veladis setpoints --baseline "<reading>" | --file <csv> --from "<type>" ...

Alarm, trip, delay and hysteresis for a machine, from its baseline and a table of limits, each number with its
reason and the source of the rule. The proposal is for the person who answers for the machine to decide on.

  veladis setpoints --baseline "2 mm/s rms" --scheme iso-10816-7-2009 \\
    --machine "pump 250 kW 2980 r/min rigid category I"
  veladis setpoints --baseline "0.12 in/s pk" --limits "0.2 in/s pk, 0.35 in/s pk" --machine "pump 1180 r/min" \\
    --step "0.05 in/s pk" --band 10-1000 --loop "0 to 0.8 in/s pk"
  veladis setpoints --file docs/examples/pump-rig/normal-excerpt.csv --from "g rms" --k 3

baseline
  --baseline <reading>     one reading, or none
  --file <csv>             or readings of steady running, in column 2 or --column; times in column 1 or --time
  --from <type>            what the readings of a file are written in
  --start-up <seconds>     leaves readings out that are earlier than this
limits
  --scheme <table>         a table of limits (veladis schemes lists them), or a .json file with one of your own
  --limits "<B/C>, <C/D>"  limits of the maker or the site in their place
  --machine <words>        "pump 90 kW 1490 r/min rigid"; kind and speed also decide the delay
  --k <number>             standard deviations of the statistical alternative, 3 if not given
sensor and device
  --noise-floor, --full-scale <reading>, --loop "0 to 25.4 mm/s rms"
  --step, --lowest, --highest <reading>    steps and range of the device's setpoint
  --band <low-high>                        its measuring band in Hz: 10-1000, or "10 Hz to 1 kHz"
  --rounds down|nearest|up                 what it does between two steps, nearest if not given
  --asked <reading>        what a setpoint of yours becomes in the device
  --delay <seconds>        a trip delay of yours, to be judged

  --sheet markdown|html|json  the proposal as a sheet to sign, in place of the answer
  --name <text>            the machine's name on the sheet
  --json                   one JSON object
`;
