/**
 * Averages of whole classes as they were measured, as a band to hold a plan against: per cent
 * of maximal oxygen uptake and of maximal heart rate. A plan reads lower than measured classes,
 * because riders go over the target most of the time.
 *
 * Sources: uptake 66 and 74 % (±14), Battista RA et al., J Strength Cond Res 2008;22(4):1236-1241;
 * 79 % and heart 86 %, Piacentini MF et al., Sport Sci Health 2009;5(1):29-36; heart 72–73 % (±6),
 * Cortis C et al., Int J Environ Res Public Health 2021;18(3):870.
 */
export const MEASURED_CLASSES = {
  uptakePercent: [52, 88],
  heartPercent: [65, 90],
  source: 'Piacentini 2009, Battista 2008, Cortis 2021',
} as const satisfies { uptakePercent: readonly [number, number]; heartPercent: readonly [number, number]; source: string }
