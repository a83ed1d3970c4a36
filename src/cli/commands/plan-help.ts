/** The page that `veladis plan --help` prints. */
export const help = `veladis plan --threshold "<reading>" --hysteresis "<share>" --delay <seconds> --shaker "<Hz> to <Hz>" ...

The steps that prove a setting on a reference shaker: level, displacement and acceleration of each, whether the
shaker can give it, and what to expect.

  veladis plan --threshold "9 mm/s rms" --hysteresis "8 %" --delay 8 --latching --at "2400 r/min" \\
    --relay "normally open, normally energised" --shaker "8 Hz to 3 kHz" --stroke "5 mm pp" --acceleration "6 g pk"

settings
  --threshold, --hysteresis, --delay, --off-delay, --latching or --non-latching, --relay, --sensor-fault
                           as for veladis simulate
  --at <frequencies>       to test at, with commas; the first proves the trip. 79.4 Hz if not given
  --band <low-high>        measuring band of the device in Hz: 10-1000, or "10 Hz to 1 kHz"
  --tolerance <share>      of the device, 5 % if not given
  --load <kg>              mass of sensor and fixture
shaker, from its data sheet
  --shaker "<f> to <f>"    its frequencies
  --stroke, --velocity, --acceleration <reading>
  --force <N>, --moving-mass <kg>, --payload <kg>
  --uncertainty <share>    expanded uncertainty (k = 2) of its level

  --sheet markdown|html|json  the plan as a sheet to fill in and sign
  --name <text>            the machine's name on the sheet
  --json                   one JSON object a step
`;
