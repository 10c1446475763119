import type { Locator, Page } from '@playwright/test'
import { nextFrame } from '#e2e/support/drag.ts'
import type { Control } from './controls.ts'

/** What a control is operated by: each has to do. */
export const HANDS = ['mouse', 'touch', 'key'] as const
export type Hand = (typeof HANDS)[number]

/**
 * Does with one hand what the control is there for.
 *
 * @returns false where there is nothing to do: it is what is chosen already
 * @throws where the hand cannot reach it, or where nobody has said how such a thing is operated
 */
export async function operate(page: Page, { role, path, name }: Control, hand: Hand): Promise<boolean> {
  const control = page.locator(path)
  if (await isChosen(control)) return false
  if (role === 'text' || role === 'combobox' || role === 'date' || role === 'time' || role === 'number')
    return write(page, control, role === 'combobox' ? 'text' : role, hand)
  if (role === 'list') return choose(page, control, hand)
  if (role === 'slider' || role === 'range') return slide(page, control, hand)
  if (role === 'stop') return hand === 'key' && scroll(page, control)
  if (['button', 'link', 'option', 'checkbox', 'radio', 'fold', 'file', 'switch', 'tab', 'menuitem'].includes(role))
    return press(page, control, role, hand)
  throw new Error(`Nobody has said how to operate “${name}”, a ${role}.`)
}

/** What is chosen among others is what a press on it would make it. Brings it into sight besides. */
const isChosen = (control: Locator): Promise<boolean> =>
  control.evaluate((element) => {
    const { top, bottom, left, right } = element.getBoundingClientRect()
    if (top < 0 || left < 0 || bottom > innerHeight || right > innerWidth) element.scrollIntoView({ block: 'center', inline: 'nearest' })
    return (
      (element instanceof HTMLInputElement && element.type === 'radio' && element.checked) ||
      element.getAttribute('aria-current') === 'page' ||
      (element.getAttribute('role') === 'option' && element.getAttribute('aria-selected') === 'true') ||
      element.matches('[data-stage-stop][aria-pressed="true"]')
    )
  })

async function press(page: Page, control: Locator, role: string, hand: Hand): Promise<true> {
  if (hand === 'key') {
    await reach(control)
    await page.keyboard.press(role === 'checkbox' || role === 'radio' || role === 'option' ? 'Space' : 'Enter')
    return true
  }
  const { x, y } = await under(control)
  if (hand === 'mouse') await page.mouse.click(x, y)
  else await page.touchscreen.tap(x, y)
  return true
}

/** The other choice of a list: its own window is the system's and cannot be pressed, its arrows can. */
async function choose(page: Page, control: Locator, hand: Hand): Promise<boolean> {
  const others = await control.evaluate((list: HTMLSelectElement) =>
    [...list.options].filter(({ disabled, value }) => !disabled && value !== list.value).map(({ value }) => value),
  )
  const [first] = others
  if (first === undefined) return false
  if (hand === 'key') {
    await reach(control)
    const isLast = await control.evaluate((list: HTMLSelectElement) => list.selectedIndex === list.options.length - 1)
    await page.keyboard.press(isLast ? 'ArrowUp' : 'ArrowDown')
  } else {
    await under(control)
    await control.selectOption(first)
  }
  return true
}

/** A place longer than what is seen of it has the focus so that keys can scroll it; where all is seen there is nothing to do. */
async function scroll(page: Page, control: Locator): Promise<boolean> {
  const along = await control.evaluate((element) =>
    element.scrollHeight > element.clientHeight + 1 ? 'Down' : element.scrollWidth > element.clientWidth + 1 ? 'Right' : null,
  )
  if (along === null) return false
  await control.evaluate((element) => element.scrollTo(0, 0))
  await reach(control)
  for (let step = 0; step < 3; step++) await page.keyboard.press(`Arrow${along}`)
  return true
}

/** Somewhere else on it than where it stands, in one pull with the mouse, one tap with a finger (upright ones are tapped where they stand), one press of an arrow. */
async function slide(page: Page, control: Locator, hand: Hand): Promise<true> {
  if (hand === 'key') {
    await reach(control)
    const value = () =>
      control.evaluate((element) => (element instanceof HTMLInputElement ? element.value : element.getAttribute('aria-valuenow')))
    const before = await value()
    await page.keyboard.press('ArrowRight')
    await nextFrame(page)
    if ((await value()) === before) await page.keyboard.press('ArrowLeft')
    return true
  }
  await under(control)
  // As much of it as is seen of what scrolls sideways.
  const { box, now, isUpright } = await control.evaluate((element) => {
    const at = (name: string) => Number(element.getAttribute(`aria-value${name}`))
    const whole = element.getBoundingClientRect()
    const around = element.closest('.stage-scroller')?.getBoundingClientRect() ?? whole
    const left = Math.max(whole.left, around.left)
    return {
      box: { x: left, y: whole.top, width: Math.min(whole.right, around.right) - left, height: whole.height },
      now: (at('now') - at('min')) / (at('max') - at('min')),
      isUpright: element.getAttribute('aria-orientation') === 'vertical',
    }
  })
  const at = (share: number) =>
    isUpright
      ? { x: box.x + box.width / 2, y: box.y + box.height / 2 + (0.5 - share) * UPRIGHT }
      : { x: box.x + box.width * share, y: box.y + box.height / 2 }
  const goal = now > 0.5 ? 0.15 : 0.85
  if (hand === 'touch') {
    const { x, y } = at(isUpright ? 0.5 : goal)
    await page.touchscreen.tap(x, y)
    return true
  }
  const start = at(0.5)
  await page.mouse.move(start.x, start.y)
  await page.mouse.down()
  for (const { x, y } of [at((0.5 + goal) / 2), at(goal)]) await page.mouse.move(x, y, { steps: 3 })
  await nextFrame(page)
  await page.mouse.up()
  return true
}

