/**
 * `npm run accompaniments FOLDER [STYLES]`: a corpus of songs that nothing was fitted to, for `npm run test:corpus FOLDER`.
 * Musical MIDI Accompaniment's library has a hundred styles written by people, from bossa nova to zydeco; each is given two
 * songs of a minute with a tempo, chords, parts, fills and, in half of them, a melody drawn from a seed, which FluidSynth
 * plays on one of two sound fonts. Tempo, beats and bars are exact. The same machine makes the same songs.
 *
 * Debian: apt-get install mma fluidsynth sox timgm6mb-soundfont fluid-soundfont-gm. Half an hour on two cores, 1.1 GB.
 */
import { spawnSync } from 'node:child_process'
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import process from 'node:process'

const STYLES = '/usr/share/mma/lib/stdlib'
const FONTS = ['/usr/share/sounds/sf2/TimGM6mb.sf2', '/usr/share/sounds/sf2/FluidR3_GM.sf2']
const SONGS_A_STYLE = 2
const SECONDS = 62
/** Not music, made by machines as the composed songs are, in five, or counted in halves of their bars by their own account. */
const LEFT_OUT =
  /metronome|none|trance|^(?:broadway|bwmarch|dixie|dixiemarch|fastswing|march|merengue|arpeggio68|ballad128|blues128|jazz-54|rock-128)$/
const SLOW = /ballad|slow|lullaby|hymn/
const QUICK = /swing|bebop|jive|quick|polka|ragtime|twist|samba|ska/
const CHORDS = [
  'C G Am F',
  'C F G C',
  'Am F C G',
  'C Am Dm G7',
  'Dm7 G7 CM7 CM7',
  'Em Am Dm G',
  'C C F F',
  'F G Em Am',
  'C7 C7 F7 C7',
  'Am Am E7 E7',
  'Gm7 C7 FM7 BbM7',
  'C E7 Am F',
].map((bars) => bars.split(' '))
const VOICES = ['Piano1', 'Flute', 'AltoSax', 'Violin', 'NylonGuitar', 'Trumpet', 'SquareWave']
const SCALE = ['c', 'd', 'e', 'g', 'a', 'c+', 'd+', 'e+']
/** What a melody's note is called by its length in eighths. */
const NOTES = ['', '8', '4', '4.', '2']

const [folder = '', most = '1000'] = process.argv.slice(2)
if (!folder) {
  console.error('Say where to put the songs: npm run accompaniments FOLDER')
  process.exit(1)
}
const work = join(folder, 'work')
for (const path of [work, join(folder, 'wav')]) mkdirSync(path, { recursive: true })
const truth = []
for (const [place, style] of stylesOf().slice(0, Number(most)).entries())
  for (let n = 0; n < SONGS_A_STYLE; n++) truth.push(makeSong(style, n, seeded(7000 + place * 31 + n)))
writeFileSync(join(folder, 'truth.json'), JSON.stringify(truth))
rmSync(work, { recursive: true })
console.log(`${truth.length} songs in ${folder}`)

function stylesOf() {
  const names = readdirSync(STYLES).flatMap((file) => (file.endsWith('.mma') ? [file.slice(0, -4)] : []))
  return names
    .filter((name) => !LEFT_OUT.test(name))
    .sort()
    .map((name) => {
      const text = readFileSync(join(STYLES, `${name}.mma`), 'latin1')
      const grooves = [...text.matchAll(/^DefGroove\s+(\S+)/gm)].map((match) => String(match[1]))
      const such = (/** @type {RegExp} */ like) => grooves.filter((groove) => like.test(groove))
      const time = Number(/^\s*Time (\d+)/m.exec(text)?.[1])
      const plain = grooves.filter((groove) => !/Intro|End|Fill|Metronome|Break|Test|Walk/i.test(groove))
      return { name, time, plain, fills: such(/Fill\d*$/), intros: such(/Intro\d*$/) }
    })
    .filter(({ time, plain }) => [3, 4, 6].includes(time) && plain.length > 0)
}

/** @typedef {ReturnType<typeof stylesOf>[number]} Style */

