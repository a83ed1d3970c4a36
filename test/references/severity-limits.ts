/**
 * The tables of limits, keyed a second time by hand from the collected notes on the standards and not taken from
 * src. A row: the machine, what the limits are written in, the limits lowest first, and how each is known, by the
 * letters of {@link knownBy}.
 *
 * Deliberate: ISO 10816-7 category I to 200 kW has 6.5 for C/D as the extract prints it (the course handbook prints
 * 6.6), ISO 3945 has 4.5 (a page prints 4.60), ISO 14694 and AMCA 204 have of two harmonised values the lower, and
 * generating sets to 720 r/min have on a rigid support what memory has in brackets: the lower of two is shipped.
 *
 * "Course handbook": Engenharia de Confiabilidade, Modulo 4, which names the editions of 2009 (and BSI 2001 for part 5).
 */
export type Row = readonly [machine: string, as: string, limits: readonly (number | null)[], known: string];

/** The letters by which the rows say how a limit is known. */
export const knownBy = { p: "printed", q: "quoted", r: "reported", x: "practice", m: "memory" } as const;

/** How many of the letters of rows are of each kind. */
export function lettersCounted(rows: readonly Row[]): Record<(typeof knownBy)[keyof typeof knownBy], number> {
  const letters = rows.map(([, , , known]) => known).join("");
  const counts = Object.entries(knownBy).map(([letter, name]) => [name, letters.split(letter).length - 1]);
  return Object.fromEntries(counts) as ReturnType<typeof lettersCounted>;
}

