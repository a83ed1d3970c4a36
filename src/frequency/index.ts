export {
  type FrequencyUnit,
  type FrequencyUnitFacts,
  type FrequencyUnitSpelling,
  type FrequencyUnitSymbol,
  frequencyUnitFacts,
  frequencyUnits,
} from "./catalogue";
export {
  type Frequency,
  type FrequencyText,
  frequency,
  frequencyUnitSymbol,
  hertz,
} from "./frequency";
