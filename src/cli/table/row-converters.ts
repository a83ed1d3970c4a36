import { conversionAssumes, convert, converter } from "../../amplitude/index";
import { cachedWithRefusals } from "../../core/index";
import { type Assumption, parsedType } from "../../reading/index";
import { rowCache } from "./row-cache";
import type { RowFacts, RowReader } from "./row-reader";
import type { TableSettings } from "./settings";

/** The conversions of one reading type, and what they assume. */
export interface RowConverters {
  readonly each: readonly ((value: number, hertz: number | undefined) => number)[];
  readonly assumed: readonly Assumption[];
}

interface Told {
  readonly at?: { readonly hertz: number };
  readonly crestFactor?: number;
}

const convertText = convert as (value: number, from: string, to: string, options?: Told) => number;
const converterText = converter as (from: string, to: string, options?: Told) => (value: number) => number;

/** Finds the conversions for what a row says; each is compiled once and kept. */
export function rowConverters(
  { freeFrequency }: RowReader,
  { targets, crestFactor }: TableSettings,
): (facts: Omit<RowFacts, "value">) => RowConverters {
  const told = (hertz: number | undefined): Told => ({
    ...(hertz !== undefined && { at: { hertz } }),
    ...(crestFactor !== undefined && { crestFactor }),
  });
  const make = (written: string, hertz: number | undefined): RowConverters => {
    const { type } = parsedType(written);
    const options = told(hertz);
    return {
      each: targets.map((target) =>
        freeFrequency
          ? (value, own) => convertText(value, type, target, told(own))
          : converterText(type, target, options),
      ),
      assumed: [...new Set(targets.flatMap((target) => conversionAssumes(type, target, crestFactor)))],
    };
  };
  if (freeFrequency) {
    // a row without its frequency is refused by itself, when it is converted
    const found = cachedWithRefusals((type) => make(type, 1), rowCache);
    return ({ type }) => found(type);
  }
  const found = cachedWithRefusals((key) => {
    const [type, hertz] = key.split("\n") as [string, string];
    return make(type, hertz === "" ? undefined : Number(hertz));
  }, rowCache);
  return ({ type, hertz }) => found(`${type}\n${hertz ?? ""}`);
}