function makeSong(/** @type {Style} */ style, /** @type {number} */ n, /** @type {() => number} */ random) {
  const { name, time } = style
  const id = `${name}_${n}`
  // A bar of six is counted in two; the accompaniment counts all six, in whole beats a minute.
  const beatsPerBar = time === 6 ? 2 : time
  const tempo = Math.round(tempoOf(style, random) * (time / beatsPerBar))
  const bpm = tempo / (time / beatsPerBar)
  const source = join(work, `${id}.mma`)
  const midi = join(work, `${id}.mid`)
  const raw = join(work, `${id}.wav`)
  const wav = join(folder, 'wav', `${id}.wav`)
  writeFileSync(source, `${scoreOf(style, tempo, random).join('\n')}\n`)
  run('mma', '-f', midi, source)
  run('fluidsynth', '-ni', '-q', '-g', '0.6', '-r', '44100', '-O', 's16', '-T', 'wav', '-F', raw, pick(FONTS, random), midi)
  const start = Math.round(random() * 1500) / 1000
  run('sox', '-D', raw, '-r', '44100', '-c', '1', '-b', '16', wav, 'pad', String(start), 'trim', '0', String(SECONDS), 'gain', '-n', '-3')
  rmSync(raw)
  const beats = Array.from({ length: Math.floor(((SECONDS - start) * bpm) / 60) }, (_, beat) => start + (beat * 60) / bpm)
  const every = (/** @type {number} */ step) => beats.filter((_, beat) => beat % step === 0)
  const meter = time === 6 ? '6/8' : `${time}/4`
  // Parts have four bars or eight, and so has an introduction.
  const phrases8 = time === 3 ? null : every(8)
  return { id, kind: 'accompaniment', file: `wav/${id}.wav`, bpm, meter, beats, downbeats: every(beatsPerBar), phrases8 }
}

/** Beats a minute as felt. */
function tempoOf(/** @type {Style} */ { name, time }, /** @type {() => number} */ random) {
  if (time === 6) return 50 + random() * 65
  if (time === 3) return 80 + random() * 100
  if (SLOW.test(name)) return 58 + random() * 45
  return QUICK.test(name) ? 110 + random() * 75 : 76 + random() * 84
}

/** A song in the accompaniment's own notation, a line a bar. */
function scoreOf(/** @type {Style} */ { time, plain, fills, intros }, /** @type {number} */ tempo, /** @type {() => number} */ random) {
  const lines = [`Tempo ${tempo}`, `KeySig ${pick(['C', 'D', 'Eb', 'F', 'G', 'A', 'Bb'], random)}`]
  const chords = [pick(CHORDS, random), pick(CHORDS, random)]
  const sings = time !== 6 && random() < 0.5
  if (sings) lines.push('Begin Solo', `Voice ${pick(VOICES, random)}`, 'Octave 5', 'Articulate 90', 'Volume mf', 'End')
  const part = pick([4, 8, 8], random)
  const bars = Math.ceil((SECONDS * tempo) / 60 / time) + 4
  let bar = 1
  if (intros.length > 0 && random() < 0.5) {
    lines.push(`Groove ${pick(intros, random)}`)
    for (let i = 0; i < 4; i++) lines.push(`${bar++} ${chords[0]?.[i]}`)
  }
  for (let parts = 0; bar <= bars; parts++) {
    const own = chords[parts % 2] ?? []
    lines.push(`Groove ${pick(plain, random)}`)
    for (let i = 0; i < part; i++) {
      if (i === part - 1 && fills.length > 0 && random() < 0.7) lines.push(`Groove ${pick(fills, random)}`)
      const second = time === 4 && random() < 0.12 ? ` / ${own[(i + 1) % 4]}` : ''
      lines.push(`${bar++} ${own[i % 4]}${second}${sings && parts % 3 !== 0 ? ` ${melodyOf(time, random)}` : ''}`)
    }
  }
  return lines
}

/** One bar of melody: steps up and down a scale, with rests. */
function melodyOf(/** @type {number} */ time, /** @type {() => number} */ random) {
  const notes = []
  let at = Math.floor(random() * SCALE.length)
  for (let left = time * 2; left > 0; ) {
    const length = Math.min(left, pick([1, 1, 2, 2, 2, 4, 3], random))
    at = Math.max(0, Math.min(SCALE.length - 1, at + Math.floor(random() * 5) - 2))
    notes.push(`${NOTES[length]}${random() < 0.12 ? 'r' : SCALE[at]};`)
    left -= length
  }
  return `{${notes.join('')}}`
}

/**
 * @template T
 * @param {readonly T[]} from
 * @param {() => number} random
 * @returns {T}
 */
function pick(from, random) {
  return /** @type {T} */ (from[Math.floor(random() * from.length)])
}

function run(/** @type {string} */ program, /** @type {string[]} */ ...words) {
  const { status, stdout, stderr, error } = spawnSync(program, words, { encoding: 'utf8', timeout: 120_000 })
  if (status !== 0) throw new Error(`${program} did not do it: ${error?.message ?? `${stdout}${stderr}`.slice(-400)}`)
}

/** The same numbers from 0 to 1 for the same seed (Mulberry32). */
function seeded(/** @type {number} */ seed) {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}
