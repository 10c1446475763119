import { describe, expect, it } from 'vitest'
import type { Meaning } from '#engine/cues/claims/claim.ts'
import { claimsIn } from '#engine/cues/claims/claimsOf.ts'

/** The first meaning of every claim in a text, with its words. */
const claims = (text: string, unit = 'turn') =>
  claimsIn(text, unit).map(({ from, to, meanings: [first] }) => ({ ...first, words: text.slice(from, to) }))
const meanings = (text: string, unit = 'turn') => claimsIn(text, unit).flatMap((claim) => claim.meanings.map(({ about }) => about))
const change = (value: number, words: string) => ({ about: 'change', low: value, high: value, words })

describe('the resistance a cue speaks of', () => {
  it.each([
    ['Half turn on. Feel the road.', 0.5, 'Half turn on'],
    ['One and a quarter on, then go.', 1.25, 'One and a quarter on'],
    ['Half a turn off', -0.5, 'Half a turn off'],
    ['¾ off, sip.', -0.75, '¾ off'],
    ['1½ turns on', 1.5, '1½ turns on'],
    ['A quarter of a turn on', 0.25, 'A quarter of a turn on'],
    ['A turn and a half on.', 1.5, 'A turn and a half on'],
    ['Two turns and a quarter off.', -2.25, 'Two turns and a quarter off'],
    ['1 1/4 on.', 1.25, '1 1/4 on'],
    ['A turn on.', 1, 'A turn on'],
    ['Add a turn and a quarter.', 1.25, 'Add a turn and a quarter'],
    ['Add a full turn.', 1, 'Add a full turn'],
    ['Take a whole turn off.', -1, 'Take a whole turn off'],
    ['Add one and a half.', 1.5, 'Add one and a half'],
    ['Take half a turn off and sit.', -0.5, 'Take half a turn off'],
    ['Take one off', -1, 'Take one off'],
    ['Add a quarter turn on four', 0.25, 'Add a quarter turn on'],
    ['Turn it up by a half.', 0.5, 'Turn it up by a half'],
    ['Drop it by one and a quarter.', -1.25, 'Drop it by one and a quarter'],
    ['Let go of a turn and a half.', -1.5, 'Let go of a turn and a half'],
    ['Off with two turns.', -2, 'Off with two turns'],
    ['+¾ on the knob.', 0.75, '¾'],
    ['Minus one and a half.', -1.5, 'Minus one and a half'],
    ['Give me three-quarters of a turn.', 0.75, 'Give me three-quarters of a turn'],
    ['One more half turn.', 0.5, 'One more half turn'],
  ])('reads %j as %d', (text, value, words) => {
    expect(claims(text)).toEqual([expect.objectContaining(change(value, words))])
  })

  it.each([
    ['Up to two and a half', 2.5, 2.5],
    ['Back to five to six turns', 5, 6],
    ['Be at 2½.', 2.5, 2.5],
    ['A total of two and a half.', 2.5, 2.5],
    ['Two turns total.', 2, 2],
    ['Three quarters over base.', 0.75, 0.75],
    ['Back to base plus three quarters.', 0.75, 0.75],
    ['Up to 3–4 turns.', 3, 4],
    ['Somewhere between three and four turns.', 3, 4],
  ])('reads %j as a total', (text, low, high) => {
    expect(claims(text)).toEqual([expect.objectContaining({ about: 'total', low, high })])
  })

  it('knows a total that is open upwards, and one that counts from base', () => {
    expect(claims('Up to seven turns or more.')).toEqual([expect.objectContaining({ about: 'total', low: 7, orMore: true })])
    expect(claims('Half a turn over base.')).toEqual([expect.objectContaining({ about: 'total', low: 0.5, overBase: true })])
  })

  it('takes an amount by itself for a change or a total', () => {
    expect(meanings('Two turns, stay seated.')).toEqual(['change', 'total'])
    expect(meanings('Three to four turns, your choice.')).toEqual(['total', 'change'])
  })

  it('knows the bike’s own unit, and whole levels without one', () => {
    expect(claims('Two levels on', 'level')).toEqual([expect.objectContaining(change(2, 'Two levels on'))])
    expect(claims('Two cogs on', 'cog')).toEqual([expect.objectContaining(change(2, 'Two cogs on'))])
    expect(claims('Level forty-five.', 'level')).toEqual([expect.objectContaining({ about: 'total', low: 45 })])
    expect(claims('Up to fifty.', 'level')).toEqual([expect.objectContaining({ about: 'total', low: 50 })])
    expect(claims('Twenty on.', 'level')).toEqual([expect.objectContaining(change(20, 'Twenty on'))])
    expect(claims('Twenty on.')).toEqual([expect.objectContaining({ about: 'length', unit: 'seconds', low: 20 })])
  })

  it.each(['Sit. Same gear.', 'Sit, keep it on.', 'Same resistance.'])('reads that nothing is turned in %j', (text) => {
    expect(claims(text)).toEqual([expect.objectContaining({ about: 'stay' })])
  })
})

