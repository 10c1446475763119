/**
 * What standing costs at the same power and cadence. Measured uphill, four cyclists: oxygen 3.06 → 3.17 L/min,
 * heart 166 → 175 beats a minute (Berkemeier QN et al., Int J Exerc Sci 2020;13(2):996-1011). Others found the heart
 * about eight higher and oxygen no different (Millet GP et al., Med Sci Sports Exerc 2002;34:1645-1652, by a
 * summary of it), or both higher on a 4 % slope and the same on 10 % (Tanaka H et al., Can J Appl Physiol
 * 1996;21:149-154). So oxygen may rise by less than this or not at all, which the band of energy holds.
 * Nothing was found on hovering or on moves in the saddle or out of it: they cost what sitting or standing does.
 */
export const STANDING_COST = {
  /** Gross oxygen uptake, times. */
  uptake: 3.17 / 3.06,
  /** Beats a minute, all told. */
  beats: 8,
} as const
