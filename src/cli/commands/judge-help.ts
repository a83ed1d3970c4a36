/** The page that `veladis judge --help` prints. */
export const help = `veladis judge "<reading>" --machine "<machine>" [--scheme <table>]

Which zone a reading is in, by the published table that is for the machine.

  veladis judge "4.1 mm/s rms" --machine "pump 90 kW 2980 r/min category II"
  veladis judge "0.25 in/s pk at 1490 r/min" --machine "motor 315 mm rigid" --scheme iso-10816-3-2009
  veladis judge "6 mil pp" --machine "motor 3600 r/min shaft" --scheme iso-7919-3-2009
  veladis judge "3.1 mm/s rms" --machine "group 1 rigid" --scheme iso-10816-3-2009 --since "1.8 mm/s rms"
  veladis judge "5 mm/s rms" --machine "fan flexible" --scheme site-rule.json
  printf '4.1 mm/s rms\\n0.2 in/s pk\\n' | veladis judge --machine "pump 90 kW category II"

machine    a kind of machine, power (kW, MW, hp), speed (r/min, Hz), shaft height (mm),
           rigid or flexible (or: natural 65 Hz), housing or shaft, new or in service,
           and labels the tables use: group 2, class III, category II, BV-3, grade B
tables     veladis schemes lists them; without --scheme, the first that is for the machine

options
  --machine <words>   the machine, as above
  --scheme <table>    id of a table, or a .json file with a table of your own
  --since <reading>   a baseline: whether the change since is significant
  --crest-factor <n>  peak over RMS, in place of the sine's 1.414
  --strict            refuse when a fact is missing, in place of taking the lowest limits
  --digits <n>        significant digits, 3 if not given
  --json              one JSON object a line
  --keep-going        exit 0 although some lines were refused (they are still reported)

Limits marked MEMORY were not read in print: check them against the standard. Limits of the
machine's maker, site rules, local codes and licensed practice govern.
Refused input is explained on standard error, and the exit code is 2.
`;
