-- the same type
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN +"v" END /* mm/s rms to mm/s rms */

-- a factor above one
CASE WHEN +"v" >= 0e0 AND +"v" <= 7.077532027016967e306 THEN +"v" * 2.54e1 END /* in/s pk to mm/s pk */

-- a factor below one
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN +"v" * 1e-3 END /* mm/s pk to m/s pk */

-- another detector
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN +"v" * 7.071067811865476e-1 END /* mm/s pk to mm/s rms; assumed: sine */

-- a crest factor
CASE WHEN +"v" >= 0e0 AND +"v" <= 4.4942328371557733e307 THEN +"v" * 4e0 END /* g rms to g true pk; assumed: crest factor 4 */

-- a table and a name
CASE WHEN +"plant"."readings"."v" >= 0e0 AND +"plant"."readings"."v" <= 1.7976931348623157e308 THEN +"plant"."readings"."v" END /* mm/s pk to mm/s pk */

-- backticks
CASE WHEN typeof(`plant`.`a``b"c`) RLIKE '^(double|float|decimal|bigint|int|smallint|tinyint)' AND `plant`.`a``b"c` >= 0e0 AND `plant`.`a``b"c` <= 1.7976931348623157e308 THEN `plant`.`a``b"c` END /* mm/s pk to mm/s pk */

-- a name with a backslash
CASE WHEN +"a\b" >= 0e0 AND +"a\b" <= 1.7976931348623157e308 THEN +"a\b" END /* mm/s pk to mm/s pk */

-- a name with a backslash that would begin a code
CASE WHEN "a\\b" >= 0e0 AND "a\\b" <= 1.7976931348623157e308 THEN "a\\b" END /* mm/s pk to mm/s pk */

-- an expression
CASE WHEN +(raw / 1000) >= 0e0 AND +(raw / 1000) <= 1.7976931348623157e308 THEN +(raw / 1000) END /* mm/s pk to mm/s pk */

-- a frequency as text
CASE WHEN +"v" >= 0e0 AND +"v" <= 2.8506897617602926e306 THEN +"v" * 6.3061689804934765e1 END /* g pk to mm/s pk at 1485 r/min; assumed: one frequency */

-- a frequency as data
CASE WHEN +"v" >= 0e0 AND +"v" <= 2.8506897617602926e306 THEN +"v" * 6.3061689804934765e1 END /* g pk to mm/s pk at 24.75 Hz; assumed: one frequency */

-- a frequency with digits that say nothing
CASE WHEN +"v" >= 0e0 AND +"v" <= 3.4553815294064155e304 THEN +"v" * 5.202589408907117e3 END /* g pk to mm/s pk at 0.3 Hz; assumed: one frequency */

-- a frequency of the row, one integration
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.1295239091784472e300 AND +"hz" BETWEEN 1e-9 AND 1e9 THEN +"v" * (1.5915494309189535e-1 / +"hz") END /* m/s2 pk to m/s pk at the frequency of the row; assumed: one frequency */

-- two integrations
CASE WHEN +"v" >= 0e0 AND +"v" <= 7.097008030258069e291 AND +"hz" BETWEEN 1e-9 AND 1e9 THEN +"v" * (2.5330295910584444e-2 / (+"hz" * +"hz")) END /* m/s2 pk to m pk at the frequency of the row; assumed: one frequency */

-- one differentiation
CASE WHEN +"v" >= 0e0 AND +"v" <= 2.8611174857570177e298 AND +"hz" BETWEEN 1e-9 AND 1e9 THEN +"v" * (6.283185307179586e0 * +"hz") END /* m/s pk to m/s2 pk at the frequency of the row; assumed: one frequency */

-- two differentiations
CASE WHEN +"v" >= 0e0 AND +"v" <= 4.5536099062488484e288 AND +"hz" BETWEEN 1e-9 AND 1e9 THEN +"v" * (3.947841760435743e1 * (+"hz" * +"hz")) END /* m pk to m/s2 pk at the frequency of the row; assumed: one frequency */

