import { keptOf } from '#store/leadSlice.ts'
import type { AppStore } from '#store/state.ts'
import { parseClass } from './classKeeping.ts'

/** What the windows of one browser need to agree who leads. */
interface LeadWorld {
  /** Takes the lead where no other window has it, or by force; calls back when another window takes it. False where it is taken. */
  takeLead: (byForce: boolean, onLost: () => void) => Promise<boolean>
  giveLead: () => void
  tell: (text: string) => void
  listen: (hear: (text: string) => void) => void
  rest: (milliseconds: number) => Promise<void>
}

/** Asks whoever leads to tell the class as it is. */
const ASK = '?'
/** A page that is loaded anew may have to wait until the one before it has let go: so often, so long. */
const TRIES = 12
const BETWEEN_TRIES = 150

/**
 * Has one window alone lead a class. The first that begins one leads it; the others show it as it
 * comes, and take over by a press. A window that is closed or killed gives the lead up by that.
 *
 * @returns takes the lead over, for the press
 */
export async function shareLead(store: AppStore, world: LeadWorld | null): Promise<() => Promise<void>> {
  if (!world) return async () => store.getState().leadHere()
  let isLeading = false

  const tell = () => world.tell(JSON.stringify(keptOf(store.getState().leading)))
  const lost = () => {
    isLeading = false
    const kept = keptOf(store.getState().leading)
    if (kept) store.getState().followClass(kept)
  }
  const take = async (byForce: boolean) => {
    isLeading = true
    for (let tries = 1; tries <= TRIES; tries++) {
      const isHad = await world.takeLead(byForce, lost)
      // The class ended while the lead was being taken: it is free for the next.
      if (!isLeading) return isHad ? world.giveLead() : undefined
      if (isHad) {
        store.getState().leadHere()
        return tell()
      }
      await world.rest(BETWEEN_TRIES)
      if (!isLeading) return
    }
    lost()
    world.tell(ASK)
  }

  store.subscribe(({ leading, ledElsewhere }, before) => {
    if (ledElsewhere || leading === before.leading) return
    const isClass = keptOf(leading) !== null
    if (isClass && !isLeading) void take(false)
    else if (isLeading) tell()
    if (!isClass && isLeading) {
      isLeading = false
      world.giveLead()
    }
  })
  world.listen((text) => {
    if (isLeading) return text === ASK ? tell() : undefined
    const kept = parseKept(text)
    if (kept || store.getState().ledElsewhere) store.getState().followClass(kept)
  })
  if (keptOf(store.getState().leading)) await take(false)
  return () => take(true)
}

function parseKept(text: string) {
  try {
    return parseClass(JSON.parse(text))
  } catch {
    return null
  }
}

const NAME = 'ridewright.lead'

/** By the browser's locks and a channel of its own; null where it has either not, and every window leads for itself. */
export function browserLead(): LeadWorld | null {
  if (typeof navigator === 'undefined' || !navigator.locks || typeof BroadcastChannel === 'undefined') return null
  const channel = new BroadcastChannel(NAME)
  let release = () => {}
  let isHeld = false
  return {
    takeLead: (byForce, onLost) =>
      new Promise((resolve) => {
        if (isHeld) return resolve(true)
        const hold = (lock: Lock | null) => {
          resolve(lock !== null)
          if (!lock) return undefined
          isHeld = true
          return new Promise<void>((done) => {
            release = () => {
              isHeld = false
              done()
            }
          })
        }
        navigator.locks
          .request(NAME, byForce ? { steal: true } : { ifAvailable: true }, hold)
          // Taken by force from another window.
          .catch(() => {
            isHeld = false
            onLost()
          })
      }),
    rest: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
    giveLead: () => release(),
    tell: (text) => channel.postMessage(text),
    listen: (hear) => channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => typeof data === 'string' && hear(data)),
  }
}
