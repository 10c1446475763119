import { DEFAULT_BIKE, DEFAULT_LEADER } from '#plan/defaults.ts'
import type { Block, Cue, CueMoment, Foot, Move, Ride, Section, Terrain } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'

/**
 * Two classes as a careful instructor writes them, for the checks to be held against: what they say of these has to be worth
 * saying. Invented; totals are quarter turns over base, and efforts what the standard bike asks of the regular rider there.
 */

/** Twenty minutes to a camera: riders on bikes nobody knows, told what to feel, with a seat always offered. */
export function cameraClass(): Ride {
  return aClass({ id: 'camera', title: 'Lunch Break Ladder', slotMinutes: 20, briefingSeconds: 35, clearUpSeconds: 0, room: 'online' }, [
    song('Copper Morning', 172, 'right', 0, [
      seated('settle', 'flat', 8, 0, 2, ['action0:Just above nothing, easy legs.']),
      seated('find the beat', 'flat', 8, 1, 2.5, ['announce4:Quarter turn on, still light. Right foot on the one.']),
      seated('flat', 'flat', 8, 1, 2.5, ['announce4:Stay here, breathe in through the nose.']),
      {
        ...seated('shoulder rolls', 'flat', 8, 1, 2.5, [
          'announce4:Same legs. Roll the shoulders back on eights.',
          'form32:Slow and wide, chin level.',
        ]),
        move: { name: 'shoulder roll', counts: 8 },
      },
      seated('flat build', 'flat', 12, 3, 4, ['announce4:Half a turn on, feels like a flat road.']),
      seated('tempo', 'tempo', 8, 4, 5, ['announce4:Quarter on, brisk now, you can still chat.']),
      seated('ease', 'recover', 6, 2, 3.5, ['announce4:Half a turn off, breathe.']),
      seated('tempo', 'tempo', 10, 4, 5, ['announce4:Half a turn back on. Brisk again.']),
    ]),
    song('Stairwell Sunday', 132, 'right', 2, [
      seated('set-up', 'hill', 4, 7, 5.5, [
        'preview24:A climb next. One hard effort, twenty-nine seconds.',
        'announce4:Three quarters on, legs slow to the beat.',
      ]),
      seated('seated climb', 'hill', 6, 8, 6, ['announce4:Quarter turn on, heavy but smooth.']),
      seated('tall climb', 'hill', 4, 8, 6, ['announce4:Same hill, sit tall.']),
      standing('standing climb', 'hill', 8, 9, 7, [
        'announce8:Quarter on, then up. Or stay seated.',
        'countIn0/4:',
        'form24:Weight in the legs, hands light.',
      ]),
      seated('seated climb', 'hill', 8, 9, 7, ['announce4:Sit, keep it on, it stays heavy.']),
      standing('strong climb', 'hill', 8, 10, 8, [
        'announce8:Quarter on, thick now, and rise. Twenty-nine seconds.',
        'countIn0/4:',
        'form24:Option: seated, same load.',
      ]),
      seated('recover', 'recover', 10, 5, 4, ['announce8:Sit. One and a quarter off, easy road. Breathe.']),
      seated('seated climb', 'hill', 8, 8, 6, ['announce4:Three quarters on. Back to heavy but smooth.']),
      standing('standing climb', 'hill', 8, 9, 7, ['announce8:Quarter on and rise. The saddle is always there.', 'countIn0/4:']),
    ]),
    song('Paper Regatta', 160, 'left', 2, [
      {
        ...seated('recover and drink', 'recover', 10, 2, 3, ['announce8:Sit. One and three quarters off, light. Drink. Left foot leads.']),
        water: true,
      },
      seated('tempo', 'tempo', 4, 5, 5.5, ['announce4:Three quarters on, a firm road.']),
      standing('standing run', 'run', 8, 6, 7, [
        'announce8:Quarter on, springy, and up. Seated works too.',
        'countIn0/4:',
        'form24:Run tall, hips over the pedals.',
      ]),
      {
        ...standing('jumps on 8', 'jumps', 8, 6, 7, [
          'announce6:Jumps. Eight up, eight down.',
          'countIn0/4:',
          'form32:Land soft, hands light.',
        ]),
        move: { name: 'jump', counts: 8 },
      },
      seated('seated hold', 'hold', 8, 5, 5.5, ['announce8:Stay down, quarter turn off, firm road.']),
      standing('standing run', 'run', 6, 6, 7, ['announce8:Quarter on and up, or ride it in the saddle.', 'countIn0/4:']),
      {
        ...standing('side leans', 'run', 8, 6, 7, ['announce2:Leans. Left four, right four.', 'form32:Shoulders move, hips stay.']),
        move: LEANS,
      },
      seated('ease', 'flat', 12, 4, 4.5, ['announce8:Sit. Half a turn off, easy breath.']),
      {
        ...standing('jumps on 4', 'jumps', 4, 6, 7, [
          'announce8:Half a turn on. Jumps on fours, right foot now.',
          'countIn0/4:',
          'form20:Option: stay seated.',
        ]),
        move: { name: 'jump', counts: 4 },
        lead: 'right',
      },
      seated('ease', 'recover', 8, 2, 3, ['announce8:Down. One turn off, light again.']),
    ]),
    song('Static Orchard', 176, 'right', 2, [
      seated('set-up', 'flat', 8, 3, 4, [
        'preview24:Three pushes next, twenty-two seconds each.',
        'announce4:Quarter turn on, flat road. Right foot leads.',
      ]),
      seated('push 1', 'push', 8, 7, 8, ['announce4:One turn on, strong and quick. First of three.', 'countIn0/4:']),
      seated('recover', 'recover', 12, 2, 3, ['announce4:One and a quarter off, easy.', 'form48:Let the breath come down.']),
      seated('push 2', 'push', 8, 7, 8, ['announce4:One and a quarter on. Twenty-two seconds, strong.', 'countIn0/4:']),
      seated('recover', 'recover', 12, 2, 3, ['announce4:One and a quarter off, easy. One more.']),
      seated('push 3', 'push', 8, 8, 9, ['announce4:One and a half on, the most today. Last push.', 'countIn0/4:']),
      {
        ...seated('recover and drink', 'recover', 16, 2, 3, [
          'announce4:One and a half off, light. Drink.',
          'form64:Shake the hands out, one at a time.',
        ]),
        water: true,
      },
      seated('flat', 'flat', 8, 3, 4, ['announce4:Quarter turn on. Chatty.']),
    ]),
    song('Long Way Over', 136, 'left', 2, [
      seated('set-up', 'hill', 6, 7, 5.5, ['announce4:One turn on, a real hill. Left foot leads.']),
      seated('seated climb', 'hill', 10, 8, 6.5, ['announce4:Quarter turn on, heavy but smooth.', 'form40:Heels low, long spine.']),
      standing('standing climb', 'hill', 8, 9, 7.5, ['announce8:Quarter on, then up, or stay in the saddle.', 'countIn0/4:']),
      seated('ease', 'recover', 8, 5, 4.5, [
        'announce8:Sit. One turn off, easy road.',
        'form24:One climb left. Twenty-eight seconds, the hardest.',
      ]),
      standing('finish climb', 'hill', 8, 10, 8.5, [
        'announce8:One and a quarter on. Up, or seated and strong. Twenty-eight seconds.',
        'countIn0/4:',
      ]),
      seated('roll off', 'recover', 4, 4, 4, ['announce8:Sit. One and a half off, easy.']),
    ]),
    song('Slow Lanterns', 150, 'right', 2, [
      seated('flush', 'flush', 12, 2, 3, ['announce4:Half a turn off, light. Let it roll.', 'form48:Slow the breath down with the legs.']),
      { ...seated('flush', 'flush', 8, 1, 2.5, ['announce4:Quarter off, almost nothing. Sip some water.']) },
      seated('slow down', 'flush', 4, 0, 2, ['announce4:Quarter off. Slow the legs, then stop the wheel.']),
      {
        ...still('stretch right', 8, ['announce4:Wheel stopped. Right hamstring, long back.']),
        move: { name: 'hamstring stretch', counts: 64, side: 'right' },
      },
      {
        ...still('stretch left', 8, ['announce4:Now the left. Same length.', 'form32:Thank you. See you Thursday.']),
        move: { name: 'hamstring stretch', counts: 64, side: 'left' },
      },
    ]),
  ])
}