-- a speed of the row
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.1295239091784472e300 AND +"n" BETWEEN 6.000000000000001e-8 AND 6e10 THEN +"v" * (1.5915494309189535e-1 / (+"n" * 1.6666666666666666e-2)) END /* m/s2 pk to m/s pk at the frequency of the row; assumed: one frequency */

-- an order of it
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.1295239091784472e300 AND +"n" BETWEEN 3.0000000000000004e-8 AND 3e10 THEN +"v" * (1.5915494309189535e-1 / (+"n" * 3.333333333333333e-2)) END /* m/s2 pk to m/s pk at 2x the frequency of the row; assumed: one frequency */

-- a frequency of the row that nothing needs
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623093e305 THEN +"v" * 1e3 END /* m/s pk to mm/s pk at the frequency of the row */

-- a level
CASE WHEN +"v" BETWEEN -5e3 AND 5e3 THEN 1e-9 * POWER(1e1, +"v" / 2e1) END /* dB re 1e-9 m/s to m/s rms */

-- to a level
CASE WHEN +"v" >= 1e-259 AND +"v" <= 1e241 THEN 2e1 * LOG10(+"v" / 1e-9) END /* m/s rms to dB re 1e-9 m/s */

-- of a level to another
CASE WHEN +"v" BETWEEN -4.94e3 AND 5e3 THEN 2e1 * LOG10(1e-9 * POWER(1e1, +"v" / 2e1) / 1e-6) END /* dB re 1e-9 m/s to dB re 0.000001 m/s */

-- of a level at the frequency of the row
CASE WHEN +"v" BETWEEN -4.864036402632838e3 AND 4.775963597367162e3 AND +"hz" BETWEEN 1e-9 AND 1e9 THEN 2e1 * LOG10(1e-6 * POWER(1e1, +"v" / 2e1) * (1.5915494309189535e-1 / +"hz") / 1e-9) END /* dB re 0.000001 m/s2 to dB re 1e-9 m/s at the frequency of the row; assumed: one frequency */

-- of a level to a size beyond numbers
CASE WHEN +"v" BETWEEN -5e3 AND 3.1170215059326597e3 THEN 1e-6 * POWER(1e1, +"v" / 2e1) * 2.5330295910584444e158 END /* dB re 0.000001 m/s2 to m rms at 1e-80 Hz; assumed: one frequency */

-- of a size to a level below numbers
CASE WHEN +"v" >= 2.533029591058444e-58 AND +"v" <= 9.999999999999999e243 THEN 2e1 * LOG10(+"v" * 3.9478417604357435e-199 / 1e-6) END /* m rms to dB re 0.000001 m/s2 at 1e-100 Hz; assumed: one frequency */

-- zones
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 2.000000238418579e0 THEN 'A' WHEN +"v" <= 4.000000476837158e0 THEN 'B' WHEN +"v" <= 8.000000953674316e0 THEN 'C' ELSE 'D' END END /* Site rule (3), mm/s rms; condition in service: not given, assumed; place housing: not given, assumed */

-- zones in backticks
CASE WHEN typeof(`v`) RLIKE '^(double|float|decimal|bigint|int|smallint|tinyint)' AND `v` >= 0e0 AND `v` <= 1.7976931348623157e308 THEN CASE WHEN `v` <= 2.000000238418579e0 THEN 'A' WHEN `v` <= 4.000000476837158e0 THEN 'B' WHEN `v` <= 8.000000953674316e0 THEN 'C' ELSE 'D' END END /* Site rule (3), mm/s rms; condition in service: not given, assumed; place housing: not given, assumed */

-- zones of another unit
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 1.113554118866527e-1 THEN 'A' WHEN +"v" <= 2.227108237733054e-1 THEN 'B' WHEN +"v" <= 4.454216475466108e-1 THEN 'C' ELSE 'D' END END /* Site rule (3), in/s pk; assumed: sine; condition in service: not given, assumed; place housing: not given, assumed */

