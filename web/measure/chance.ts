/** A probability as a natural number: `98 in 100`; never all and never nothing. */
export function chanceWords(probability: number): string {
  if (probability < 0.005) return 'hardly';
  return `${Math.min(99, Math.max(1, Math.round(probability * 100)))} in 100`;
}