/** Forty-five minutes in a studio, for a mixed class, with a welcome before the first song. */
export function studioClass(): Ride {
  return aClass({ id: 'studio', title: 'Two Ridges', slotMinutes: 45, briefingSeconds: 90, clearUpSeconds: 60, room: 'studio' }, [
    song('Copper Morning', 168, 'right', 0, [
      seated('settle', 'flat', 32, 0, 2, ['action0:Light legs, right foot on the one.']),
      {
        ...seated('shoulder rolls', 'flat', 24, 1, 2.5, [
          'announce4:Quarter turn on. Shoulders roll back on eights.',
          'form96:Slow and wide, chin level.',
        ]),
        move: { name: 'shoulder roll', counts: 8 },
      },
      seated('flat build', 'flat', 24, 3, 4, ['announce4:Half a turn on. Feel the road.']),
    ]),
    song('Paper Regatta', 160, 'left', 2, [
      seated('tempo', 'tempo', 24, 4, 4.5, ['announce4:Quarter turn on. Left foot leads.']),
      seated('ease', 'flat', 12, 2, 3, ['announce4:Half a turn off. Drink.']),
      seated('tempo', 'tempo', 24, 5, 5.5, ['announce4:Three quarters on, brisk.']),
      seated('ease', 'flat', 12, 2, 3, ['announce4:Three quarters off.']),
    ]),
    song('Stairwell Sunday', 132, 'right', 2, [
      seated('seated climb', 'hill', 24, 8, 6, [
        'preview24:First ridge: one strong climb, forty-four seconds.',
        'announce4:One and a half on, legs slow to the beat.',
      ]),
      standing('standing climb', 'hill', 16, 9, 7, [
        'announce8:Quarter on, then up.',
        'countIn0/4:',
        'form64:Weight in the legs, hands light.',
      ]),
      seated('seated climb', 'hill', 8, 9, 7, ['announce4:Sit, keep it on.']),
      standing('strong climb', 'hill', 12, 10, 8, ['announce8:Quarter on and rise. Forty-four seconds, strong.', 'countIn0/4:']),
      { ...seated('recover', 'recover', 12, 4, 4, ['announce8:Sit. One and a half off. Breathe.']) },
    ]),
    song('Tin Meadow', 164, 'left', 2, [
      { ...seated('recover and drink', 'recover', 16, 2, 3, ['announce4:Half a turn off. Left foot leads. Drink.']), water: true },
      standing('standing run', 'run', 16, 6, 6.5, [
        'announce8:One turn on and up, light.',
        'countIn0/4:',
        'form64:Run tall, hips over the pedals.',
      ]),
      {
        ...standing('jumps on 8', 'jumps', 8, 6, 6.5, ['announce6:Jumps. Eight up, eight down.', 'countIn0/4:', 'form32:Land soft.']),
        move: { name: 'jump', counts: 8 },
      },
      {
        ...standing('jumps on 8', 'jumps', 8, 6, 6.5, ['announce4:Same again, right foot now.']),
        move: { name: 'jump', counts: 8 },
        lead: 'right',
      },
      seated('seated hold', 'hold', 16, 4, 4.5, ['announce8:Stay down, half a turn off.']),
      standing('standing run', 'run', 16, 6, 6.5, ['announce8:Half a turn on and up.', 'countIn0/4:']),
    ]),
    song('Static Orchard', 176, 'right', 2, [
      seated('set-up', 'flat', 20, 2, 3.5, [
        'announce8:Sit. One turn off. Right foot leads.',
        'form80:Three pushes, twenty-two seconds each.',
      ]),
      seated('push 1', 'push', 8, 7, 8, ['announce4:One and a quarter on, then go. First of three.', 'countIn0/4:']),
      seated('recover', 'recover', 16, 2, 3, ['announce4:One and a quarter off. Easy.']),
      seated('push 2', 'push', 8, 7, 8, ['announce4:One and a quarter on. Twenty-two seconds, go.', 'countIn0/4:']),
      seated('recover', 'recover', 16, 2, 3, ['announce4:One and a quarter off. One more.']),
      seated('push 3', 'push', 8, 8, 9, ['announce4:One and a half on. Last push, go.', 'countIn0/4:']),
      { ...seated('recover and drink', 'recover', 20, 2, 3, ['announce4:One and a half off. Drink.']), water: true },
    ]),
    song('Second Ridge', 128, 'left', 2, [
      seated('seated climb', 'hill', 32, 8, 6, [
        'announce4:One and a half on. Long hill, left foot leads.',
        'story128:This is the long one. Pick a wheel in front of you and stay on it.',
      ]),
      standing('standing climb', 'hill', 16, 9, 7, ['announce8:Quarter on, then up.', 'countIn0/4:']),
      seated('seated climb', 'hill', 16, 9, 6.5, ['announce4:Sit, keep it on.']),
      seated('ease', 'recover', 12, 5, 4.5, ['announce4:One turn off. Shake the hands out.']),
    ]),
    song('Brick Lane Run', 158, 'right', 2, [
      standing('standing run', 'run', 24, 6, 6.5, ['announce8:Quarter on and up. Right foot leads.', 'countIn0/4:']),
      {
        ...standing('side leans', 'run', 16, 6, 6.5, ['announce2:Leans. Left four, right four.', 'form64:Shoulders move, hips stay.']),
        move: LEANS,
      },
      { ...seated('recover and drink', 'recover', 16, 2, 3, ['announce8:Sit. One turn off. Drink.']), water: true },
      standing('standing run', 'run', 24, 6, 6.5, ['announce8:One turn on and up.', 'countIn0/4:']),
    ]),
    song('Long Way Over', 136, 'left', 2, [
      seated('seated climb', 'hill', 28, 8, 6.5, [
        'announce8:Sit. Half a turn on, last hill. Left foot leads.',
        'form112:One climb left, standing.',
      ]),
      standing('finish climb', 'hill', 12, 10, 8.5, ['announce8:Half a turn on and rise. Forty-two seconds home.', 'countIn0/4:']),
      seated('recover', 'recover', 16, 4, 4, ['announce8:Sit. One and a half off. Breathe.']),
      seated('rolling road', 'flat', 16, 4, 4, ['announce4:Stay here, let it roll.']),
    ]),
    song('Harbor Lights', 152, 'right', 2, [
      seated('rolling road', 'tempo', 42, 5, 5, [
        'announce4:Quarter turn on. Right foot leads.',
        'story192:Nothing hard is left. This one is for the legs and the view.',
      ]),
      seated('ease', 'flat', 24, 3, 4, ['announce4:Half a turn off.']),
    ]),
    song('Slow Lanterns', 150, 'right', 2, [
      seated('flush', 'flush', 64, 1, 2.5, ['announce4:Half a turn off, let it roll. Drink.']),
      seated('slow down', 'flush', 12, 0, 2, ['announce4:Quarter off. Slow the legs, then stop the wheel.']),
      {
        ...still('stretch right', 14, ['announce4:Wheel stopped. Right hamstring, long back.']),
        move: { name: 'hamstring stretch', counts: 112, side: 'right' },
      },
      {
        ...still('stretch left', 14, ['announce4:Now the left.', 'form56:Thank you, that was good work.']),
        move: { name: 'hamstring stretch', counts: 112, side: 'left' },
      },
    ]),
  ])
}