describe('the time and the music a cue speaks of', () => {
  const seconds = (low: number, more: object = {}) => expect.objectContaining({ about: 'length', unit: 'seconds', low, ...more })

  it.each([
    ['Twenty seconds.', seconds(20)],
    ['Hold one minute.', seconds(60)],
    ['Half a minute', seconds(30)],
    ['One and a half minutes', seconds(90)],
    ['A minute and a half.', seconds(90)],
    ['Three quarters of a minute.', seconds(45)],
    ['A minute fifteen.', seconds(75)],
    ['Two minutes and ten seconds.', seconds(130)],
    ['20s all yours.', seconds(20)],
    ['90 s', seconds(90)],
    ['1:30 of climbing.', seconds(90)],
    ['A thirty-second push.', seconds(30, { on: { quality: 'hard', kind: 'push' } })],
    ['A couple of minutes.', seconds(120, { bound: 'near' })],
    ['Nearly a minute easy.', seconds(60, { bound: 'near', on: { quality: 'easy' } })],
    ['All under a minute.', seconds(60, { bound: 'under' })],
    ['Over 40 seconds', seconds(40, { bound: 'over' })],
    ['Under two minutes and a quarter', seconds(135, { bound: 'under' })],
    ['Thirty seconds or so.', seconds(30, { bound: 'near' })],
    ['Twenty to thirty seconds.', seconds(20, { high: 30 })],
    ['For twenty.', seconds(20)],
    ['Thirty hard.', seconds(30, { on: { quality: 'hard' } })],
    ['Four eights.', expect.objectContaining({ about: 'length', unit: 'counts', low: 32 })],
    ['For thirty-two counts, go.', expect.objectContaining({ about: 'length', unit: 'counts', low: 32 })],
    ['Two phrases of jumps.', expect.objectContaining({ about: 'length', unit: 'counts', low: 64, on: { kind: 'jump' } })],
    ['Eight counts of eight.', expect.objectContaining({ about: 'length', unit: 'counts', low: 64 })],
    ['Up for sixty-four.', expect.objectContaining({ about: 'length', unit: 'counts', low: 64 })],
  ])('reads how long something lasts in %j', (text, expected) => {
    expect(claims(text)).toEqual([expected])
  })

  it.each([
    ['Forty seconds to go.', 'seconds', 40],
    ['Half a minute left.', 'seconds', 30],
    ['Last thirty.', 'seconds', 30],
    ['Last ten seconds.', 'seconds', 10],
    ['Up, thirty to the top.', 'seconds', 30],
    ['Thirty more seconds.', 'seconds', 30],
    ['A minute five to go.', 'seconds', 65],
    ['Two minutes fifty-nine to go.', 'seconds', 179],
    ['Last eight.', 'counts', 8],
    ['Last phrase.', 'counts', 32],
    ['Two more phrases.', 'counts', 64],
    ['Another eight.', 'counts', 8],
    ['Four eights to go.', 'counts', 32],
    ['Last sixteen counts.', 'counts', 16],
  ])('reads what is left in %j', (text, unit, value) => {
    expect(claims(text)).toEqual([expect.objectContaining({ about: 'left', unit, value })])
  })

  it('knows what something is left of', () => {
    expect(claims('Ten minutes left in class.')).toEqual([expect.objectContaining({ about: 'left', of: 'class' })])
    expect(claims('One minute left of this song.')).toEqual([expect.objectContaining({ about: 'left', of: 'song' })])
    expect(claims('Half way up the climb.')).toEqual([expect.objectContaining({ about: 'share', value: 0.5, of: 'block' })])
  })

  it.each([
    ['Ninety seconds down.', 'gone', 90],
    ['Twelve minutes in.', 'gone', 720],
    ['In twenty seconds we push.', 'until', 20],
    ['Ten seconds until the drop.', 'until', 10],
    ['Halfway there.', 'share', 0.5],
    ['Two thirds done.', 'share', 2 / 3],
    ['Half of it is behind you.', 'share', 0.5],
    ['Seventy percent done.', 'share', 0.7],
  ])('reads where it is in %j', (text, about, value) => {
    expect(claims(text)).toEqual([expect.objectContaining({ about, value })])
  })

  it.each([
    ['It is 18:08, we climb.', 18 * 60 + 8, 'now'],
    ['It’s six thirty.', 390, 'now'],
    ['We finish at 7:15.', 435, 'end'],
    ['Done at five to seven.', 415, 'end'],
    ['We’re done by seven o’clock.', 420, 'end'],
    ['It’s quarter past six.', 375, 'now'],
  ])('reads the clock in %j', (text, minute, at) => {
    expect(claims(text)).toEqual([expect.objectContaining({ about: 'clock', minute, at })])
  })

  it('gives a time after “three pushes” to the pushes', () => {
    expect(claims('Three pushes, twenty seconds.')[1]).toMatchObject({ about: 'length', on: { kind: 'push', ahead: true } })
    expect(claims('Pushes next, a minute each.')[0]).toMatchObject({ about: 'length', on: { kind: 'push', ahead: true } })
  })
})

