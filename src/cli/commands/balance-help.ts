/** The page that `veladis balance --help` prints. */
export const help = `veladis balance "<grade>" --mass "<mass>" --speed "<speed>"

The residual unbalance that a balance grade of ISO 21940-11 permits a rotor, whole and in two planes, and its
centrifugal force; or the grade that a measured residual unbalance amounts to.

  veladis balance "G 6.3" --mass "400 kg" --speed "1480 r/min"
  veladis balance "G 6.3" --mass "400 kg" --speed "1480 r/min" --planes "300 mm, 700 mm"
  veladis balance --unbalance "20 oz·in" --mass "400 kg" --speed "1480 r/min"

  --mass <mass>            of the rotor: kg, g, t, lb, oz
  --speed <frequency>      service speed
  --planes "<l>, <r>"      distances from the centre of mass to the two bearings; half each if not given
  --unbalance <unbalance>  g·mm, kg·mm, oz·in, lb·in, ... (a dash or a dot between the units)
  --json                   one JSON object

G is the speed of the centre of mass of the rotor turning free in space: no reading on a housing, and no limit
to set a trip from.
`;