// biome-ignore format: a row of a table is a line
export const severityLimits: Readonly<Record<string, readonly Row[]>> = {
  // vibratechnica.com, Vibration Severity Standard, Table 1 (ISO 2372), by the order of its cells; class III also in a blog, outright
  "iso-2372-1974": [
    ["class I", "mm/s rms", [0.71, 1.8, 4.5], "rrr"],
    ["class II", "mm/s rms", [1.12, 2.8, 7.1], "rrr"],
    ["class III", "mm/s rms", [1.8, 4.5, 11.2], "rrr"],
    ["class IV", "mm/s rms", [2.8, 7.1, 18], "rrr"],
  ],
  // ISO 10816-1:1995 Table B.1; class III in a blog on ISO 10816 and JIS B 0906: 1.8, 4.5, 11.2
  "iso-10816-1-1995-annexB": [
    ["class I", "mm/s rms", [0.71, 1.8, 4.5], "mmm"],
    ["class II", "mm/s rms", [1.12, 2.8, 7.1], "mmm"],
    ["class III", "mm/s rms", [1.8, 4.5, 11.2], "rrr"],
    ["class IV", "mm/s rms", [2.8, 7.1, 18], "mmm"],
  ],
  // vibratechnica.com, Table 2 (ISO 3945), by the order of its cells: rigid 1.80, 4.60, 11.2; flexible 2.80, 7.10, 18.0
  "iso-3945-1985": [
    ["rigid", "mm/s rms", [1.8, 4.5, 11.2], "rmr"],
    ["flexible", "mm/s rms", [2.8, 7.1, 18], "rrr"],
  ],
  // ISO 10816-3: velocity of group 1 read in a motor maker's manual, B/C and C/D of group 2 in a fan maker's; neither
  // names an edition, so they count for 1998 alone
  "iso-10816-3-1998": [
    ["group 1 rigid", "mm/s rms", [2.3, 4.5, 7.1], "qqq"],
    ["group 1 rigid", "um rms", [29, 57, 90], "mmm"],
    ["group 1 flexible", "mm/s rms", [3.5, 7.1, 11], "qqq"],
    ["group 1 flexible", "um rms", [45, 90, 140], "mmm"],
    ["group 2 rigid", "mm/s rms", [1.4, 2.8, 4.5], "mqq"],
    ["group 2 rigid", "um rms", [22, 45, 71], "mmm"],
    ["group 2 flexible", "mm/s rms", [2.3, 4.5, 7.1], "mqq"],
    ["group 2 flexible", "um rms", [37, 71, 113], "mmm"],
    ["group 3 rigid", "mm/s rms", [2.3, 4.5, 7.1], "mmm"],
    ["group 3 rigid", "um rms", [18, 36, 56], "mmm"],
    ["group 3 flexible", "mm/s rms", [3.5, 7.1, 11], "mmm"],
    ["group 3 flexible", "um rms", [28, 56, 90], "mmm"],
    ["group 4 rigid", "mm/s rms", [1.4, 2.8, 4.5], "mmm"],
    ["group 4 rigid", "um rms", [11, 22, 36], "mmm"],
    ["group 4 flexible", "mm/s rms", [2.3, 4.5, 7.1], "mmm"],
    ["group 4 flexible", "um rms", [18, 36, 56], "mmm"],
  ],
  // course handbook section 4.4: group 1 rigid 29 2,3 57 4,5 90 7,1 flexible 45 3,5 90 7,1 140 11,0;
  // group 2 rigid 22 1,4 45 2,8 71 4,5 flexible 37 2,3 71 4,5 113 7,1
  "iso-10816-3-2009": [
    ["group 1 rigid", "mm/s rms", [2.3, 4.5, 7.1], "rrr"],
    ["group 1 rigid", "um rms", [29, 57, 90], "rrr"],
    ["group 1 flexible", "mm/s rms", [3.5, 7.1, 11], "rrr"],
    ["group 1 flexible", "um rms", [45, 90, 140], "rrr"],
    ["group 2 rigid", "mm/s rms", [1.4, 2.8, 4.5], "rrr"],
    ["group 2 rigid", "um rms", [22, 45, 71], "rrr"],
    ["group 2 flexible", "mm/s rms", [2.3, 4.5, 7.1], "rrr"],
    ["group 2 flexible", "um rms", [37, 71, 113], "rrr"],
  ],
  "iso-20816-3-2022": [
    ["group 1 rigid", "mm/s rms", [2.3, 4.5, 7.1], "mmm"],
    ["group 1 rigid", "um rms", [29, 57, 90], "mmm"],
    ["group 1 flexible", "mm/s rms", [3.5, 7.1, 11], "mmm"],
    ["group 1 flexible", "um rms", [45, 90, 140], "mmm"],
    ["group 2 rigid", "mm/s rms", [1.4, 2.8, 4.5], "mmm"],
    ["group 2 rigid", "um rms", [22, 45, 71], "mmm"],
    ["group 2 flexible", "mm/s rms", [2.3, 4.5, 7.1], "mmm"],
    ["group 2 flexible", "um rms", [37, 71, 113], "mmm"],
  ],
  // ISO 10816-7:2009 Table A.1, read in a one-page extract; slow pumps from memory
  "iso-10816-7-2009": [
    ["category I 200 kW", "mm/s rms", [2.5, 4, 6.5], "rrr"],
    ["category I 201 kW", "mm/s rms", [3.5, 5, 7.6], "rrr"],
    ["category II 200 kW", "mm/s rms", [3.2, 5.1, 8.5], "rrr"],
    ["category II 201 kW", "mm/s rms", [4.2, 6.1, 9.5], "rrr"],
    ["category I 90 kW 600 r/min", "um pp", [50, 80, 130], "mmm"],
    ["category II 900 kW 300 r/min", "um pp", [50, 80, 130], "mmm"],
  ],
  "iso-10816-7-2009-acceptance": [
    ["category I 200 kW test site region preferred", "mm/s rms", [2.5], "m"],
    ["category I 200 kW test site region allowable", "mm/s rms", [3.4], "m"],
    ["category I 200 kW test works region preferred", "mm/s rms", [3.3], "m"],
    ["category I 200 kW test works region allowable", "mm/s rms", [4], "m"],
    ["category I 201 kW test site region preferred", "mm/s rms", [3.5], "m"],
    ["category I 201 kW test site region allowable", "mm/s rms", [4.4], "m"],
    ["category I 201 kW test works region preferred", "mm/s rms", [4.3], "m"],
    ["category I 201 kW test works region allowable", "mm/s rms", [5], "m"],
    ["category II 200 kW test site region preferred", "mm/s rms", [3.2], "m"],
    ["category II 200 kW test site region allowable", "mm/s rms", [4.2], "m"],
    ["category II 200 kW test works region preferred", "mm/s rms", [4.2], "m"],
    ["category II 200 kW test works region allowable", "mm/s rms", [5.1], "m"],
    ["category II 201 kW test site region preferred", "mm/s rms", [4.2], "m"],
    ["category II 201 kW test site region allowable", "mm/s rms", [5.2], "m"],
    ["category II 201 kW test works region preferred", "mm/s rms", [5.2], "m"],
    ["category II 201 kW test works region allowable", "mm/s rms", [6.1], "m"],
    ["category I 90 kW 500 r/min test site region preferred", "um pp", [50], "m"],
    ["category I 90 kW 500 r/min test site region allowable", "um pp", [65], "m"],
    ["category I 90 kW 500 r/min test works region preferred", "um pp", [65], "m"],
    ["category I 90 kW 500 r/min test works region allowable", "um pp", [80], "m"],
  ],
  // ISO 14694:2003, 8.4 in situ (start-up, alarm, shutdown), peak and RMS columns both printed; from memory
  "iso-14694-2003": [
    ["BV-1 rigid", "mm/s pk", [14, 15.2, null], "mm"],
    ["BV-1 rigid", "mm/s rms", [10, 10.6, null], "mm"],
    ["BV-1 flexible", "mm/s pk", [15.2, 19.1, null], "mm"],
    ["BV-1 flexible", "mm/s rms", [11.2, 14, null], "mm"],
    ["BV-2 rigid", "mm/s pk", [7.6, 12.7, null], "mm"],
    ["BV-2 rigid", "mm/s rms", [5.6, 9, null], "mm"],
    ["BV-2 flexible", "mm/s pk", [12.7, 19.1, null], "mm"],
    ["BV-2 flexible", "mm/s rms", [9, 14, null], "mm"],
    ["BV-3 rigid", "mm/s pk", [6.4, 10.2, 12.7], "mmm"],
    ["BV-3 rigid", "mm/s rms", [4.5, 7.1, 9], "mmm"],
    ["BV-3 flexible", "mm/s pk", [8.8, 16.5, 17.8], "mmm"],
    ["BV-3 flexible", "mm/s rms", [6.3, 11.8, 12.5], "mmm"],
    ["BV-4 rigid", "mm/s pk", [4.1, 6.4, 10.2], "mmm"],
    ["BV-4 rigid", "mm/s rms", [2.8, 4.5, 7.1], "mmm"],
    ["BV-4 flexible", "mm/s pk", [6.4, 10.2, 15.2], "mmm"],
    ["BV-4 flexible", "mm/s rms", [4.5, 7.1, 11.2], "mmm"],
    ["BV-5 rigid", "mm/s pk", [2.5, 5.08, 7.6], "mmm"], // 5.7 in memory; the harmonised AMCA 204-05 has 0.20 in/s, 5.08
    ["BV-5 rigid", "mm/s rms", [1.8, 4, 5.6], "mmm"],
    ["BV-5 flexible", "mm/s pk", [4.1, 7.6, 10.2], "mmm"],
    ["BV-5 flexible", "mm/s rms", [2.8, 5.6, 7.1], "mmm"],
  ],
  // ISO 14694:2003, 8.3 at the works; from memory
  "iso-14694-2003-acceptance": [
    ["BV-1 rigid", "mm/s pk", [12.7], "m"],
    ["BV-1 rigid", "mm/s rms", [9], "m"],
    ["BV-1 flexible", "mm/s pk", [15.2], "m"],
    ["BV-1 flexible", "mm/s rms", [11.2], "m"],
    ["BV-2 rigid", "mm/s pk", [5.1], "m"],
    ["BV-2 rigid", "mm/s rms", [3.5], "m"],
    ["BV-2 flexible", "mm/s pk", [7.6], "m"],
    ["BV-2 flexible", "mm/s rms", [5.6], "m"],
    ["BV-3 rigid", "mm/s pk", [3.8], "m"],
    ["BV-3 rigid", "mm/s rms", [2.8], "m"],
    ["BV-3 flexible", "mm/s pk", [5.1], "m"],
    ["BV-3 flexible", "mm/s rms", [3.5], "m"],
    ["BV-4 rigid", "mm/s pk", [2.5], "m"],
    ["BV-4 rigid", "mm/s rms", [1.8], "m"],
    ["BV-4 flexible", "mm/s pk", [3.8], "m"],
    ["BV-4 flexible", "mm/s rms", [2.8], "m"],
    ["BV-5 rigid", "mm/s pk", [2], "m"],
    ["BV-5 rigid", "mm/s rms", [1.4], "m"],
    ["BV-5 flexible", "mm/s pk", [2.5], "m"],
    ["BV-5 flexible", "mm/s rms", [1.8], "m"],
  ],
  // ANSI/AMCA 204-05 Table 6.3, from memory but the alarms of BV-3: Cincinnati Fan, manual HDAF blowers OMM-05-0509, p. 7.
  // Above 298 kW an industrial fan is of BV-4, one of HVAC of BV-3: ANSI/AMCA 204-96 Table 4-1, read on a scan
  "ansi-amca-204-05": [
    ["BV-1 rigid", "in/s pk", [0.55, 0.6, null], "mm"],
    ["BV-1 flexible", "in/s pk", [0.6, 0.75, null], "mm"],
    ["BV-2 rigid", "in/s pk", [0.3, 0.5, null], "mm"],
    ["BV-2 flexible", "in/s pk", [0.5, 0.75, null], "mm"],
    ["BV-3 rigid", "in/s pk", [0.25, 0.4, 0.5], "mqm"],
    ["BV-3 flexible", "in/s pk", [0.346, 0.65, 0.7], "mqm"], // 0.35 in memory; the harmonised ISO 14694 has 8.8 mm/s, 0.346
    ["fan HVAC 400 kW rigid", "in/s pk", [0.25, 0.4, 0.5], "mqm"],
    ["fan industrial 400 kW flexible", "in/s pk", [0.25, 0.4, 0.6], "mmm"],
    ["BV-4 rigid", "in/s pk", [0.16, 0.25, 0.4], "mmm"],
    ["BV-4 flexible", "in/s pk", [0.25, 0.4, 0.6], "mmm"],
    ["BV-5 rigid", "in/s pk", [0.1, 0.2, 0.3], "mmm"],
    ["BV-5 flexible", "in/s pk", [0.16, 0.3, 0.4], "mmm"],
  ],
  // ANSI/AMCA 204-05 Table 6.2
  "ansi-amca-204-05-acceptance": [
    ["BV-1 rigid", "in/s pk", [0.5], "m"],
    ["BV-1 flexible", "in/s pk", [0.6], "m"],
    ["BV-2 rigid", "in/s pk", [0.2], "m"],
    ["BV-2 flexible", "in/s pk", [0.3], "m"],
    ["BV-3 rigid", "in/s pk", [0.15], "m"],
    ["BV-3 flexible", "in/s pk", [0.2], "m"],
    ["fan HVAC 400 kW rigid", "in/s pk", [0.15], "m"],
    ["fan industrial 400 kW flexible", "in/s pk", [0.15], "m"],
    ["BV-4 rigid", "in/s pk", [0.1], "m"],
    ["BV-4 flexible", "in/s pk", [0.15], "m"],
    ["BV-5 rigid", "in/s pk", [0.08], "m"],
    ["BV-5 flexible", "in/s pk", [0.1], "m"],
  ],
  // course handbook section 4.3: 2,8 5,3 8,5 at 1500/1800 and 3,8 7,5 11,8 at 3000/3600
  "iso-10816-2-2009": [
    ["1500 r/min", "mm/s rms", [2.8, 5.3, 8.5], "rrr"],
    ["1800 r/min", "mm/s rms", [2.8, 5.3, 8.5], "rrr"],
    ["3000 r/min", "mm/s rms", [3.8, 7.5, 11.8], "rrr"],
    ["3600 r/min", "mm/s rms", [3.8, 7.5, 11.8], "rrr"],
  ],
  "iso-20816-2-2017": [
    ["steam turbine 1500 r/min", "mm/s rms", [2.8, 5.3, 8.5], "mmm"],
    ["generator 3600 r/min", "mm/s rms", [3.8, 7.5, 11.8], "mmm"],
    ["gas turbine 3000 r/min", "mm/s rms", [4.5, 9.3, 14.7], "mmm"],
  ],
  // course handbook section 4.5, which names the edition of 2009: 4,5 9,3 14,7; a chart sheet has the same without edition
  "iso-10816-4": [["gas turbine", "mm/s rms", [4.5, 9.3, 14.7], "rrr"]],
  // ISO 10816-5:2000 Tables A.1 (course handbook section 4.6) and A.2 to A.4 (a scanned page of the standard)
  "iso-10816-5-2000": [
    ["group 1", "um pp", [30, 50, 80], "rrr"],
    ["group 1", "mm/s rms", [1.6, 2.5, 4], "rrr"],
    ["group 2", "mm/s rms", [2.5, 4, 6.4], "ppp"],
    ["group 3", "um pp", [30, 50, 80], "ppp"],
    ["group 3", "mm/s rms", [1.6, 2.5, 4], "ppp"],
    ['group 4 part "location 1"', "um pp", [65, 100, 160], "ppp"],
    ['group 4 part "location 1"', "mm/s rms", [2.5, 4, 6.4], "ppp"],
    ['group 4 part "other main bearings"', "um pp", [30, 50, 80], "ppp"],
    ['group 4 part "other main bearings"', "mm/s rms", [1.6, 2.5, 4], "ppp"],
  ],
  "iso-20816-1-2016-ranges": [
    ['class "low end"', "mm/s rms", [0.71, 1.8, 4.5], "mmm"],
    ['class "high end"', "mm/s rms", [4.5, 9.3, 14.7], "mmm"],
  ],
  // ISO 10816-6:1995 Table A.1; B/C and C/D one grade apart; 17.8 of class 4 in a compressor maker's manual, p. 101
  "iso-10816-6-1995": [
    ["class 1", "um rms", [null, 71, 113], "mm"],
    ["class 1", "mm/s rms", [null, 4.46, 7.07], "mm"],
    ["class 1", "m/s2 rms", [null, 7.01, 11.1], "mm"],
    ["class 2", "um rms", [null, 113, 178], "mm"],
    ["class 2", "mm/s rms", [null, 7.07, 11.2], "mm"],
    ["class 2", "m/s2 rms", [null, 11.1, 17.6], "mm"],
    ["class 3", "um rms", [null, 178, 283], "mm"],
    ["class 3", "mm/s rms", [null, 11.2, 17.8], "mm"],
    ["class 3", "m/s2 rms", [null, 17.6, 27.9], "mm"],
    ["class 4", "um rms", [null, 283, 448], "mm"],
    ["class 4", "mm/s rms", [null, 17.8, 28.2], "qm"],
    ["class 4", "m/s2 rms", [null, 27.9, 44.2], "mm"],
    ["class 5", "um rms", [null, 448, 710], "mm"],
    ["class 5", "mm/s rms", [null, 28.2, 44.6], "mm"],
    ["class 5", "m/s2 rms", [null, 44.2, 70.1], "mm"],
    ["class 6", "um rms", [null, 710, 1125], "mm"],
    ["class 6", "mm/s rms", [null, 44.6, 70.7], "mm"],
    ["class 6", "m/s2 rms", [null, 70.1, 111], "mm"],
    ["class 7", "um rms", [null, 1125, 1784], "mm"],
    ["class 7", "mm/s rms", [null, 70.7, 112], "mm"],
    ["class 7", "m/s2 rms", [null, 111, 176], "mm"],
  ],
  // ISO 10816-6:1995 Table 1: upper ends of grades 1.1 to 112
  "iso-10816-6-1995-grades": [
    ["", "um rms", [17.8, 28.3, 44.8, 71, 113, 178, 283, 448, 710, 1125, 1784], "mmmmmmmmmmm"],
    ["", "mm/s rms", [1.12, 1.78, 2.82, 4.46, 7.07, 11.2, 17.8, 28.2, 44.6, 70.7, 112], "mmmmmmmmmmm"],
    ["", "m/s2 rms", [1.76, 2.79, 4.42, 7.01, 11.1, 17.6, 27.9, 44.2, 70.1, 111, 176], "mmmmmmmmmmm"],
  ],
  // Lloyd's Register guidance, chapter 7 section 3.4
  "lr-recip-guidance": [
    ["", "mm pk", [0.4], "p"],
    ["", "mm/s pk", [25], "p"],
    ["", "m/s2 pk", [40], "p"],
  ],
  // Compression Machinery for Oil and Gas p. 182: B/C and C/D, acceptable and marginal
  "iso-20816-8-2018": [
    ["part foundation", "mm/s rms", [2, 3, 4.5], "mqq"],
    ["part frame", "mm/s rms", [5.3, 8, 12], "mqq"],
    ['part "cylinder lateral"', "mm/s rms", [8.7, 13, 19.5], "mqq"],
    ['part "cylinder rod"', "mm/s rms", [10.7, 16, 24], "mqq"],
    ["part dampers", "mm/s rms", [12.7, 19, 28.5], "mqq"],
    ["part piping", "mm/s rms", [12.7, 19, 28.5], "mqq"],
  ],
  "iso-10816-21-2015": [
    ['part "nacelle and tower"', "m/s2 rms", [null, 0.3, 0.5], "mm"],
    ['part "nacelle and tower"', "mm/s rms", [null, 60, 100], "mm"],
    ['part "rotor bearing" band low', "m/s2 rms", [null, 0.3, 0.5], "mm"],
    ['part "rotor bearing" band high', "mm/s rms", [null, 2, 3.2], "mm"],
    ["part gearbox band low", "m/s2 rms", [null, 0.3, 0.5], "mm"],
    ["part gearbox band high", "m/s2 rms", [null, 7.5, 12], "mm"],
    ["part gearbox band high", "mm/s rms", [null, 3.5, 5.6], "mm"],
    ["part generator", "m/s2 rms", [null, 10, 16], "mm"],
    ["part generator", "mm/s rms", [null, 6, 10], "mm"],
  ],
  // IEC 60034-14:2003 Table 1, read in a motor maker's manual and agreeing with another's
  "iec-60034-14-2003": [
    ["grade A mounting free 132 mm", "um rms", [25], "q"],
    ["grade A mounting free 132 mm", "mm/s rms", [1.6], "q"],
    ["grade A mounting free 132 mm", "m/s2 rms", [2.5], "q"],
    ["grade A mounting free 280 mm", "um rms", [35], "q"],
    ["grade A mounting free 280 mm", "mm/s rms", [2.2], "q"],
    ["grade A mounting free 280 mm", "m/s2 rms", [3.5], "q"],
    ["grade A mounting free 281 mm", "um rms", [45], "q"],
    ["grade A mounting free 281 mm", "mm/s rms", [2.8], "q"],
    ["grade A mounting free 281 mm", "m/s2 rms", [4.4], "q"],
    ["grade A mounting rigid 56 mm", "um rms", [21], "q"],
    ["grade A mounting rigid 56 mm", "mm/s rms", [1.3], "q"],
    ["grade A mounting rigid 56 mm", "m/s2 rms", [2], "q"],
    ["grade A mounting rigid 133 mm", "um rms", [29], "q"],
    ["grade A mounting rigid 133 mm", "mm/s rms", [1.8], "q"],
    ["grade A mounting rigid 133 mm", "m/s2 rms", [2.8], "q"],
    ["grade A mounting rigid 400 mm", "um rms", [37], "q"],
    ["grade A mounting rigid 400 mm", "mm/s rms", [2.3], "q"],
    ["grade A mounting rigid 400 mm", "m/s2 rms", [3.6], "q"],
    ["grade B mounting free 100 mm", "um rms", [11], "q"],
    ["grade B mounting free 100 mm", "mm/s rms", [0.7], "q"],
    ["grade B mounting free 100 mm", "m/s2 rms", [1.1], "q"],
    ["grade B mounting free 200 mm", "um rms", [18], "q"],
    ["grade B mounting free 200 mm", "mm/s rms", [1.1], "q"],
    ["grade B mounting free 200 mm", "m/s2 rms", [1.7], "q"],
    ["grade B mounting free 355 mm", "um rms", [29], "q"],
    ["grade B mounting free 355 mm", "mm/s rms", [1.8], "q"],
    ["grade B mounting free 355 mm", "m/s2 rms", [2.8], "q"],
    ["grade B mounting rigid 200 mm", "um rms", [14], "q"],
    ["grade B mounting rigid 200 mm", "mm/s rms", [0.9], "q"],
    ["grade B mounting rigid 200 mm", "m/s2 rms", [1.4], "q"],
    ["grade B mounting rigid 355 mm", "um rms", [24], "q"],
    ["grade B mounting rigid 355 mm", "mm/s rms", [1.5], "q"],
    ["grade B mounting rigid 355 mm", "m/s2 rms", [2.4], "q"],
  ],
  "iso-2373-1974": [
    ["grade normal 1500 r/min 132 mm", "mm/s rms", [1.8], "r"],
    ["grade normal 1500 r/min 225 mm", "mm/s rms", [2.8], "r"],
    ["grade normal 1500 r/min 400 mm", "mm/s rms", [4.5], "r"],
    ["grade reduced 1800 r/min 100 mm", "mm/s rms", [0.71], "r"],
    ["grade reduced 1800 r/min 200 mm", "mm/s rms", [1.12], "r"],
    ["grade reduced 1800 r/min 300 mm", "mm/s rms", [1.8], "r"],
    ["grade reduced 1801 r/min 100 mm", "mm/s rms", [1.12], "r"],
    ["grade reduced 1801 r/min 200 mm", "mm/s rms", [1.8], "r"],
    ["grade reduced 1801 r/min 300 mm", "mm/s rms", [2.8], "r"],
    ["grade special 600 r/min 100 mm", "mm/s rms", [0.45], "r"],
    ["grade special 600 r/min 200 mm", "mm/s rms", [0.71], "r"],
    ["grade special 600 r/min 300 mm", "mm/s rms", [1.12], "r"],
    ["grade special 3600 r/min 100 mm", "mm/s rms", [0.71], "r"],
    ["grade special 3600 r/min 200 mm", "mm/s rms", [1.12], "r"],
    ["grade special 3600 r/min 300 mm", "mm/s rms", [1.8], "r"],
  ],
  // NEMA MG 1 Table 7-1 as quoted by EASA; rigid mounting: 0.8 times
  "nema-mg1-7-table-7-1": [
    ["mounting resilient 3600 r/min", "in/s pk", [0.15], "q"],
    ["mounting resilient 1800 r/min", "in/s pk", [0.15], "q"],
    ["mounting resilient 1200 r/min", "in/s pk", [0.15], "q"],
    ["mounting resilient 900 r/min", "in/s pk", [0.12], "q"],
    ["mounting resilient 720 r/min", "in/s pk", [0.09], "q"],
    ["mounting resilient 600 r/min", "in/s pk", [0.08], "q"],
    ["mounting rigid 1200 r/min", "in/s pk", [0.12], "q"],
    ["mounting rigid 900 r/min", "in/s pk", [0.096], "q"],
    ["mounting rigid 720 r/min", "in/s pk", [0.072], "q"],
    ["mounting rigid 600 r/min", "in/s pk", [0.064], "q"],
  ],
  "nema-mg1-20.52-old": [
    ["3000 r/min", "in pp", [0.001], "r"],
    ["4000 r/min", "in pp", [0.001], "r"],
    ["1500 r/min", "in pp", [0.0015], "r"],
    ["2999 r/min", "in pp", [0.0015], "r"],
    ["1000 r/min", "in pp", [0.002], "r"],
    ["1499 r/min", "in pp", [0.002], "r"],
    ["999 r/min", "in pp", [0.0025], "r"],
  ],
  // API 610 Table 9 (scan of p. 59, edition not printed); Table 8: mm/s on a consultants' page, in/s from memory
  "api-610": [
    ['class "vertically suspended" content overall units metric', "mm/s rms", [5], "r"],
    ['class "vertically suspended" content discrete units metric', "mm/s rms", [3.4], "r"],
    ['class "vertically suspended" content overall units customary', "in/s rms", [0.2], "r"],
    ['class "vertically suspended" content discrete units customary', "in/s rms", [0.13], "r"],
    ["class overhung content overall units metric 3600 r/min 300 kW", "mm/s rms", [3], "r"],
    ['class "between bearings" content overall units customary 1500 r/min 90 kW', "in/s rms", [0.12], "m"],
  ],
  // ANSI/HI 9.6.4-2009, p. 10 of the standard
  "ansi-hi-9.6.4-2009-slow": [
    ["region preferred test site", "um pp", [80], "p"],
    ["region preferred test works", "um pp", [100], "p"],
    ["region allowable test site", "um pp", [100], "p"],
    ["region allowable test works", "um pp", [125], "p"],
  ],
  // Compressor Handbook p. 103: smooth below 0.03, rough above 0.2 inches per second
  "compressor-handbook-rule": [["", "in/s pk", [0.03, 0.2], "pp"]],
  // API 673 3rd ed., Vibration Limit for Fans: "Unfiltered <2.8 <0.11 <50 <2; Filtered <1.8 <0.07 <40 <1.6"
  "api-673-3rd": [
    ["content overall units metric", "mm/s rms", [2.8], "r"],
    ["content overall units customary", "in/s rms", [0.11], "r"],
    ["content discrete units metric", "mm/s rms", [1.8], "r"],
    ["content discrete units customary", "in/s rms", [0.07], "r"],
  ],
  "api-673-3rd-shaft": [
    ["content overall units metric", "um pp", [50], "r"],
    ["content overall units customary", "mil pp", [2], "r"],
    ["content discrete units metric", "um pp", [40], "r"],
    ["content discrete units customary", "mil pp", [1.6], "r"],
  ],
  // API 619 5th ed., Tables 1 and 2: "Vu<5.0mm/s RMS (0.2 in/s RMS)", "Vu<8.0mm/s RMS (0.3 in/s RMS)"
  "api-619-5th": [
    ['class "dry with hydrodynamic bearings" units metric', "mm/s rms", [5], "r"],
    ['class "dry with hydrodynamic bearings" units customary', "in/s rms", [0.2], "r"],
    ['class "dry with rolling bearings" units metric', "mm/s rms", [8], "r"],
    ['class "dry with rolling bearings" units customary', "in/s rms", [0.3], "r"],
    ['class "oil-flooded with hydrodynamic bearings" units metric', "mm/s rms", [8], "r"],
    ['class "oil-flooded with hydrodynamic bearings" units customary', "in/s rms", [0.3], "r"],
    ['class "oil-flooded with rolling bearings" units metric', "mm/s rms", [8], "r"],
    ['class "oil-flooded with rolling bearings" units customary', "in/s rms", [0.3], "r"],
  ],
  // a consultants' list of criteria: API 611 3 mm/s, API 541 1.77 mm/s and 37.5 um, ASME and NFPA 20 pumps as HI 9.6.4
  "api-611": [["", "mm/s rms", [3], "r"]],
  "api-541": [["", "mm/s rms", [1.77], "r"]],
  "api-541-shaft": [["", "um pp", [37.5], "r"]],
  "asme-nfpa-20-pumps": [
    ["class overhung 199 kW", "mm/s rms", [3.8], "r"],
    ['class "between bearings" 200 kW', "mm/s rms", [4.8], "r"],
    ['class "vertically suspended" 199 kW', "mm/s rms", [3.3], "r"],
    ['class "vertically suspended" 200 kW', "mm/s rms", [4.3], "r"],
  ],
  // a class society's guidance notes, chapter 7, Table 7.5.1 (imorules.com): value 1, value 2 of displacement, velocity and
  // acceleration; > 200 kW at 1300 to 2000 r/min stands in one line, the others are laid out from merged cells; 0.39 mm
  // is printed where 0.38 stands here, which 24 mm/s at 10 Hz comes to
  "lr-generating-sets": [
    ["part generator 3000 r/min 41 kW", "mm rms", [0.64, 0.8], "rr"],
    ["part generator 3000 r/min 41 kW", "mm/s rms", [40, 50], "rr"],
    ["part generator 3000 r/min 41 kW", "m/s2 rms", [25, 31], "rr"],
    ["part generator 3000 r/min 40 kW", "mm rms", [0.8, 0.95], "rr"],
    ["part generator 3000 r/min 40 kW", "mm/s rms", [50, 60], "rr"],
    ["part generator 3000 r/min 40 kW", "m/s2 rms", [31, 38], "rr"],
    ["part engine 1500 r/min 201 kW", "mm rms", [0.72, null], "p"],
    ["part engine 1500 r/min 201 kW", "mm/s rms", [45, null], "p"],
    ["part engine 1500 r/min 201 kW", "m/s2 rms", [28, null], "p"],
    ["part generator 1500 r/min 201 kW", "mm rms", [0.32, 0.45], "pp"],
    ["part generator 1500 r/min 201 kW", "mm/s rms", [20, 28], "pp"],
    ["part generator 1500 r/min 201 kW", "m/s2 rms", [13, 18], "pp"],
    ["part engine 1500 r/min 200 kW", "mm rms", [0.72, null], "r"],
    ["part engine 1500 r/min 200 kW", "mm/s rms", [45, null], "r"],
    ["part engine 1500 r/min 200 kW", "m/s2 rms", [28, null], "r"],
    ["part generator 1500 r/min 200 kW", "mm rms", [0.4, 0.48], "rr"],
    ["part generator 1500 r/min 200 kW", "mm/s rms", [25, 30], "rr"],
    ["part generator 1500 r/min 200 kW", "m/s2 rms", [16, 19], "rr"],
    ["part generator 1500 r/min 100 kW", "mm rms", [0.4, 0.48], "rr"],
    ["part generator 1500 r/min 100 kW", "mm/s rms", [25, 30], "rr"],
    ["part generator 1500 r/min 100 kW", "m/s2 rms", [16, 19], "rr"],
    ["part generator 1000 r/min 1001 kW", "mm rms", [0.29, 0.35], "rr"],
    ["part generator 1000 r/min 1001 kW", "mm/s rms", [18, 22], "rr"],
    ["part generator 1000 r/min 1001 kW", "m/s2 rms", [11, 14], "rr"],
    ["part engine 1000 r/min 1000 kW", "mm rms", [0.72, null], "r"],
    ["part engine 1000 r/min 1000 kW", "mm/s rms", [45, null], "r"],
    ["part engine 1000 r/min 1000 kW", "m/s2 rms", [28, null], "r"],
    ["part generator 1000 r/min 1000 kW", "mm rms", [0.32, 0.38], "rx"],
    ["part generator 1000 r/min 1000 kW", "mm/s rms", [20, 24], "rr"],
    ["part generator 1000 r/min 1000 kW", "m/s2 rms", [13, 15], "rr"],
    ["part engine 720 r/min 1001 kW", "mm rms", [0.72, null], "r"],
    ["part engine 720 r/min 1001 kW", "mm/s rms", [45, null], "r"],
    ["part engine 720 r/min 1001 kW", "m/s2 rms", [28, null], "r"],
    ["part generator 720 r/min 1001 kW flexible", "mm rms", [0.24, 0.32], "rr"],
    ["part generator 720 r/min 1001 kW flexible", "mm/s rms", [15, 20], "rr"],
    ["part generator 720 r/min 1001 kW flexible", "m/s2 rms", [9.5, 13], "rr"],
    // ISO 8528-9, in brackets, for solid concrete foundations; from memory. 6.5 there, 10 mm/s at 100 Hz is 6.28 m/s2
    ["part generator 720 r/min 1001 kW rigid", "mm rms", [0.16, 0.24], "mm"],
    ["part generator 720 r/min 1001 kW rigid", "mm/s rms", [10, 15], "mm"],
    ["part generator 720 r/min 1001 kW rigid", "m/s2 rms", [6.3, 9.5], "mm"],
  ],
  // a screw compressor maker's manual of 2022, p. 101, 6.15.1: 10 mm/s for zone I/II and 15 mm/s for zone II/III
  "vdi-3836-2012": [["group 3 flexible band A", "mm/s rms", [10, 15], "qq"]],
  // Practical Machinery Management for Process Plants, p. 265, Table 6-2: less than 0.1 ... greater than 0.5; 0.2 ... 0.6
  "gear-housing-handbook": [
    ["class high-speed", "in/s pk", [0.1, 0.2, 0.3, 0.5], "qqqq"],
    ["class low-speed", "in/s pk", [0.2, 0.3, 0.4, 0.6], "qqqq"],
  ],
  // a chiller maker's sheet of one page: 0.10 Fair, 0.20 Slightly Rough, 0.30 Rough
  "chiller-maker-sheet": [["", "in/s pk", [0.1, 0.2, 0.3], "rrr"]],
  // a motor maker's manual 11371757, p. 36, Table 6.1: alarm 4.5 4.5 5.5, trip 7.0 7.0 8.0; alarm 3.5 4.5 5.5, trip 5.5 6.5 7.5
  "motor-maker-alarms": [
    ["354 mm 1800 r/min", "mm/s rms", [4.5, 7], "qq"],
    ["355 mm 1800 r/min", "mm/s rms", [4.5, 7], "qq"],
    ["630 mm 1800 r/min", "mm/s rms", [5.5, 8], "qq"],
    ["354 mm 3600 r/min", "mm/s rms", [3.5, 5.5], "qq"],
    ["560 mm 3600 r/min", "mm/s rms", [4.5, 6.5], "qq"],
    ["630 mm 3600 r/min", "mm/s rms", [5.5, 7.5], "qq"],
  ],
  // a compressor maker's Table 3-1, scanned: skid 0.10 0.15 0.20, frame 0.20 0.40 0.50, cylinder 0.45 0.80 1.0 in/s zero to peak
  "recip-compressor-maker": [
    ["part skid", "in/s pk", [0.1, 0.15, 0.2], "rrr"],
    ["part frame", "in/s pk", [0.2, 0.4, 0.5], "rrr"],
    ["part cylinder", "in/s pk", [0.45, 0.8, 1], "rrr"],
  ],
  // ISO 7919-2:2009 Table A.1: 100/200/320; 95/185/290; 90/165/240; 80/150/220
  "iso-7919-2-2009": [
    ["1500 r/min", "um pp", [100, 200, 320], "mmm"],
    ["1800 r/min", "um pp", [95, 185, 290], "mmm"],
    ["3000 r/min", "um pp", [90, 165, 240], "mmm"],
    ["3600 r/min", "um pp", [80, 150, 220], "mmm"],
  ],
  // ISO 20816-2:2017: B/C and C/D at 3000 r/min in Harbin Electric, O&M manual SYR2-073-MAN-OM-3625, Table 8-1-1
  "iso-20816-2-2017-shaft": [
    ["steam turbine 1500 r/min", "um pp", [100, 200, 320], "mmm"],
    ["generator 1800 r/min", "um pp", [95, 185, 290], "mmm"],
    ["steam turbine 3000 r/min", "um pp", [90, 165, 240], "mqq"],
    ["generator 3600 r/min", "um pp", [80, 150, 220], "mmm"],
    // of the rows for steam turbines and 4800, 9000, 13 200 over root 3000 (87.6, 164.3, 241.0) the lower
    ["gas turbine 3000 r/min", "um pp", [87.6, 164.3, 240], "mmm"],
    ["gas turbine 3600 r/min", "um pp", [80, 150, 220], "mmm"],
  ],
};

