import { wellFormed } from '#plan/document/plainCopy.ts'
import type { Track } from './track.ts'

/**
 * A playlist in XSPF version 1: titles, artists and lengths in whole milliseconds. Where the music
 * lies is not known here, so tracks have no location, which the format allows; players that can
 * look songs up do so by title and artist. Source: XSPF version 1, Xiph.Org Foundation (xspf.org).
 */
export function writeXspf(title: string, tracks: readonly Track[]): string {
  const lines = tracks.flatMap(({ title: name, artist, seconds, note }, index) => [
    '    <track>',
    `      <title>${escapeXml(name)}</title>`,
    ...(artist ? [`      <creator>${escapeXml(artist)}</creator>`] : []),
    ...(note ? [`      <annotation>${escapeXml(note)}</annotation>`] : []),
    `      <trackNum>${index + 1}</trackNum>`,
    `      <duration>${Math.round(seconds * 1000)}</duration>`,
    '    </track>',
  ])
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<playlist version="1" xmlns="http://xspf.org/ns/0/">',
    `  <title>${escapeXml(title)}</title>`,
    '  <trackList>',
    ...lines,
    '  </trackList>',
    '</playlist>',
    '',
  ].join('\n')
}

/** Text for an element: what means something escaped, what XML 1.0 has no way to hold left out. */
const escapeXml = (text: string): string =>
  wellFormed(text)
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replace(/\r/g, '&#13;')
