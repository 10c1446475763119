/** Yardsticks: tables of the energy cost of stationary cycling. The page shows none of them; its equation is held against them. */

/** A row of the tables: METs of stationary cycling in a band of power; `to` open above. */
export interface CompendiumBand {
  code: string
  from: number
  to: number | null
  mets: number
}

/**
 * Stationary cycling by power.
 * Source: Ainsworth BE et al., 2011 Compendium of Physical Activities, Med Sci Sports Exerc
 * 2011;43(8):1575-1581.
 */
export const COMPENDIUM_2011: readonly CompendiumBand[] = [
  { code: '02011', from: 30, to: 50, mets: 3.5 },
  { code: '02017', from: 51, to: 89, mets: 4.8 },
  { code: '02012', from: 90, to: 100, mets: 6.8 },
  { code: '02013', from: 101, to: 160, mets: 8.8 },
  { code: '02014', from: 161, to: 200, mets: 11 },
  { code: '02015', from: 201, to: 270, mets: 14 },
]

/**
 * The newer table, with gaps between its bands.
 * Source: Herrmann SD et al., 2024 Adult Compendium of Physical Activities, J Sport Health
 * Sci 2024;13(1):6-12.
 */
export const COMPENDIUM_2024: readonly CompendiumBand[] = [
  { code: '01210', from: 25, to: 30, mets: 3.5 },
  { code: '01214', from: 50, to: 50, mets: 4 },
  { code: '01216', from: 60, to: 60, mets: 5 },
  { code: '01218', from: 70, to: 80, mets: 5.8 },
  { code: '01220', from: 90, to: 100, mets: 6 },
  { code: '01224', from: 101, to: 125, mets: 6.8 },
  { code: '01228', from: 126, to: 150, mets: 8 },
  { code: '01232', from: 151, to: 199, mets: 10.3 },
  { code: '01236', from: 200, to: 229, mets: 10.8 },
  { code: '01240', from: 230, to: 250, mets: 12.5 },
  { code: '01244', from: 270, to: 305, mets: 13.8 },
  { code: '01248', from: 326, to: null, mets: 16.3 },
]

/** Rows without a power band; same sources. The class entry changed its code between the editions. */
export const COMPENDIUM_GENERAL: Readonly<Record<string, number>> = {
  '02010': 7,
  '02019': 8.5,
  '01200': 6.8,
  '01270': 9,
  '01305': 8.8,
}

/**
 * METs of a power by a table: its band's, straight between the edges of two bands where the
 * table leaves a gap, the outer bands' own beyond them. Never undefined.
 */
export function metsByTable(watts: number, table: readonly CompendiumBand[] = COMPENDIUM_2024): number {
  const first = table[0]!
  if (watts <= first.from) return first.mets
  const at = table.findLastIndex((band) => watts >= band.from)
  const band = table[at]!
  const next = table[at + 1]
  if (band.to === null || watts <= band.to || next === undefined) return band.mets
  return band.mets + ((watts - band.to) * (next.mets - band.mets)) / (next.from - band.to)
}
