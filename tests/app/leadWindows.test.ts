import { describe, expect, it } from 'vitest'
import { shareLead } from '#app/leadWindows.ts'
import { computeRide } from '#engine/computeRide.ts'
import type { RideReport } from '#engine/report.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { countedIds, smallRide } from '#tests/support/smallRide.ts'

type LeadWorld = NonNullable<Parameters<typeof shareLead>[1]>

const settled = () => new Promise((resolve) => setImmediate(resolve))

/** A browser with one lead to have, in which windows hear each other. */
function browser() {
  let holder: { onLost: () => void } | null = null
  /** What the browser's answer waits for. */
  let answer: Promise<unknown> = Promise.resolve()
  const ears: { window: object; hear: (text: string) => void }[] = []
  const open = async () => {
    const window = {}
    let own: typeof holder = null
    const store = createAppStore({ compute: (ride): RideReport => computeRide(ride), newId: countedIds('n'), shelf: null })
    const world: LeadWorld = {
      takeLead: async (byForce, onLost) => {
        await answer
        if (holder && holder !== own && !byForce) return false
        holder?.onLost()
        own = { onLost }
        holder = own
        return true
      },
      giveLead: () => {
        if (holder === own) holder = null
      },
      tell: (text) => ears.filter((ear) => ear.window !== window).map(({ hear }) => hear(text)),
      listen: (hear) => void ears.push({ window, hear }),
      rest: async () => undefined,
    }
    store.getState().openRide(smallRide())
    const takeOver = await shareLead(store, world)
    return { state: () => store.getState(), takeOver, close: () => world.giveLead() }
  }
  return { open, answersAfter: (wait: Promise<unknown>) => (answer = wait) }
}

describe('a class in two windows', () => {
  it('is led by the one that begins it, and followed by the other, which changes nothing of it', async () => {
    const { open } = browser()
    const [one, two] = [await open(), await open()]
    for (const { state } of [one, two]) state().readyClass(1000)
    one.state().startClass(2000, null)
    await settled()
    expect([one.state().ledElsewhere, two.state().ledElsewhere]).toEqual([false, true])
    one.state().lead({ kind: 'next' }, 9000)
    expect(two.state().leading!.log).toEqual(one.state().leading!.log)
    two.state().lead({ kind: 'next' }, 9500)
    two.state().takeBack()
    two.state().restartClass()
    two.state().endClass()
    expect(two.state().leading!.log!.events).toHaveLength(1)
    one.state().endClass()
    expect([two.state().leading, two.state().ledElsewhere, two.state().lastLed]).toEqual([null, false, null])
  })

  it('is taken over by a press, and the window that led it follows from then on', async () => {
    const { open } = browser()
    const [one, two] = [await open(), await open()]
    one.state().readyClass(1000)
    one.state().startClass(2000, null)
    await settled()
    await two.takeOver()
    expect([one.state().ledElsewhere, two.state().ledElsewhere]).toEqual([true, false])
    two.state().lead({ kind: 'next' }, 9000)
    expect(one.state().leading!.log!.events).toHaveLength(1)
    one.state().lead({ kind: 'next' }, 9000)
    expect(two.state().leading!.log!.events).toHaveLength(1)
  })

  it('that somebody begins in both is one class: the first', async () => {
    const { open } = browser()
    const one = await open()
    one.state().readyClass(1000)
    one.state().startClass(2000, null)
    await settled()
    const two = await open()
    two.state().readyClass(5000)
    two.state().startClass(6000, null)
    await settled()
    await settled()
    expect(two.state().ledElsewhere).toBe(true)
    expect(two.state().leading!.log).toEqual(one.state().leading!.log)
  })

  it('is free again when the window that led it is closed', async () => {
    const { open } = browser()
    const [one, two] = [await open(), await open()]
    one.state().readyClass(1000)
    one.state().startClass(2000, null)
    await settled()
    one.close()
    await two.takeOver()
    expect(two.state().ledElsewhere).toBe(false)
  })

  it('that ends before the browser has answered leaves the next one free to be led', async () => {
    const { open, answersAfter } = browser()
    const [one, two] = [await open(), await open()]
    let answer = () => {}
    answersAfter(new Promise<void>((resolve) => (answer = resolve)))
    one.state().readyClass(1000)
    one.state().startClass(2000, null)
    one.state().endClass()
    answer()
    await settled()
    two.state().readyClass(5000)
    two.state().startClass(6000, null)
    await settled()
    expect([one.state().ledElsewhere, two.state().ledElsewhere]).toEqual([true, false])
  })
})
