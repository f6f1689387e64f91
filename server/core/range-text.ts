/** A range in words, of edges written with their unit: the one rule for reply, page and report. */

/** "13 1/2 in to 14 in", "at least 11.0 V", "at most 3 psi", "at most 1/4 in down"; '' where there is neither edge. */
export const rangeText = (low: string | null, high: string | null): string => {
  if (low !== null && high !== null) return `${low} to ${high}`;
  // a height off or a fall that may be so much and no more
  if (low !== null && high === null && /^-[\d /.]+(?:in|mm|cm)$/.test(low)) return `at most ${low.slice(1)} down`;
  return low !== null ? `at least ${low}` : high !== null ? `at most ${high}` : '';
};

/** The text with its unit, where it was typed without. */
export const withItsUnit = ({ text, unit }: { text: string; unit: string }): string =>
  /[a-zA-Z%"°]/.test(text) ? text : `${text} ${unit}`;
