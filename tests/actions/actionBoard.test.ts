// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import { type ActionBoard, createActionBoard, type Focus } from '#actions/actionBoard.ts'
import { computeRide } from '#engine/computeRide.ts'
import { createAppStore } from '#store/createAppStore.ts'
import { countedIds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

let board: ActionBoard
let said: string[]
let done: string[]
const store = createAppStore({ compute: computeRide, newId: countedIds(), shelf: null })

beforeEach(() => {
  said = []
  done = []
  board = createActionBoard((why) => said.push(told(why)))
  document.body.innerHTML = '<p id="stop"><b>in it</b></p><input id="field"><button id="button">press</button>'
  document.addEventListener('keydown', board.press)
})
afterEach(() => document.removeEventListener('keydown', board.press))

const on: Ground = { store }
const action = (id: string, more: Partial<Action<Ground>>): Action<Ground> => ({ id, name: id, does: id, do: () => done.push(id), ...more })

function post(place: Partial<ActionPlace<Ground>>, actions: Action<Ground>[], at: (focus: Focus) => Ground | null = () => on) {
  return board.post({ id: 'place', reach: 'page', repeats: false, groups: [{ title: 'all', actions }], ...place }, at)
}

/** @returns whether the key went no further */
function press(key: string, { at = 'body', ...more }: KeyboardEventInit & { at?: string } = {}): boolean {
  const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more })
  document.querySelector(at)!.dispatchEvent(event)
  return event.defaultPrevented
}

describe('a key', () => {
  it('does what it means, with the time of the press, and goes no further', () => {
    const stamps: number[] = []
    post({}, [action('a', { keys: ['A'], do: (_, { timeStamp }) => stamps.push(timeStamp) })])
    expect(press('a')).toBe(true)
    expect(stamps).toEqual([expect.any(Number)])
    expect(press('b')).toBe(false)
  })

  it('means what is nearest: the thing under the focus, then the page, then everywhere', () => {
    post({ reach: 'everywhere' }, [action('everywhere', { keys: ['A'] })])
    post({ reach: 'page' }, [action('page', { keys: ['A'] })])
    post({ reach: 'focus' }, [action('focus', { keys: ['A'] })], (focus) => (focus?.closest('#stop') ? on : null))
    press('a', { at: '#stop b' })
    press('a')
    expect(done).toEqual(['focus', 'page'])
  })

  it('goes on to what else it means where the first means nothing, and says why not where it cannot be done', () => {
    post({}, [action('not now', { keys: ['A', 'B'], can: () => false }), action('refused', { keys: ['B'], can: () => 'Too short.' })])
    post({ reach: 'everywhere' }, [action('everywhere', { keys: ['A', 'B'] })])
    press('a')
    expect(press('b')).toBe(true)
    expect([done, said]).toEqual([['everywhere'], ['Too short.']])
  })

  it('with Shift means the chord that names it, and else the one that does not', () => {
    const both = [action('plain', { keys: ['ArrowLeft', 'ArrowUp'] }), action('shifted', { keys: ['Shift+ArrowLeft'] })]
    post({}, both)
    press('ArrowLeft', { shiftKey: true })
    press('ArrowUp', { shiftKey: true })
    expect(done).toEqual(['shifted', 'plain'])
  })

  it('that is held down does it again only where that is meant, and never something else', () => {
    post({ repeats: true }, [action('again', { keys: ['A'] })])
    post({}, [action('once', { keys: ['B'] })])
    post({ reach: 'everywhere', repeats: true }, [action('everywhere', { keys: ['B'] })])
    press('a', { repeat: true })
    expect(press('b', { repeat: true })).toBe(true)
    expect(done).toEqual(['again'])
  })

  it('belongs to a text, a dialog, a button, or a handler of its own first', () => {
    post({}, [action('page', { keys: ['A', 'Space', 'Enter'] })])
    post({ reach: 'focus', inFields: true }, [action('field', { keys: ['Escape'] })])
    press('a', { at: '#field' })
    press(' ', { at: '#button' })
    press('Enter', { at: '#button' })
    expect(done).toEqual([])
    press('Escape', { at: '#field' })
    press('a', { at: '#button' })
    expect(done).toEqual(['field', 'page'])
    document.body.addEventListener('keydown', (event) => event.preventDefault(), { once: true })
    press('a')
    document.body.insertAdjacentHTML('beforeend', '<dialog open>keys</dialog>')
    press('a')
    expect(done).toEqual(['field', 'page'])
  })

  it('has no meaning where its action does not hear it', () => {
    let plays = false
    post({}, [action('play', { keys: ['P', 'Space'], hears: (_, chord) => chord === 'P' || plays })])
    expect(press(' ')).toBe(false)
    plays = true
    expect(press(' ')).toBe(true)
    expect(done).toEqual(['play'])
  })
})

it('a ride that is read-only is not changed, and the reason is said', () => {
  store.getState().receiveRide(smallRide())
  post({}, [action('change', { keys: ['A'], writes: true }), action('look', { keys: ['B'] })])
  press('a')
  press('b')
  expect([done, said]).toEqual([['look'], ['This ride is read-only. Keep a copy to change it.']])
  store.getState().dismissReceived()
})

it('all that can be done now is told, the nearest first, and a place takes its actions with it', () => {
  const leave = post({}, [action('page', {}), action('refused', { can: () => 'Not now.' }), action('nothing', { can: () => false })])
  post({ reach: 'focus' }, [action('chosen', {})], (focus) => (focus === null ? on : null))
  const now = () => board.actionsAt(null).flatMap(({ id, possible }) => (possible() === true ? [id] : []))
  expect(now()).toEqual(['chosen', 'page'])
  expect(board.actionsAt(document.body).map(({ id }) => id)).toEqual(['page', 'refused', 'nothing'])
  board.actionsAt(null)[0]!.do({ timeStamp: 0 })
  expect(done).toEqual(['chosen'])
  leave()
  expect(now()).toEqual(['chosen'])
})
