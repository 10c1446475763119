export const checks = {
  /** A repair with the block it is made in. */
  fixIn: ({ fix, block }: { fix: string; block: string }) => `${fix} in ${block}`,
  wouldBring: ({ fix, finding }: { fix: string; finding: string }) => `“${fix}” would bring another: ${finding}`,
  wouldWorsen: ({ fix, finding }: { fix: string; finding: string }) => `“${fix}” would make another worse: ${finding}`,
  goesAgainst: ({ fix, other }: { fix: string; other: string }) => `“${fix}” would go against “${other}”, which weighs more.`,
}
