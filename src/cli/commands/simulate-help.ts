/** The page that `veladis simulate --help` prints. */
export const help = `veladis simulate --file <csv> --from "<type>" --threshold "<reading>" ...

What a vibration switch with these settings does on a recorded history: when it trips, when it clears, and what
its delay rides out. Each level stands until the time of the next.

  veladis simulate --file docs/examples/pump-rig/imbalance-impulse.csv --from "g rms" \\
    --threshold "0.265 g rms" --hysteresis "5 %" --delay 3 --timer-resets threshold --latching
  veladis simulate --file history.csv --time seconds --column level --from "mm/s rms" \\
    --threshold "6 mm/s rms" --hysteresis "0.4 mm/s rms" --delay 0,2,5,10 --timer-resets threshold --non-latching

settings
  --threshold <reading>    with unit and detector; the output sets at this level or above
  --hysteresis <share>     "8 %" of the threshold, or an amount such as "0.4 mm/s rms"
  --delay <seconds>        on-delay; several, with commas, are compared
  --off-delay <seconds>    before a non-latching output clears; 0 if not given
  --timer-resets <when>    threshold: the on-delay starts over when the level falls below the threshold
                           reset-level: only when it falls below the reset level
  --latching               a set output stays until it is reset by hand
  --non-latching           it clears by itself
  --sensor-fault <what>    alarm, hold or bad: what an empty cell or the word fault does; else they are refused
  --inhibit <seconds>      no new trip for so long from the beginning and from each start
  --multiplier <n for s>   "2 for 30": setpoint times 2 for 30 s from the beginning and from each start
  --relay <words>          "normally open, normally energised", to have the contact told

history
  --file <csv>             or piped CSV; the first line is the header
  --time <column>          name or number of the column of times; 1 if not given. Seconds, or dates with a time
  --column <column>        name or number of the column of levels; 2 if not given
  --every <seconds>        levels are evenly spaced, in place of a column of times
  --from <type>            what the levels are written in
  --at <frequency>         when they are of another quantity than the threshold
  --commands <list>        what is done meanwhile: "reset at 900, start at 0, bypass on at 10, power lost at 60"

  --excursions             also each time the on-delay began and did not run out
  --json                   one JSON object for each delay
`;
