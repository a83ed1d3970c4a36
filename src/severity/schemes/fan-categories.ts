/**
 * What the categories of ANSI/AMCA 204 mean: Table 4-1 of the edition of 1996, read on a scan
 * (https://es.scribd.com/document/406049291/Balanceo-dinamico); its place in the edition of 2005 from memory.
 */
export const amcaCategories =
  "BV-1: residential, to 0.15 kW; BV-2: residential above 0.15 kW, heating, ventilating and agricultural to 3.7 kW; BV-3: heating, ventilating and agricultural above 3.7 kW, industrial process and power generation to 298 kW (400 hp), transport and marine to 15 kW, transit and tunnel to 75 kW, petrochemical to 37 kW; BV-4: industrial above 298 kW, transport above 15 kW, transit and tunnel above 75 kW, tunnel jet fans, petrochemical above 37 kW; BV-5: chip making, clean rooms";

/** The same of ISO 14694, which ends below 300 kW. */
export const isoFanCategories =
  "BV-1: residential, to 0.15 kW; BV-2: residential above 0.15 kW, heating, ventilating and agricultural to 3.7 kW; BV-3: heating, ventilating and agricultural above 3.7 kW, industrial process and power generation to 300 kW, transport and marine to 15 kW, transit and tunnel to 75 kW, petrochemical to 37 kW; BV-4: transport above 15 kW, transit and tunnel above 75 kW, tunnel jet fans, petrochemical above 37 kW; BV-5: chip making, clean rooms";
