/** A small list of the invented plant, results of a round on the bench, and its record of changes. */
export const plantFiles = {
  "plant.csv": `tag,kind,power,speed,support,nameplate,room,sensor,loop,band,alarm,trip,trip delay s,hysteresis,latching,contact,coil,sensor fault,check date,known,as found,as left,tolerance,checked by,interval months
LU-01,fan,132 kW,1485 r/min,rigid,BV-3,boiler house,100 mV/g,,10 Hz to 1000 Hz,5.6 mm/s rms,9 mm/s rms,8,8 %,yes,normally open,normally energised,alarm,2025-10-31,8 mm/s rms at 40 Hz,7.9 mm/s rms,7.9 mm/s rms,5 %,shift B,12
LU-02,fan,132 kW,1485 r/min,rigid,BV-3,boiler house,100 mV/g,,10 Hz to 1000 Hz,5.6 mm/s rms,9 mm/s rms,8,8 %,yes,normally open,normally energised,alarm,2026-04-14,8 mm/s rms at 40 Hz,8.1 mm/s rms,8.1 mm/s rms,5 %,shift B,12
SP-A,pump,250 kW,2980 r/min,rigid,category I,"pump hall, north",,0 to 20 mm/s rms,10 Hz to 1000 Hz,3.2 mm/s rms,7.6 mm/s rms,4,5 %,yes,normally open,normally energised,alarm,2025-11-28,6 mm/s rms at 40 Hz,6.1 mm/s rms,6.1 mm/s rms,5 %,shift A,12
KP-1,pump,90 kW,2980 r/min,rigid,category II,"pump hall, south",,0 to 15 mm/s rms,,3.5 mm/s rms,6 mm/s rms,5,0.4 mm/s rms,no,normally open,normally energised,alarm,,,,,5 %,,12
UP-3,gear drive,200 kW,1490 r/min,,,"pump hall, south",,,10 Hz to 1000 Hz,3 mm/s rms,5.6 mm/s rms,4,5 %,no,,,,2026-05-20,5 mm/s rms at 40 Hz,5 mm/s rms,5 mm/s rms,5 %,shift A,
BP-L,pump,150 hp,1180 r/min,rigid,category II,Low street,,0 to 0.8 in/s pk,5 Hz to 1000 Hz,0.2 in/s pk,0.35 in/s pk,2,10 %,yes,normally open,normally energised,alarm,2026-06-18,0.3 in/s pk at 40 Hz,0.27 in/s pk,0.27 in/s pk,5 %,shift C,6
`,
  "results.csv": `number,tag,date,known,as found,as left,tolerance,by
LU-01-2026-12-01,LU-01,2026-12-03,6 mm/s rms at 79.4 Hz,5.4 mm/s rms,5.9 mm/s rms,5 %,shift B
SP-A-2026-12-01,SP-A,2026-12-03,6 mm/s rms at 79.4 Hz,6.1 mm/s rms,,5 %,shift B
KP-1-2026-12-01,KP-1,2026-12-04,5 mm/s rms at 79.4 Hz,5.1 mm/s rms,,5 %,shift A
BP-L-2026-12-01,BP-L,,0.3341 in/s pk at 79.4 Hz,,,5 %,
`,
  "plant-changes.csv": `date,tag,setting,old,new,reason,who,approved by,until,put back
2026-02-10,LU-02,trip,8.6 mm/s rms,9 mm/s rms,new baseline after the bearing was changed,shift B,plant engineer,,
2026-09-14,SP-A,bypass,,trip,sensor cable replaced,shift A,plant engineer,2026-09-15,2026-09-14
2026-11-20,KP-1,trip delay s,5,8,cavitation while the strainer is cleaned,shift A,plant engineer,2026-11-27,
`,
} as const;
