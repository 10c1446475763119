import { describe, expect, it } from 'vitest'
import { parsePlaylist } from '#formats/parsePlaylist.ts'
import { readLength } from '#formats/playlist/readLength.ts'
import { told } from '#tests/support/told.ts'

const seconds = (text: string) => {
  const read = readLength(text)
  return read && (read.ok ? read.value : told(read.sentence))
}
const CROSSED = (text: string) => `The length ${text} has more than 59 seconds. Write minutes and seconds, such as 3:45.`
const NO_SONG = (text: string) => `A song lasts from 1 second to 6 hours, and ${text} doesn’t.`

describe('a length', () => {
  it.each([
    ['3:45', 225],
    ['0:01', 1],
    ['3:59', 239],
    ['03:45.5', 225.5],
    ['90:00', 5400],
    ['1:02:03', 3723],
    ['01:00:00', 3600],
    ['1:59:59', 7199],
    ['6:00:00', 21_600],
    [`3'45"`, 225],
    ['3’45″', 225],
    ['3′ 45′′', 225],
    [`3'5"`, 185],
    ['PT3M45S', 225],
    ['PT1H2M3S', 3723],
    ['PT1H', 3600],
    ['PT225S', 225],
    ['PT3M45.25S', 225.25],
    ['3m45s', 225],
    ['1h 2m 3s', 3723],
    ['1h02m03', 3723],
    ['3 min 45 s', 225],
    ['3 minutes', 180],
    ['3.5 min', 210],
    ['3,5 min', 210],
    ['1 h 2 min', 3720],
    ['1 hour 2 minutes 3 seconds', 3723],
    ['2 hrs 5 min.', 7500],
    ['225 s', 225],
    ['225.5 sec', 225.5],
    ['1 s', 1],
  ])('%s is %d seconds', (text, length) => expect(seconds(text)).toBe(length))

  it.each(['3:60', '3:99', '1:02:60', '1:60:00', `3'60"`, '1h 60m 00s', '1 h 60 min', 'PT3M60S'])('%s goes past the next unit', (text) => {
    expect(seconds(text)).toBe(CROSSED(text))
  })

  it.each(['0:00', '0.5 s', 'PT0S', '6:00:01', '21601 s', 'PT7H'])('%s is none a song has', (text) => {
    expect(seconds(text)).toBe(NO_SONG(text))
  })

  it.each(['', '3', '3:4', '3:456', 'PT', 'three minutes', '3:45 x', '225'])('“%s” is not one', (text) =>
    expect(readLength(text)).toBeUndefined(),
  )

  it('has its hour in a line too, whichever way it is written', () => {
    for (const length of ['1:02:03', 'PT1H2M3S', '1h 2m 3s', '1 h 2 min 3 s', '62:03', '3723 s']) {
      expect(parsePlaylist(`Paper Lanterns – The Odd Socks, ${length}`).songs, length).toEqual([
        { title: 'Paper Lanterns', artist: 'The Odd Socks', lengthSeconds: 3723 },
      ])
    }
  })
})
