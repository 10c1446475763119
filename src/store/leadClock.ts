/** The clock a class is led by; the app supplies it. */
export interface LeadClock {
  /**
   * Milliseconds since 1970 of a frame's or an event's own timestamp. Later timestamps give later
   * instants; the clock goes on while the machine sleeps.
   */
  instantOf: (timeStamp: number) => number
  /** The timestamp of this very moment. */
  now: () => number
}
