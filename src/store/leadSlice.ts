import { classTime, type LeadAct, type LeadLog } from '#engine/leading/leadLog.ts'
import type { Plan } from '#engine/leading/led.ts'
import { type LedClass, ledClass } from '#engine/leading/ledClass.ts'
import type { Ride } from '#plan/model.ts'
import type { Seconds } from '#units/units.ts'
import type { ReportOf } from './reportCache.ts'
import type { GetState, SetState } from './state.ts'

/** A class that waits for its first one, or is being led. */
export interface Leading {
  /** The ride as it was when the class began; later changes to it are for the next class. */
  plan: Plan
  /** Instant at which the booked slot began or begins; null while the slot counts from the first one. */
  slotFrom: number | null
  /** What happened; null before the first one. */
  log: LeadLog | null
  /** The class as it comes; null before the first one. */
  led: LedClass | null
}

/** What is kept of a class, so that a reload comes back to it. */
export interface KeptClass {
  ride: Ride
  slotFrom: number | null
  log: LeadLog | null
}

/**
 * The class being led. Instants are milliseconds since 1970 of a clock that never goes back,
 * taken from the event that caused them; no action reads a clock of its own.
 */
export interface LeadSlice {
  leading: Leading | null
  /** The class that was ended last, until it is in the log. */
  lastLed: Leading | null
  /** Another window leads the class; this one shows it and changes nothing of it. */
  ledElsewhere: boolean

  /** Makes the ride that is shown ready to lead. A class that is under way goes on, also of another ride; one long over does not. */
  readyClass: (instant: number) => void
  /** The slot begins at an instant: the briefing is counted down from here. Nothing once the class is under way. */
  beginSlot: (instant: number) => void
  /** The first one is heard. The slot began when it was said to, else at the instant it is booked for, else now. */
  startClass: (instant: number, booked: number | null) => void
  /** Something happens in the class; before it has begun nothing does. */
  lead: (act: LeadAct, instant: number) => void
  /** Undoes the last act, as if it had never been. False when there is none. */
  takeBack: () => boolean
  /** Back to waiting for the first one. */
  restartClass: () => void
  endClass: () => void
  /** Shows the class as the window that leads it has it now; null once it is over there. */
  followClass: (kept: KeptClass | null) => void
  /** This window leads the class from here on. */
  leadHere: () => void
  /** Puts a class back that was kept. */
  restoreClass: (kept: KeptClass) => void
  /** Puts the class back that was ended last and waits for the log. */
  restoreLastLed: (kept: KeptClass) => void
}

export function createLeadSlice(set: SetState, get: GetState, reportOf: ReportOf): LeadSlice {
  const withLog = (leading: Omit<Leading, 'log' | 'led'>, log: LeadLog | null): Leading => ({
    plan: leading.plan,
    log,
    led: log && ledClass(leading.plan, log),
    slotFrom: log?.slotFrom ?? leading.slotFrom,
  })
  const update = (leading: Leading, log: LeadLog | null) => set({ leading: withLog(leading, log) })
  const restored = ({ ride, slotFrom, log }: KeptClass) => withLog({ plan: { ride, report: reportOf(ride) }, slotFrom }, log)

  return {
    leading: null,
    lastLed: null,
    ledElsewhere: false,

    readyClass: (instant) => {
      const { shown, shownReport, leading, ledElsewhere } = get()
      if (!shown || !shownReport || ledElsewhere) return
      if (leading?.log && !isLongOver(leading, instant)) return
      const own = leading?.plan.ride.id === shown.id
      const slotFrom = own && !leading.log ? leading.slotFrom : null
      set({ leading: { plan: { ride: shown, report: shownReport }, slotFrom, log: null, led: null } })
    },

    beginSlot: (instant) => {
      const { leading, ledElsewhere } = get()
      if (leading && !leading.log && !ledElsewhere) set({ leading: { ...leading, slotFrom: instant } })
    },

    startClass: (instant, booked) => {
      const { leading, ledElsewhere } = get()
      if (!leading || leading.log || ledElsewhere) return
      const one = leading.plan.report.sections[0]?.one ?? 0
      const startedAt = instant - one * 1000
      update(leading, { slotFrom: leading.slotFrom ?? booked ?? startedAt, startedAt, events: [] })
    },

    lead: (act, instant) => {
      const { leading, ledElsewhere } = get()
      if (!leading?.log || ledElsewhere) return
      const { log } = leading
      // Two events can be handed over in another order than their stamps.
      const at = Math.max(log.events.at(-1)?.at ?? Number.NEGATIVE_INFINITY, classTime(log, instant))
      update(leading, { ...log, events: [...log.events, { ...act, at }] })
    },

    takeBack: () => {
      const { leading, ledElsewhere } = get()
      if (!leading?.log || leading.log.events.length === 0 || ledElsewhere) return false
      update(leading, { ...leading.log, events: leading.log.events.slice(0, -1) })
      return true
    },

    restartClass: () => {
      const { leading, ledElsewhere } = get()
      if (leading && !ledElsewhere) set({ leading: { ...leading, slotFrom: null, log: null, led: null } })
    },

    endClass: () => {
      const { leading, lastLed, ledElsewhere } = get()
      if (!ledElsewhere) set({ leading: null, lastLed: leading?.log ? leading : lastLed })
    },

    followClass: (kept) => set({ leading: kept && restored(kept), ledElsewhere: kept !== null }),
    leadHere: () => set({ ledElsewhere: false }),

    restoreClass: (kept) => set({ leading: restored(kept) }),
    restoreLastLed: (kept) => set({ lastLed: restored(kept) }),
  }
}

/** A class nobody ended is over for good this long after its last second. */
const LONG_OVER: Seconds = 1800

const isLongOver = ({ log, led }: Leading, instant: number): boolean =>
  log !== null && led !== null && classTime(log, instant) > led.report.overall.total + LONG_OVER

/** What to keep of a class: nothing before its slot has begun. */
export const keptOf = (leading: Leading | null): KeptClass | null =>
  leading && (leading.log || leading.slotFrom !== null) ? { ride: leading.plan.ride, slotFrom: leading.slotFrom, log: leading.log } : null
