/** Yardsticks: other published lines for heart rates, which the page shows nothing of. */

/** Highest heart rate at an age, through longitudinal data: Gellish RL et al., Med Sci Sports Exerc 2007;39(5):822-829. */
export const heartMaximumGellish = (age: number): number => 206.9 - 0.67 * age

/** The old rule of thumb, which no study stands behind: Fox SM et al., Ann Clin Res 1971;3:404-432. */
export const heartMaximumFox = (age: number): number => 220 - age

/**
 * Per cent of maximal heart rate at a per cent of maximal oxygen uptake: 0.64 × + 37.
 * Source: Swain DP et al., Med Sci Sports Exerc 1994;26(1):112-116; the line from memory, the means printed in its abstract
 * lie up to a point above it.
 */
export const heartMaximumShare = (uptakePercent: number): number => 0.64 * uptakePercent + 37
