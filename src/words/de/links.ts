import type { en } from '#words/en/index.ts'
import { grouped } from '#words/forms.ts'

export const links: typeof en.links = {
  notOurs: 'Das ist kein Link zu einem Ride.',
  tooLong: 'Dieser Link ist viel länger als jeder Ride und wurde nicht geöffnet.',
  tooNew: 'Dieser Link stammt aus einer neueren Version. Zum Öffnen bitte aktualisieren.',
  truncated: 'Das Ende dieses Links fehlt. Kopiere den ganzen Link und versuche es noch einmal.',
  truncatedBy: ({ missing, of }) =>
    `Das Ende dieses Links fehlt: ${grouped(missing)} von ${grouped(of)} Zeichen. Kopiere den ganzen Link und versuche es noch einmal.`,
  recased: 'Dieser Link ist beschädigt: Eine App hat Groß- und Kleinbuchstaben verändert. Bitte um den Ride als Datei.',
  damaged: 'Dieser Link ist beschädigt. Bitte darum, ihn noch einmal zu schicken.',
  tooLarge: 'Dieser Link enthält viel mehr als einen Ride und wurde nicht geöffnet.',

  opened: ({ title }) => `Geteilter Ride „${title}“, nur zum Ansehen`,
  otherLinks: ({ others }) =>
    `In dem Text ${others === 1 ? 'war noch ein anderer Link' : `waren noch ${others} andere Links`} zu einem Ride. Das ist der erste.`,
  refused: ({ why }) => `${why} Deine Rides auf diesem Gerät sind unverändert.`,
  refusedRide: 'Der Ride in diesem Link lässt sich nicht öffnen. Deine Rides auf diesem Gerät sind unverändert.',
}