describe('what a cue counts', () => {
  it.each<[string, Partial<Meaning> & { about: string }]>([
    ['Three pushes next.', { about: 'ahead', value: 3, kind: 'push' }],
    ['Three small hills.', { about: 'ahead', value: 3, kind: 'hill' }],
    ['Four surges, then home.', { about: 'ahead', value: 4, kind: 'surge' }],
    ['Three of these.', { about: 'ahead', value: 3 }],
    ['Surge two.', { about: 'place', value: 2, kind: 'surge' }],
    ['Hill 1', { about: 'place', value: 1, kind: 'hill' }],
    ['Step two again.', { about: 'place', value: 2, kind: 'step' }],
    ['Second push.', { about: 'place', value: 2, kind: 'push' }],
    ['First of three.', { about: 'place', value: 1, of: 3 }],
    ['2 of 3.', { about: 'place', value: 2, of: 3 }],
    ['Number two.', { about: 'place', value: 2 }],
    ['Last one. Go.', { about: 'last', back: 0 }],
    ['Last push!', { about: 'last', back: 0, kind: 'push' }],
    ['Third and last.', { about: 'last', back: 0, value: 3 }],
    ['Next to last.', { about: 'last', back: 1 }],
    ['Second to last push.', { about: 'last', back: 1, kind: 'push' }],
    ['One climb left.', { about: 'more', value: 1, kind: 'climb' }],
    ['Two to go', { about: 'more', value: 2 }],
    ['Two pushes to go', { about: 'more', value: 2, kind: 'push' }],
    ['Two more after this one.', { about: 'more', value: 2, after: true }],
    ['None after this.', { about: 'more', value: 0, after: true }],
    ['One down.', { about: 'done', value: 1 }],
    ['That was one of three.', { about: 'done', value: 1, of: 3 }],
    ['Three rounds.', { about: 'rounds', value: 3 }],
    ['Jumps next, twice.', { about: 'rounds', value: 2 }],
    ['Two rounds to go.', { about: 'more', value: 2, kind: 'round' }],
    ['Hips home, on fours.', { about: 'moveCounts', value: 4 }],
    ['Eight up, eight down.', { about: 'moveCounts', value: 8 }],
    ['Up sixteen, down sixteen.', { about: 'moveCounts', value: 16 }],
    ['Up for four and down for four.', { about: 'moveCounts', value: 4 }],
    ['Jumps on 8s.', { about: 'moveCounts', value: 8 }],
    ['On a four count.', { about: 'moveCounts', value: 4 }],
    ['Four of each.', { about: 'each', value: 4 }],
    ['Two turns in total.', { about: 'total', low: 2 }],
    ['Half a turn in all, then sit.', { about: 'total', low: 0.5 }],
    ['Two bars up, two bars down.', { about: 'moveCounts', value: 2, unit: 'bars' }],
    ['Four seconds standing, four seated.', { about: 'moveCounts', value: 4, unit: 'seconds' }],
    ['Set of six.', { about: 'rounds', value: 6 }],
    ['That was the last push.', { about: 'last', back: 0, kind: 'push', past: true }],
    ['A seven out of ten.', { about: 'effort', low: 7, high: 7 }],
    ['7/10.', { about: 'effort', low: 7, high: 7 }],
    ['Six to seven out of ten.', { about: 'effort', low: 6, high: 7 }],
    ['Effort eight.', { about: 'effort', low: 8, high: 8 }],
    ['Ninety rpm.', { about: 'cadence', low: 90, high: 90 }],
    ['Legs at 70.', { about: 'cadence', low: 70, high: 70 }],
    ['Between 85 and 95 rpm.', { about: 'cadence', low: 85, high: 95 }],
    ['Legs to one ten.', { about: 'cadence', low: 110, high: 110 }],
    ['Pick it up to ninety.', { about: 'cadence', low: 90, high: 90 }],
    ['128 bpm.', { about: 'tempo', value: 128 }],
  ])('reads %j', (text, expected) => {
    expect(claims(text)).toEqual([expect.objectContaining(expected)])
  })

  it('holds several readings open where the words do', () => {
    expect(meanings('Sixteen leans.')).toEqual(['ahead', 'repeats'])
    expect(meanings('Two more.')).toEqual(['more', 'left', 'left'])
    expect(meanings('Forty to go.')).toEqual(['left', 'more', 'length'])
  })
})

