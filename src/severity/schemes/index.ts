import { ansiAmca204Of2005 } from "./ansi-amca-204-05";
import { ansiAmca204Acceptance } from "./ansi-amca-204-05-acceptance";
import { ansiHi964Slow } from "./ansi-hi-9-6-4-2009-slow";
import { api541 } from "./api-541";
import { api541Shaft } from "./api-541-shaft";
import { api610 } from "./api-610";
import { api610Shaft } from "./api-610-shaft";
import { api610Table9Shaft } from "./api-610-table-9-shaft";
import { api611 } from "./api-611";
import { api611Shaft } from "./api-611-shaft";
import { api612Shaft } from "./api-612-7th-shaft";
import { api617Shaft } from "./api-617-shaft";
import { api619 } from "./api-619-5th";
import { api672Shaft } from "./api-672-5th-shaft";
import { api673 } from "./api-673-3rd";
import { api673Shaft } from "./api-673-3rd-shaft";
import { asmeNfpa20Pumps } from "./asme-nfpa-20-pumps";
import { chillerMakerSheet } from "./chiller-maker-sheet";
import { compressorHandbookRule } from "./compressor-handbook-rule";
import { gearHousingHandbook } from "./gear-housing-handbook";
import { iec60034Part14Of2003 } from "./iec-60034-14-2003";
import { iso2372Of1974 } from "./iso-2372-1974";
import { iso2373Of1974 } from "./iso-2373-1974";
import { iso3945Of1985 } from "./iso-3945-1985";
import { iso7919Part2Of2009 } from "./iso-7919-2-2009";
import { iso7919Part3Of2009 } from "./iso-7919-3-2009";
import { iso7919Part4Of2009 } from "./iso-7919-4-2009";
import { iso10816Part1AnnexB } from "./iso-10816-1-1995-annex-b";
import { iso10816Part2Of2009 } from "./iso-10816-2-2009";
import { iso10816Part3Of1998 } from "./iso-10816-3-1998";
import { iso10816Part3Of2009 } from "./iso-10816-3-2009";
import { iso10816Part4 } from "./iso-10816-4";
import { iso10816Part5Of2000 } from "./iso-10816-5-2000";
import { iso10816Part6Of1995 } from "./iso-10816-6-1995";
import { iso10816Part6Grades } from "./iso-10816-6-1995-grades";
import { iso10816Part7Of2009 } from "./iso-10816-7-2009";
import { iso10816Part7Acceptance } from "./iso-10816-7-2009-acceptance";
import { iso10816Part21Of2015 } from "./iso-10816-21-2015";
import { iso14694Of2003 } from "./iso-14694-2003";
import { iso14694Acceptance } from "./iso-14694-2003-acceptance";
import { iso20816Part1Ranges } from "./iso-20816-1-2016-ranges";
import { iso20816Part2Of2017 } from "./iso-20816-2-2017";
import { iso20816Part2Shaft } from "./iso-20816-2-2017-shaft";
import { iso20816Part3Of2022 } from "./iso-20816-3-2022";
import { iso20816Part3Shaft } from "./iso-20816-3-2022-shaft";
import { iso20816Part4Shaft } from "./iso-20816-4-2018-shaft";
import { iso20816Part8Of2018 } from "./iso-20816-8-2018";
import { lrGeneratingSets } from "./lr-generating-sets";
import { lrReciprocatingGuidance } from "./lr-recip-guidance";
import { motorMakerAlarms } from "./motor-maker-alarms";
import { nemaMg1Part7 } from "./nema-mg1-7";
import { nemaMg1Part20Old } from "./nema-mg1-20-52";
import { recipCompressorMaker } from "./recip-compressor-maker";
import { vdi3836Of2012 } from "./vdi-3836-2012";

export {
  ansiAmca204Acceptance,
  ansiAmca204Of2005,
  ansiHi964Slow,
  api541,
  api541Shaft,
  api610,
  api610Shaft,
  api610Table9Shaft,
  api611,
  api611Shaft,
  api612Shaft,
  api617Shaft,
  api619,
  api672Shaft,
  api673,
  api673Shaft,
  asmeNfpa20Pumps,
  chillerMakerSheet,
  compressorHandbookRule,
  gearHousingHandbook,
  iec60034Part14Of2003,
  iso2372Of1974,
  iso2373Of1974,
  iso3945Of1985,
  iso7919Part2Of2009,
  iso7919Part3Of2009,
  iso7919Part4Of2009,
  iso10816Part1AnnexB,
  iso10816Part2Of2009,
  iso10816Part3Of1998,
  iso10816Part3Of2009,
  iso10816Part4,
  iso10816Part5Of2000,
  iso10816Part6Grades,
  iso10816Part6Of1995,
  iso10816Part7Acceptance,
  iso10816Part7Of2009,
  iso10816Part21Of2015,
  iso14694Acceptance,
  iso14694Of2003,
  iso20816Part1Ranges,
  iso20816Part2Of2017,
  iso20816Part2Shaft,
  iso20816Part3Of2022,
  iso20816Part3Shaft,
  iso20816Part4Shaft,
  iso20816Part8Of2018,
  lrGeneratingSets,
  lrReciprocatingGuidance,
  motorMakerAlarms,
  nemaMg1Part7,
  nemaMg1Part20Old,
  recipCompressorMaker,
  vdi3836Of2012,
};

/** Every built-in scheme. To add one, add its file and its lines here. */
export const builtInSchemes = /* @__PURE__ */ Object.freeze([
  ansiAmca204Acceptance,
  ansiAmca204Of2005,
  ansiHi964Slow,
  api610Shaft,
  api610,
  api617Shaft,
  api541,
  api541Shaft,
  api610Table9Shaft,
  api611,
  api611Shaft,
  api612Shaft,
  api619,
  api672Shaft,
  api673,
  api673Shaft,
  asmeNfpa20Pumps,
  compressorHandbookRule,
  iec60034Part14Of2003,
  iso10816Part1AnnexB,
  iso10816Part2Of2009,
  iso10816Part21Of2015,
  iso10816Part3Of1998,
  iso10816Part3Of2009,
  iso10816Part4,
  iso10816Part5Of2000,
  iso10816Part6Grades,
  iso10816Part6Of1995,
  iso10816Part7Acceptance,
  iso10816Part7Of2009,
  iso14694Acceptance,
  iso14694Of2003,
  iso20816Part1Ranges,
  iso20816Part2Shaft,
  iso20816Part2Of2017,
  iso20816Part3Shaft,
  iso20816Part3Of2022,
  iso20816Part4Shaft,
  iso20816Part8Of2018,
  iso2372Of1974,
  iso2373Of1974,
  iso3945Of1985,
  iso7919Part2Of2009,
  iso7919Part3Of2009,
  iso7919Part4Of2009,
  lrReciprocatingGuidance,
  nemaMg1Part20Old,
  nemaMg1Part7,
  chillerMakerSheet,
  gearHousingHandbook,
  lrGeneratingSets,
  motorMakerAlarms,
  recipCompressorMaker,
  vdi3836Of2012,
] as const);

/** The id of a built-in scheme. */
export type SchemeId = (typeof builtInSchemes)[number]["id"];
