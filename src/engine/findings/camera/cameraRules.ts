import type { Rule } from '#engine/findings/finding.ts'
import { closingWords } from './closingWords.ts'
import { endsOffPedals } from './endsOffPedals.ts'
import { feelWithChange } from './feelWithChange.ts'
import { nobodyToLead } from './nobodyToLead.ts'
import { openingFits } from './openingFits.ts'
import { seatedOption } from './seatedOption.ts'

/** What a class to a camera needs: bikes nobody knows, and riders nobody sees. */
const RULES: readonly Rule[] = [openingFits, feelWithChange, seatedOption, nobodyToLead, endsOffPedals, closingWords]

/** The same rules where the ride is taught online, silent everywhere else. */
export const CAMERA_RULES: readonly Rule[] = RULES.map(
  (rule): Rule =>
    (facts) =>
      facts.ride.room === 'online' ? rule(facts) : [],
)
