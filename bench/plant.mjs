// An invented plant of 200 machines, and readings of it, for the benchmarks of SQL.
const kinds = [
  (i) => `pump ${[15, 45, 90, 132, 250][i % 5]} kW category ${["I", "II"][i % 2]} ${[1480, 2975][i % 2]} r/min`,
  (i) => `fan ${[18.5, 55, 110, 200][i % 4]} kW BV-3 ${["rigid", "flexible"][i % 2]} 1485 r/min in service`,
  (i) => `motor ${[160, 250, 315][i % 3]} mm ${["rigid", "flexible"][i % 2]} ${[985, 1485, 2975][i % 3]} r/min`,
  (i) => `motor ${[30, 75, 160, 400][i % 4]} kW ${[985, 1485][i % 2]} r/min`,
  () => "unit of a kind that nobody wrote down",
];

/** The machines by name: each fifth is refused. */
export const plant = Array.from({ length: 200 }, (_, i) => ({
  name: `KW-${String(i + 1).padStart(3, "0")}`,
  machine: kinds[i % kinds.length](i),
}));

/** The machine and the reading of a row, as SQL of its number: from 0.1 to 12.0 mm/s rms. */
export const nameOfRow = (row) => `'KW-' || lpad(CAST(1 + ${row} % 200 AS VARCHAR), 3, '0')`;
export const levelOfRow = (row) => `CAST(1 + (${row} * 7919) % 120 AS DOUBLE) / 10`;
