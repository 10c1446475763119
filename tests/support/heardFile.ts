import type { Hearing } from '#plan/songs/heardSong.ts'

/** What is said of a file in which a steady song of 200 s was heard, loud throughout, its first beat at its start. */
export function heardFile(title: string, fingerprint: string, bpm = 128): Extract<Hearing, { kind: 'heard' }> {
  return {
    kind: 'heard',
    song: {
      title,
      lengthSeconds: 200,
      fingerprint,
      sound: { id: fingerprint, lengthSeconds: 200, peaks: new Uint8Array(), loudness: new Float32Array(200).fill(-9) },
      beats: {
        bpm,
        beats: [0, 60 / bpm],
        downbeats: [0],
        eights: [0],
        beatsPerBar: 4,
        firstBeat: 0,
        confidence: 1,
        drifts: [],
        steady: true,
      },
    },
  }
}