/** How far an upright slider is pulled that stands for more than its own height, in pixels from end to end. */
const UPRIGHT = 100

/** Another value, written in one of the forms such a field takes; what it refuses is taken back and the next one tried. */
async function write(page: Page, control: Locator, role: string, hand: Hand): Promise<boolean> {
  const held = await control.inputValue()
  for (const text of role === 'text' ? candidates(held, (await control.getAttribute('placeholder')) ?? '') : [native(role, held)]) {
    if (hand === 'key') await reach(control)
    else {
      const { x, y } = await under(control)
      if (hand === 'mouse') await page.mouse.click(x, y)
      else await page.touchscreen.tap(x, y)
    }
    if (role === 'text') {
      await page.keyboard.press('ControlOrMeta+A')
      await page.keyboard.type(text)
    } else await control.fill(text)
    const isLong = await control.evaluate((element) => element instanceof HTMLTextAreaElement)
    if (hand === 'key') await page.keyboard.press(isLong ? 'Tab' : 'Enter')
    else await control.evaluate((element: HTMLElement) => element.blur())
    await nextFrame(page)
    if ((await control.count()) === 0) return true
    const isRefused = (await control.getAttribute('aria-invalid')) === 'true'
    // A value that says the same in another form is no other value; a field that is empty again has passed its text on.
    if (!isRefused && (held === '' || (await control.inputValue().catch(() => '')) !== held)) return true
    await control.focus()
    await page.keyboard.press('Escape')
  }
  return true
}

const native = (role: string, held: string): string =>
  role === 'date'
    ? held === '2026-03-14'
      ? '2026-03-15'
      : '2026-03-14'
    : role === 'time'
      ? held === '18:45'
        ? '19:15'
        : '18:45'
      : `${Number(held || 0) + 1}`

/** Forms a text field may take, the likeliest first: what it holds with another number in it, its own example, common ones, words. */
function candidates(held: string, example: string): string[] {
  const number = /\d+/g
  const bumped = [1, -1, 5, -5].map((by) =>
    held.replace(number, (digits, at) => (isLastNumber(held, at) ? `${Math.max(0, Number(digits) + by)}` : digits)),
  )
  const words = held.replace(/[\d\s.,:;!?%]/g, '').length > 2 || held === '' ? [`${held} again`.trim()] : []
  const examples = example.includes(' = ') ? [example] : example.split(/ or |, /).filter((part) => /\d|[½¼¾]/.test(part))
  const common = ['2', '1', '3', '8', '4', '12', '1:00', '2:00', '18:45', '0:30', '90', '120', '150', '30', '64', '+½', 'again']
  const all = /\d/.test(held) ? [...bumped, ...examples, ...common] : [...examples, ...words, ...common]
  return [...new Set(all)].filter((text) => text !== held)
}

const isLastNumber = (text: string, at: number): boolean => !/\d/.test(text.slice(at).replace(/^\d+/, ''))

/** Gives it the focus as Tab would; a thing in a row that shares one stop is reached from there by arrows. */
async function reach(control: Locator): Promise<void> {
  await control.evaluate((element: HTMLElement) => {
    const shares = element.closest('[role="listbox"], [role="group"], fieldset') !== null || element.matches('[data-stage-stop]')
    if (element.tabIndex < 0 && !shares) throw new Error('It cannot be reached with Tab.')
    element.focus()
    if (document.activeElement !== element) throw new Error('It takes no focus.')
  })
}

/** The middle of a control, where nothing may lie over it; what a list has scrolled out of sight is scrolled back first. */
async function under(control: Locator): Promise<{ x: number; y: number }> {
  return control.evaluate((element) => {
    const target = element.closest('label') ?? element
    const look = () => {
      // What runs out of the window, or of what scrolls around it, is pressed where it can be seen.
      const seen = { left: 0, top: 0, right: innerWidth, bottom: innerHeight }
      const cut = (box: DOMRect) => {
        seen.left = Math.max(seen.left, box.left)
        seen.top = Math.max(seen.top, box.top)
        seen.right = Math.min(seen.right, box.right)
        seen.bottom = Math.min(seen.bottom, box.bottom)
      }
      cut((element.getBoundingClientRect().width > 2 ? element : target).getBoundingClientRect())
      // A dialog lies over the page, whatever it stands in.
      for (
        let outer = element.matches('dialog') ? null : element.parentElement;
        outer;
        outer = outer.matches('dialog') ? null : outer.parentElement
      )
        if (getComputedStyle(outer).overflow !== 'visible' && outer.getBoundingClientRect().width > 2) cut(outer.getBoundingClientRect())
      const x = (seen.left + seen.right) / 2
      const y = (seen.top + seen.bottom) / 2
      const hit = document.elementFromPoint(x, y)
      const answers =
        hit !== null &&
        (target.contains(hit) || element.contains(hit) || hit === element.parentElement || hit.closest('label')?.contains(element))
      return { x, y, hit, answers }
    }
    if (!look().answers) element.scrollIntoView({ block: 'center', inline: 'center' })
    const { x, y, hit, answers } = look()
    if (!answers) throw new Error(`Something lies over it: ${hit?.outerHTML.slice(0, 120)}`)
    return { x, y }
  })
}