/** ISO 10816-7:2009, highest alarm and trip settings, mm/s RMS and um peak-to-peak; from memory. */
// biome-ignore format: a row of a table is a line
export const pumpCeilings = [
  ["category I 200 kW", 5, 8.3],
  ["category I 201 kW", 6.3, 9.5],
  ["category II 200 kW", 6.4, 10.6],
  ["category II 201 kW", 7.6, 11.9],
] as const;

/**
 * Limits over the root of the speed, recomputed by hand calculator from 4800, 9000 and 13 200 over root n to one
 * decimal, um peak-to-peak: ISO 7919-3:2009 Annex A, from memory.
 */
// biome-ignore format: a row of a table is a line
export const shaftBySpeed = [
  [1000, 151.8, 284.6, 417.4],
  [1500, 123.9, 232.4, 340.8],
  [1800, 113.1, 212.1, 311.1],
  [3000, 87.6, 164.3, 241],
  [3600, 80, 150, 220],
  [5000, 67.9, 127.3, 186.7],
  [10000, 48, 90, 132],
  [12000, 43.8, 82.2, 120.5],
  [30000, 27.7, 52, 76.2],
] as const;

/**
 * API 617 8th ed.: the smaller of 25.4 um and 25.4 root(12 000/N) um peak-to-peak; the formula in Forsthoffer's Best
 * Practice Handbook for Rotating Machinery, p. 205.
 */