-- zones of a level
CASE WHEN +"v" >= -1.7976931348623157e308 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 1.260206009487183e2 THEN 'A' WHEN +"v" <= 1.320412008619979e2 THEN 'B' WHEN +"v" <= 1.3806180077527753e2 THEN 'C' ELSE 'D' END END /* Site rule (3), dB re 1e-9 m/s; condition in service: not given, assumed; place housing: not given, assumed */

-- zones at a frequency
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 4.5304803044783744e-2 THEN 'A' WHEN +"v" <= 9.060960608956749e-2 THEN 'B' WHEN +"v" <= 1.8121921217913498e-1 THEN 'C' ELSE 'D' END END /* Site rule (3), g pk; assumed: one frequency, sine; condition in service: not given, assumed; place housing: not given, assumed */

-- zones in true peak
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 1.414213730960489e0 THEN 'A' WHEN +"v" <= 2.828427461920978e0 THEN 'B' WHEN +"v" <= 5.656854923841956e0 THEN 'C' ELSE 'D' END END /* Site rule (3), mm/s rms; the zone that was judged; worse is possible; condition in service: not given, assumed; place housing: not given, assumed; crest factor 1.414, of a sine: not given, assumed */

-- zones in true peak, by a crest factor
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 6.666667461395264e-1 THEN 'A' WHEN +"v" <= 1.3333334922790527e0 THEN 'B' WHEN +"v" <= 2.6666669845581055e0 THEN 'C' ELSE 'D' END END /* Site rule (3), mm/s rms; assumed: crest factor 3; condition in service: not given, assumed; place housing: not given, assumed */

-- zones of a fact not given
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 3.5000004172325134e0 THEN 'A' WHEN +"v" <= 5.000000596046448e0 THEN 'B' WHEN +"v" <= 7.6000009059906e0 THEN 'C' ELSE 'D' END END /* ISO 10816-7 (2009), mm/s rms; the zone that was judged; worse is possible; not judged: limits in um pp: needs the running speed: it is for slow machines only; limits read on a page whose making is unknown: check them against the standard; condition in service: not given, assumed; place housing: not given, assumed; category I: not given, and taken for its lower limits */

-- zones with what was set aside
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 2.000000238418579e0 THEN 'A' WHEN +"v" <= 4.000000476837158e0 THEN 'B' WHEN +"v" <= 8.000000953674316e0 THEN 'C' ELSE 'D' END END /* Site rule (3), mm/s rms; condition in service: not given, assumed; place housing: not given, assumed; set aside: "painted": not understood; set aside: "blu": not understood */

-- zones with a quantity not judged
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 2.000000238418579e0 THEN 'A' WHEN +"v" <= 4.000000476837158e0 THEN 'B' WHEN +"v" <= 8.000000953674316e0 THEN 'C' ELSE 'D' END END /* Site rule (3), mm/s rms; the zone that was judged; worse is possible; not judged: limits in um rms: needs the frequency of the velocity, or the running speed; limits from memory: check them against the standard; condition in service: not given, assumed; place housing: not given, assumed */

-- the worst zone of them
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN 'D' END /* Site rule (3), mm/s rms; the worst zone that is possible; not judged: limits in um rms: needs the frequency of the velocity, or the running speed; limits from memory: check them against the standard; condition in service: not given, assumed; place housing: not given, assumed */

-- one limit
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 3.0000003576278687e0 THEN 'pass' ELSE 'fail' END END /* Site rule (3), mm/s rms; condition new: not given, assumed; place housing: not given, assumed */

-- grades
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 2.000000238418579e0 THEN 'it''s calm' ELSE 'lively' END END /* Site rule (3), mm/s rms; condition in service: not given, assumed; place housing: not given, assumed */

-- grades in backticks
CASE WHEN typeof(`v`) RLIKE '^(double|float|decimal|bigint|int|smallint|tinyint)' AND `v` >= 0e0 AND `v` <= 1.7976931348623157e308 THEN CASE WHEN `v` <= 2.000000238418579e0 THEN 'it\u0027s \\calm' ELSE 'lively' END END /* Site rule (3), mm/s rms; condition in service: not given, assumed; place housing: not given, assumed */

