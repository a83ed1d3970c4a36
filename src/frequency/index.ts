export {
  type FrequencyUnit,
  type FrequencyUnitSpelling,
  type FrequencyUnitSymbol,
  frequencyUnits,
} from "./catalogue";
export {
  type Frequency,
  type FrequencyText,
  frequency,
  frequencyUnitSymbol,
  hertz,
} from "./frequency";
