import { words } from '#words/words.ts'

/**
 * The usual cautions of the trade: common practice, except the newcomers' line
 * (Brogan and others 2017, Am J Med 130:484–487: muscle breakdown after a first class).
 */
export function cautions(): readonly (readonly [name: string, text: string])[] {
  const { start } = words
  return [
    [start.clearance, start.clearanceText],
    [start.stop, start.stopText],
    [start.bikes, start.bikesText],
    [start.newcomers, start.newcomersText],
    [start.room, start.roomText],
    [start.estimates, start.estimatesText],
  ]
}
