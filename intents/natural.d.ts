declare module 'natural/lib/natural/distance/levenshtein_distance.js' {
  export function DamerauLevenshteinDistance(
    source: string,
    target: string,
    options?: { restricted?: boolean; insertion_cost?: number; deletion_cost?: number; substitution_cost?: number },
  ): number;
}
