export { bandOfText } from "./band-of-text";
export {
  type FrequencyUnit,
  type FrequencyUnitFacts,
  type FrequencyUnitSpelling,
  type FrequencyUnitSymbol,
  frequencyUnitFacts,
  frequencyUnits,
} from "./catalogue";
export { FREQUENCY_FORM } from "./form";
export {
  type Frequency,
  type FrequencyText,
  findFrequencyUnit,
  frequency,
  frequencyUnitSymbol,
  hertz,
  inHertz,
  splitOrder,
} from "./frequency";
