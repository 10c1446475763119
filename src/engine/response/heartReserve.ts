import { OXYGEN } from '#engine/demand/oxygenCost.ts'

/** A rider's heart rate between rest and maximum, beats a minute. */
export interface HeartRange {
  rest: number
  max: number
}

/**
 * Heart rate at a share (0–1) of the reserve: rest + share × (max − rest).
 * Source: Karvonen MJ, Kentala E, Mustala O, Ann Med Exp Biol Fenn 1957;35:307-315.
 */
export const heartRateAt = (share: number, { rest, max }: HeartRange): number => rest + share * (max - rest)

/** The share of the reserve a heart rate takes up. */
export const shareOfReserve = (beats: number, { rest, max }: HeartRange): number => (beats - rest) / (max - rest)

/**
 * Oxygen uptake at the same share of its own reserve, mL/kg/min: the two reserves are taken
 * as equal (Swain DP, Leutholtz BC, Med Sci Sports Exerc 1997;29(3):410-414; from memory).
 */
export const uptakeAtShare = (share: number, vo2max: number): number => OXYGEN.rest + share * (vo2max - OXYGEN.rest)

/**
 * Per cent of maximal heart rate at a per cent of maximal oxygen uptake: 0.64 × + 37.
 * Source: Swain DP et al., Med Sci Sports Exerc 1994;26(1):112-116; the line from memory,
 * the means printed in its abstract lie up to a point above it.
 */
export const heartMaximumShare = (uptakePercent: number): number => 0.64 * uptakePercent + 37