-- a machine
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 3.5000004172325134e0 THEN 'A' WHEN +"v" <= 5.000000596046448e0 THEN 'B' WHEN +"v" <= 7.6000009059906e0 THEN 'C' ELSE 'D' END END /* ISO 10816-7 (2009), mm/s rms; limits read on a page whose making is unknown: check them against the standard; condition in service: not given, assumed; place housing: not given, assumed */

-- a machine by several schemes
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 7.100000846385955e-1 THEN 'A' WHEN +"v" <= 1.8000002145767213e0 THEN 'B' WHEN +"v" <= 4.500000536441803e0 THEN 'C' ELSE 'D' END END /* ISO 20816-3 (2022) and ISO 10816-1 (1995, Annex B), mm/s rms; the worst of them governs; limits from memory: check them against the standard; condition in service: not given, assumed; place housing: not given, assumed; power above 15 kW: not given, assumed; power above 15 to 300 kW: not given, and taken for its lower limits; nothing below running speed, 24.8 Hz: assumed; power up to 15 kW: not given, assumed */

-- the worst by several schemes
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 1.8221239562961566e0 THEN 'A' WHEN +"v" <= 3.581416052030377e0 THEN 'B' WHEN +"v" <= 5.654867450574279e0 THEN 'C' ELSE 'D' END END /* ISO 20816-3 (2022), mm/s rms; the worst zone that is possible; limits from memory: check them against the standard; condition in service: not given, assumed; place housing: not given, assumed; power in place of shaft height, which was not given; nothing below running speed, 10.0 Hz: assumed */

-- a machine at two places
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 1.1504043188951673e1 THEN 'A' WHEN +"v" <= 2.2507910587079362e1 THEN 'B' WHEN +"v" <= 3.551248114850299e1 THEN 'C' ELSE 'D' END END /* ISO 20816-3 (2022) on the housing and ISO 20816-3 (2022) on the shaft, um pp; the worst of them governs; the zone that was judged; worse is possible; limits from memory: check them against the standard; assumed: sine; place: not given, and the worse of housing and shaft is taken; nothing below running speed, 90.0 Hz: assumed; condition in service: not given, assumed; set aside: support rigid: plays no part in ISO 20816-3 (2022) */

-- a machine by schemes of one's own
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 2.000000238418579e0 THEN 'A' WHEN +"v" <= 4.000000476837158e0 THEN 'B' WHEN +"v" <= 8.000000953674316e0 THEN 'C' ELSE 'D' END END /* Site rule (3), mm/s rms; place housing: not given, assumed */

-- a machine by one's own and a built-in
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 2.000000238418579e0 THEN 'A' WHEN +"v" <= 4.000000476837158e0 THEN 'B' WHEN +"v" <= 7.6000009059906e0 THEN 'C' ELSE 'D' END END /* ISO 10816-7 (2009) and Site rule (3), mm/s rms; the worst of them governs; limits read on a page whose making is unknown: check them against the standard; place housing: not given, assumed; set aside: power 250 kW: plays no part in Site rule (3); set aside: category I: plays no part in Site rule (3) */

-- a machine with a crest factor
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 6.666667461395264e-1 THEN 'A' WHEN +"v" <= 1.3333334922790527e0 THEN 'B' WHEN +"v" <= 2.6666669845581055e0 THEN 'C' ELSE 'D' END END /* Site rule (3), mm/s rms; assumed: crest factor 3; place housing: not given, assumed */

-- a machine at a frequency
CASE WHEN +"v" >= 0e0 AND +"v" <= 1.7976931348623157e308 THEN CASE WHEN +"v" <= 4.5304803044783744e-2 THEN 'A' WHEN +"v" <= 9.060960608956749e-2 THEN 'B' WHEN +"v" <= 1.8121921217913498e-1 THEN 'C' ELSE 'D' END END /* Site rule (3), g pk; assumed: one frequency, sine; place housing: not given, assumed */
