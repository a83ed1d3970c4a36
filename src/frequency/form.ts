/** What a frequency looks like, for messages. */
export const FREQUENCY_FORM = 'a frequency above zero such as "25 Hz", "1500 r/min" or "2x 1500 r/min"';