// biome-ignore lint/suspicious/noThenProperty: a field of the document's data; nothing awaits it.
const LEANS: Move = { name: 'side lean', counts: 4, side: 'left', then: 'alternate' }

/** A block before its song gives it an id. */
type Drafted = Omit<Block, 'id'>

const seated = (label: string, terrain: Terrain, eights: number, total: number, effort: number, cues: string[]): Drafted => ({
  label,
  terrain,
  length: { counts: 8 * eights },
  posture: 'seated',
  hands: 'centre',
  resistance: { kind: 'total', from: total, to: total },
  effort: { from: effort, to: effort },
  cues: cues.map(aCue),
})

const standing = (...block: Parameters<typeof seated>): Drafted => ({ ...seated(...block), posture: 'standing', hands: 'wide' })

const still = (label: string, eights: number, cues: string[]): Drafted => ({
  ...seated(label, 'stretch', eights, 0, 1, cues),
  cadence: 'legsStill',
})

/** "announce8:words", the words ending eight counts before the change; "countIn0/4:", counted in four. Ids are given by the block. */
function aCue(written: string): Cue {
  const [, moment, lead, count, text] = /^([a-zA-Z]+)(\d+)(?:\/(\d))?:(.*)$/.exec(written)!
  return {
    id: '',
    moment: moment as CueMoment,
    lead: { counts: Number(lead) },
    text: text!,
    ...(count && { count: Number(count) as 4 | 8 }),
  }
}

function song(title: string, bpm: number, lead: Foot, leadInSeconds: number, drafted: Drafted[]): Section {
  const id = title.toLowerCase().replaceAll(' ', '-')
  const blocks = drafted.map((block, i) => ({
    ...block,
    id: `${id}-${i + 1}`,
    cues: block.cues.map((cue, k) => ({ ...cue, id: `${id}-${i + 1}-${k + 1}` })),
  }))
  const counts = blocks.reduce((sum, { length }) => sum + ('counts' in length ? length.counts : 0), 0)
  return {
    id,
    song: { id: `${id}-song`, title, grid: gridOfTempo(bpm), lengthSeconds: Math.ceil((counts * 60) / bpm) + 6, strikesPerBeat: 1 },
    outCount: counts,
    leadInSeconds,
    lead,
    blocks,
  }
}

const aClass = (
  about: Pick<Ride, 'id' | 'title' | 'slotMinutes' | 'briefingSeconds' | 'clearUpSeconds' | 'room'>,
  sections: Section[],
): Ride => ({
  schema: 2,
  level: 'mixed',
  datum: 'base',
  bike: DEFAULT_BIKE,
  leaders: [{ ...DEFAULT_LEADER, name: 'Wren Calloway' }],
  ...about,
  sections,
})