export const api617BySpeed = [
  [3600, 25.4],
  [6000, 25.4],
  [12000, 25.4],
  [15000, 22.7],
  [24000, 18],
] as const;

/**
 * API 610 11th ed.: root(5.2e6/n), not over 50 um peak-to-peak, from memory; discrete below running speed 0.33 of that,
 * from memory and as a scan of p. 59 prints it in Table 9 for other pumps.
 */
export const api610BySpeed = [
  [1800, 50, 16.5],
  [2950, 42, 13.9],
  [3600, 38, 12.5],
] as const;

/**
 * Acceptance limits of shafts that fall with speed, recomputed by hand calculator: root(6.2e6/n) um, at most 100, and
 * root(10 000/n) mil, at most 4.0 (API 610 Table 9, scan); 25.4 root(12 000/n) um, at most 50 (API 611; the law from
 * memory); root(12 000/n) mil, at most 1, and 20 % of it (API 612 7th ed., 16.3.3.3, as quoted on a web page). Of API
 * 672 5th ed. a page works out two pinions with Equation (1): 34 um at 6838 r/min and 30 um at 8792.
 */
// biome-ignore format: a row of a table is a line
export const contractBySpeed = [
  ["api-610-table-9-shaft", "content overall units metric 1500 r/min", "um pp", 64.3, "r"],
  ["api-610-table-9-shaft", "content overall units metric 1000 r/min", "um pp", 78.7, "r"],
  ["api-610-table-9-shaft", "content overall units metric 500 r/min", "um pp", 100, "r"],
  ["api-610-table-9-shaft", "content overall units customary 1500 r/min", "mil pp", 2.58, "r"],
  ["api-610-table-9-shaft", "content overall units customary 500 r/min", "mil pp", 4, "r"],
  ["api-611-shaft", "3000 r/min", "um pp", 50, "m"],
  ["api-611-shaft", "3600 r/min", "um pp", 46.4, "m"],
  ["api-611-shaft", "6000 r/min", "um pp", 35.9, "m"],
  ["api-612-7th-shaft", "content overall 3600 r/min", "mil pp", 1, "r"],
  ["api-612-7th-shaft", "content overall 15000 r/min", "mil pp", 0.894, "r"],
  ["api-612-7th-shaft", "content nonsynchronous 3600 r/min", "mil pp", 0.2, "r"],
  ["api-612-7th-shaft", "content nonsynchronous 15000 r/min", "mil pp", 0.179, "r"],
  ["api-672-5th-shaft", "units metric 6838 r/min", "um pp", 33.6, "r"],
  ["api-672-5th-shaft", "units metric 8792 r/min", "um pp", 29.7, "r"],
  ["api-672-5th-shaft", "units metric 3000 r/min", "um pp", 40, "r"],
  ["api-672-5th-shaft", "units customary 6838 r/min", "mil pp", 1.325, "r"],
  ["api-672-5th-shaft", "units customary 3000 r/min", "mil pp", 1.5, "r"],
] as const;
