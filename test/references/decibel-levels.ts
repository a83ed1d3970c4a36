import type { Reference } from "./reference";

/** Decibel levels in print. */
export const levelReferencesInPrint = [
  {
    id: "B01",
    statement:
      "acceleration level: ISO 1683 reference 1 um/s2 against the older ANSI S1.8-1969 reference 10 um/s2: size of the offset",
    printed: 20,
    tolerance: 0,
    agrees: true,
    source: "ASA Standard Terms, 3.24 (vibratory) acceleration level, annotations",
    provenance: "published",
    page: "http://asastandards.org/Terms/vibratory-acceleration-level/",
  },
  {
    id: "B03",
    statement: "velocity level: ISO 1683 reference 1 nm/s against ANSI S1.8-1969 reference 10 nm/s",
    printed: 20,
    tolerance: 0,
    agrees: true,
    source: "ASA Standard Terms, 3.23 particle velocity level, annotation",
    provenance: "published",
    page: "http://asastandards.org/Terms/particle-velocity-level/",
  },
  {
    id: "B04.dB1",
    statement:
      "acceleration level reference 1 um/s2 is 0 dB by ISO 1683, and the same standard notes 10 um/s2 also in use for structure-borne sound; +40 dB is x100, +60 dB is x1000",
    printed: 40,
    tolerance: 0,
    agrees: true,
    source: "Acoustic Glossary, entry Acceleration Level (quotes ISO 1683)",
    provenance: "published",
    page: "http://www.acoustic-glossary.co.uk/definitions-a.htm",
  },
  {
    id: "B04.dB2",
    statement:
      "acceleration level reference 1 um/s2 is 0 dB by ISO 1683, and the same standard notes 10 um/s2 also in use for structure-borne sound; +40 dB is x100, +60 dB is x1000",
    printed: 60,
    tolerance: 0,
    agrees: true,
    source: "Acoustic Glossary, entry Acceleration Level (quotes ISO 1683)",
    provenance: "published",
    page: "http://www.acoustic-glossary.co.uk/definitions-a.htm",
  },
  {
    id: "B08",
    statement: "84 dB re 1 micro-inch/s as mm/s r.m.s.",
    printed: 0.4,
    tolerance: 0.05,
    agrees: true,
    source: "Eng-Tips thread 453757, question quoting two consultant reports that use dB re 1 micro-inch per second",
    provenance: "published",
    page: "https://eng-tips.com/threads/unit-conversion-vibration-micro-in-s-to-mm-s-rms.453757/post-8451708",
  },
  {
    id: "B09",
    statement: "77 dB re 1 micro-inch/s as mm/s r.m.s.",
    printed: 0.19,
    tolerance: 0.005,
    agrees: false,
    source: "Eng-Tips thread 453757, question quoting two consultant reports that use dB re 1 micro-inch per second",
    provenance: "published",
    page: "https://eng-tips.com/threads/unit-conversion-vibration-micro-in-s-to-mm-s-rms.453757/post-8451708",
    note: "DOES NOT AGREE: 77 dB gives 0.180 mm/s. 0.19 would be 77.5 dB. The asker's own attempt (77 x 0.0000254) treats decibels as a linear number: a classic error worth a guard.",
  },
  {
    id: "B11",
    statement:
      "FTA source pair at 25 ft, loaded trucks: PPV 0.076 in/s and its listed level, crest factor 4 (r.m.s. = PPV/4), re 1e-6 in/s",
    printed: 86,
    tolerance: 0.5,
    agrees: true,
    source:
      "Consultant worksheet filed with San Joaquin County EHD, quoting FTA Transit Noise and Vibration Impact Assessment Manual (2018) Table 7-4 and Eq. 7-2/7-3",
    provenance: "published",
    page: "https://lfweb.sjgov.org/EHD/0/doc/931839/Page166.aspx",
  },
  {
    id: "B12",
    statement:
      "FTA source pair at 25 ft, small bulldozer: PPV 0.003 in/s and its listed level, crest factor 4 (r.m.s. = PPV/4), re 1e-6 in/s",
    printed: 58,
    tolerance: 0.5,
    agrees: true,
    source:
      "Consultant worksheet filed with San Joaquin County EHD, quoting FTA Transit Noise and Vibration Impact Assessment Manual (2018) Table 7-4 and Eq. 7-2/7-3",
    provenance: "published",
    page: "https://lfweb.sjgov.org/EHD/0/doc/931839/Page166.aspx",
  },
  {
    id: "B24",
    statement: "gain of 5 in decibels",
    printed: 14,
    tolerance: 0.5,
    agrees: true,
    source: "W. T. Thomson, Theory of Vibration with Applications, sec. 1.3, p. 13",
    provenance: "published",
    page: "https://digilib.universitaspertamina.ac.id/ebook/Theory%20of%20Vibration%20with%20Applications/files/basic-html/page26.html",
  },
] as const satisfies readonly Reference[];
