/**
 * Makes the four clips beside it from the project's own small song: `node tests/audio/clips/make.mjs`, with sox and its
 * formats installed. The tests read the clips; nobody has to make them again to run those.
 */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { createServer } from 'vite'

const HERE = fileURLToPath(new URL('.', import.meta.url))
/** The tempo of each clip, how it is written to be small, and what its tags say: ID3, Vorbis comments, and none in the wave. */
const CLIPS = [
  { name: 'clip-124.wav', bpm: 124, how: ['-r', '8000', '-b', '8'], tags: {} },
  { name: 'clip-96.mp3', bpm: 96, how: ['-C', '48'], tags: { Title: 'Brickworks Elevator', Artist: 'Nine Tin Kites' } },
  { name: 'clip-132.ogg', bpm: 132, how: ['-C', '1'], tags: { Title: 'Low Tide', Artist: 'Salt Lantern', BPM: '132' } },
  { name: 'clip-110.flac', bpm: 110, how: ['-r', '8000', '-C', '8'], tags: { Title: 'Slate Roof', Artist: 'Salt Lantern', BPM: '110' } },
]

const vite = await createServer({ configFile: false, server: { middlewareMode: true }, appType: 'custom', logLevel: 'error' })
const { madeSong } = await vite.ssrLoadModule(fileURLToPath(new URL('../../support/madeSong.ts', import.meta.url)))
const folder = mkdtempSync(join(tmpdir(), 'ridewright-clips-'))
for (const [index, { name, bpm, how, tags }] of CLIPS.entries()) {
  const raw = join(folder, 'raw.f32')
  const { samples, sampleRate } = madeSong({ bpm, seconds: 6, firstBeat: 0.3, seed: index + 1 })
  writeFileSync(raw, samples)
  const from = ['-t', 'raw', '-e', 'floating-point', '-b', '32', '-r', String(sampleRate), '-c', '1', raw]
  const comments = Object.entries(tags).flatMap(([tag, value]) => ['--add-comment', `${tag}=${value}`])
  execFileSync('sox', ['-D', ...from, ...how, ...comments, join(HERE, name), 'gain', '-n', '-3'])
}
rmSync(folder, { recursive: true })
await vite.close()
