/** What a vector looks like, for messages. */
export const VECTOR_FORM = 'a vector such as "3.0 mil pp ∠ 45° at 1x of 3600 r/min"';

/** What stands before a phase. */
export const ANGLE = /∠|\/_|\b(?:angle|phase)\b/i;
