export type { ChartOptions } from "./chart-options";
export { type NomographOptions, type NomographReading, nomograph } from "./nomograph";
export { type ChartColours, chartColours } from "./palette";
export { type SeverityBarOptions, severityBar } from "./severity-bar";
export { type SpectrumChartOptions, spectrumChart } from "./spectrum-chart";
export { type ChartTheme, chartThemes } from "./style";
export { type TrendChartOptions, type TrendReading, trendChart } from "./trend-chart";
export { type TripTimelineOptions, tripTimeline } from "./trip-timeline";
export type { ChartSeverity } from "./zones";
