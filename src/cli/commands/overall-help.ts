/** The page that `veladis overall --help` prints. */
export const help = `veladis overall <file> --rate <samples a second> --unit <unit>

The overall level of a sampled vibration within a band, and its highest lines. The level is
computed from the samples, frequency by frequency: no single frequency is assumed.

  veladis overall fan.csv --rate 5120 --unit g
  veladis overall fan.csv --rate 5120 --unit g --column 2 --to "mm/s rms, um pp, g pk"
  veladis overall pump.f32 --rate 25600 --unit m/s2 --band 2-1000 --speed "2960 r/min"
  veladis overall pump.raw --format int16 --scale 0.00048828 --rate 25600 --unit g
  veladis overall pump.f64 --rate 25600 --unit g --machine "pump 90 kW 2960 r/min category II"

files      CSV (one column, or --column; a header, blank lines and # lines are passed over),
           or raw numbers: float32, float64, int16, int32 (endings .f32 .f64 .i16 .i32);
           without a file, what is piped in

options
  --rate <n>          samples a second
  --unit <unit>       unit of the samples: g, m/s2, mm/s, um, ...
  --to <types>        what to answer in; "mm/s rms" if not given
  --band <low-high>   band in Hz, or "10 Hz to 1 kHz"; that of the table with --machine or --scheme, else 10-1000
  --edges <rule>      ideal (if not given), or 3dB as an instrument has them
  --order <n>         order of the -3 dB edges; 3 if not given
  --window <name>     hann where tones do not fit the record; RMS values only
  --detrend <what>    mean (if not given), linear or none
  --causal            by the causal filter of a stream; so are records beyond 4.2 million samples
  --column <name>     column of a CSV file, by name or number
  --format <name>     csv, float32, float64, int16, int32, if the ending does not say it
  --endian <end>      little (if not given) or big
  --scale <n>         what a stored number is multiplied with to be in the unit
  --lines <n>         how many lines; 5 if not given
  --speed <speed>     shaft speed, for the lines at 1x to 4x
  --machine <words>   judge the level by the published table that is for the machine
  --scheme <table>    judge it by this table (veladis schemes lists them)
  --digits <n>        significant digits, 3 if not given
  --json              one JSON object

Lines are interpolated to their own frequency and size. Refused input is explained on standard
error, and the exit code is 2.
`;
