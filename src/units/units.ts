/**
 * The quantities a ride is made of.
 *
 * A unit type is a number with an optional tag: a literal or the result of
 * arithmetic can be given to any of them, but a variable holding one unit cannot
 * be handed over as another. That catches the mistake worth catching (seconds
 * for counts) and costs no casts where JSON is read or sums are made.
 */
type Unit<Name extends string> = number & { readonly unit?: Name }

/** Time in seconds. */
export type Seconds = Unit<'seconds'>
/** Whole musical beats; eight of them are an eight, thirty-two a phrase. */
export type Counts = Unit<'counts'>
/** Tempo in beats a minute. */
export type Bpm = Unit<'bpm'>
/** Cadence in crank revolutions a minute. */
export type Rpm = Unit<'rpm'>
/** Resistance in whole steps of a bike's knob (a quarter turn on a knob with four steps a turn). */
export type KnobSteps = Unit<'knobSteps'>
/** A setting in the bike's own unit (turns, levels); steps ÷ steps per unit. */
export type Setting = Unit<'setting'>
/** A stretch of time, of whatever clock. */
export interface Stretch {
  from: Seconds
  to: Seconds
}

/** A place on the knob, or a range of places from low to high. */
export interface StepRange {
  readonly from: KnobSteps
  readonly to: KnobSteps
  /** `from` and anything above it; `to` is then the same. */
  readonly orMore?: true
}
/** Effort from 0 to 10. */
export type Effort = Unit<'effort'>
/** Mechanical power. */
export type Watts = Unit<'watts'>

/** Counts in an eight. */
export const EIGHT: Counts = 8
/** Counts in a phrase: four eights. */
export const PHRASE: Counts = 32
