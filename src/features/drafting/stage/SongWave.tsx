import { memo } from 'react'
import { useApp } from '#store/useApp.ts'
import type { Seconds } from '#units/units.ts'
import { levelsOf } from './peakLevels.ts'
import type { TimeScale } from './timeScale.ts'
import { wavePath } from './wavePath.ts'

/** Height of a song's wave, in pixels; the lane has room for it as soon as the sound of one song is known. */
const WAVE = 30

/** What a song looks like, under its head; nothing while its sound is not known here. */
export const SongWave = memo(function SongWave({
  fingerprint,
  origin,
  scale,
  from,
  to,
}: {
  fingerprint: string
  /** Second of the song at the section's left edge. */
  origin: Seconds
  scale: TimeScale
  /** What of it is drawn, in pixels from that edge. */
  from: number
  to: number
}) {
  const sound = useApp((state) => state.sounds.get(fingerprint))
  if (!sound || to <= from) return null
  const levels = levelsOf(sound)
  const { top, body } = wavePath(levels, Math.max(1, levels.at(-1)!.top[0] ?? 1), origin, scale, { from, to }, WAVE)
  return (
    <svg className="wave" width={to} height={WAVE} aria-hidden="true">
      <path className="wave-top" d={top} />
      <path className="wave-body" d={body} />
    </svg>
  )
})
