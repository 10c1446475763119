import type { Chance } from './chance.ts'

/** Lists as players, spreadsheets and people write them. */
const LISTS: readonly string[] = [
  '#EXTM3U\n#EXTINF:225,Salt Lantern - Low Tide\nlow-tide.mp3\n#EXTINF:190,Brass Otter - Quay\nquay.mp3\n',
  'title,artist,bpm,length\n"Low, Tide",Salt Lantern,128,3:45\nBrickworks,"Nine ""Tin"" Kites",90,3:10\n',
  'Title;Artist;Tempo;Duration\nLow Tide;Salt Lantern;128,5;00:03:45\n',
  'Paper Lanterns – The Odd Hours – 3:42 – 128 bpm\nSlow Ferry, 4:10, 96\n1. Night Market 3:05\n',
  `<?xml version="1.0"?><!-- mine --><playlist version="1" xmlns="http://xspf.org/ns/0/"><trackList>
    <track><title>Low &amp; Tide</title><creator>Salt</creator><duration>225000</duration></track>
    <track><title><![CDATA[Quay]]></title></track></trackList></playlist>`,
]

const STRANGE: readonly string[] = [
  ...['"', '""', ',', ';', '\t', '\n', '\r\n', '\u2028', ' ', '<', '>', '&', '/', '\\', '%', '%ff', '#', ':', '@', '=1+1', '-1'],
  ...['&#0;', '&#xD800;', '&a;', '<![CDATA[', ']]>', '<!--', '-->', '<!---->', '<?xml', '?>', '<!DOCTYPE x [<!ENTITY a "aaaa">]>'],
  ...['<track>', '</track>', '<track ', '<title>', '</title>', '<playlist', '#EXTINF:', '#EXTINF:-1,', '#EXTINF:1e9,', ' - ', ' – '],
  ...['99:99', '0:00', '9999 bpm', '0 bpm', 'NaN', '1e999', '\u0000', '\ud800', '\u202e', '😀', '9'.repeat(400), '_'.repeat(2000)],
]

/** A list of songs that was damaged, or made by someone who means harm; up to some ten thousands of characters. */
export function hostileList(chance: Chance): string {
  let text = chance.pick(LISTS)
  for (let times = 1 + chance.below(8); times > 0; times--) {
    const at = chance.below(text.length + 1)
    const cut = chance.oneIn(2) ? chance.below(20) : 0
    const put = chance.oneIn(4) ? '' : chance.pick(STRANGE).repeat(chance.oneIn(20) ? 300 : 1)
    text = text.slice(0, at) + put + text.slice(at + cut)
  }
  return text
}
