/** The page that `veladis table --help` prints. */
export const help = `veladis table <file.csv | file.parquet> --column <name> ... [--to <types>] [--machine "<machine>"]

Adds converted columns and zones to every row of a table. CSV in any size, also piped; Parquet
where the package hyparquet is installed beside veladis. What is written is CSV.

  veladis table readings.csv --column value --from "mm/s rms" --to "in/s pk" --out metric.csv
  veladis table readings.csv --column value --from-column unit --detector rms --to "mm/s rms"
  veladis table readings.csv --column value --from "um pp" --to "mm/s rms" \\
    --speed-column speed --speed-unit r/min --at 1x
  veladis table readings.csv --column value --from "mm/s rms" --machine "group 2 rigid" \\
    --scheme iso-10816-3-2009 --out judged.csv
  veladis table readings.csv --column value --from "mm/s rms" --machine-column machine

columns, by name or number
  --column <name>          the readings; without a type told, whole ones such as "4.1 mm/s rms"
  --from-column <name>     the reading type of each row, or its unit where the detector is told apart
  --detector-column <name> the detector of each row
  --at-column <name>       the frequency of each row; --at-unit Hz for bare numbers
  --speed-column <name>    the running speed of each row; --speed-unit r/min for bare numbers
  --machine-column <name>  words on the machine of each row; may be given several times
  --decimal-comma          numbers are written 7,1 and not 7.1, also those that are added
the same for all rows
  --from <type>            "mm/s rms", or the unit where the detector is told apart
  --detector <detector>    "rms"
  --at <frequency>         "25 Hz", "1500 r/min", or an order of the running speed: "1x"
  --crest-factor <n>       peak over RMS, in place of the sine's 1.414
  --machine <words>        as for veladis judge; words of columns stand behind them
what is added
  --to <types>             columns with the reading in these types
  --scheme <table>         the table of limits to judge by, or a .json file with one of your own;
                           without it, the first that is for the machine
  --strict                 refuse when a fact is missing, in place of taking the lowest limits
  --digits <n>             significant digits; all there are if not given
where it goes
  --out <file>             written beside its place and moved there whole at the end
  --refused <file>         refused rows with line and reason; <out>.refused.csv if not given
  --replace                replace files of these names
  --json                   one JSON object a line, in place of CSV
  --keep-going             exit 0 although some rows were refused (they are still reported)

Added are, behind the row as it was: the types of --to; zone, judged by, limits (read: all limits
read in print; MEMORY: not all, check them against the standard); assumed.
Limits of the machine's maker, site rules, local codes and licensed practice govern.
Refused input is explained, and the exit code is 2.
`;