describe('what claims nothing', () => {
  it.each([
    'Up in four.',
    'Left four, right two.',
    'Every thirty seconds a breath.',
    'A step at a time.',
    'It is your turn on the floor.',
    'Right foot on the one.',
    'Left foot leads this one.',
    'Option: half a turn off, last one.',
    'Three, two, one, go.',
    '5,4,3,2,1.',
    'Five, six, seven, eight.',
    'Two left feet.',
    'The last one in gets the fan.',
    'Two hands on the bar, ten fingers light.',
    '',
  ])('leaves open what the words leave open: %j', (text) => {
    expect(claims(text).filter(({ about }) => !['ahead', 'place', 'more'].includes(about))).toEqual([])
  })

  it.each([
    ['asked', 'Thirty more seconds?'],
    ['denied', 'Don’t add a turn.'],
    ['a condition', 'If it is too much, take half a turn off.'],
    ['a condition told last', 'Take half a turn off if you need to.'],
    ['a choice', 'Half a turn or a full turn on.'],
    ['for some', 'Newcomers take a quarter turn off.'],
    ['for the strong', 'Strong riders, add a quarter.'],
    ['of another day', 'Last week we did three minutes.'],
    ['of Friday', 'On Friday we do three minutes.'],
    ['long ago', 'Ten seconds ago this was easy.'],
    ['in the past', 'You added half a turn.'],
  ])('leaves alone what is %s', (_, text) => {
    expect(claims(text)).toEqual([])
  })

  it('reads on where a limit only sounds like a denial, and where riders “have it”', () => {
    expect(claims('No more than two minutes.')).toEqual([expect.objectContaining({ about: 'length', low: 120, bound: 'under' })])
    expect(claims('Half a turn on if you have it.')).toEqual([expect.objectContaining(change(0.5, 'Half a turn on'))])
    expect(claims('Two more turns? No: two turns more.')).toEqual([expect.objectContaining(change(2, 'two turns more'))])
    expect(claims('Don’t stop, thirty seconds to go.')).toEqual([expect.objectContaining({ about: 'left', value: 30 })])
  })
})
