/** A class begun this much before or after its booked time still belongs to that slot (common practice). */
const BEFORE_MS = 30 * 60_000
const SHARE_OF_SLOT = 0.5

/**
 * The instant at which today's slot of a ride begins, or null when none is near: a ride led in the
 * morning to try it out is not twelve hours early for the evening. Wall clock in the page's zone.
 *
 * @param startsAt "HH:MM"
 * @param instant milliseconds since 1970
 */
export function bookedSlot(startsAt: string | undefined, slotMinutes: number, instant: number): number | null {
  const [, hours, minutes] = /^(\d{2}):(\d{2})$/.exec(startsAt ?? '') ?? []
  if (hours === undefined) return null
  for (const day of [0, -1, 1]) {
    const date = new Date(instant)
    date.setDate(date.getDate() + day)
    date.setHours(Number(hours), Number(minutes), 0, 0)
    const late = instant - date.getTime()
    if (late >= -BEFORE_MS && late <= slotMinutes * 60_000 * SHARE_OF_SLOT) return date.getTime()
  }
  return null
}
