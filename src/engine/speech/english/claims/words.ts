/** The English words the grammar knows by heart, each list with what it decides. */

export const wordSet = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/))

export const SECOND_UNITS = wordSet('s sec secs second seconds seconder seconders')
export const MINUTE_UNITS = wordSet('min mins minute minutes')

/** Units of resistance scales other than the bike's own that leaders use for it all the same. */
export const SCALE_UNITS = wordSet('level gear notch click step point')

/** What may come between a number and its unit: "thirty more seconds". */
export const FULL = wordSet('full whole good solid long short quick hard easy big small more extra other')
export const MORE = wordSet('more another extra additional')

/** A number after these is one of many like it: "every thirty seconds". */
export const EVERY = wordSet('every each per')

/** Words that may follow a bare number without being what it counts. */
export const SAFE_AFTER = wordSet(
  "on off up down more and then now here go to for with before please as we you it it’s it’s it's we're you're that's from at when while until till through all in out of left right if because so by today again next coming this once but because yes yeah okay ok y'all everybody everyone team total altogether straight 'til til gonna",
)

/** Words that follow a number without being a kind of block. */
export const NO_KIND = wordSet(
  `of and in to on off up down left right more next easy hard counts count beats beat eights eight phrase phrases bar bars measure measures
  songs song for at the a an one ones this that these those them it its last first only number here now then so go we you i is are was be your
  my our their with from by as or if but all out over under again back done done please time times thing things rule second seconds minute minutes hour hours day
  days week weeks year years month months percent rpm bpm watts degrees inch inches feet foot leg legs hand hands side sides`,
)

/** Parts of the body and sides: "two left feet" leaves nothing over. */
export const BODY = wordSet(
  'foot feet leg legs hand hands arm arms side sides shoulder shoulders knee knees elbow elbows hip hips heel heels toe toes ear ears eye eyes wrist glute glutes quad quads pedal pedals turn lane',
)

export const EASY = wordSet('easy rest resting recover recovery recovering off breathe breath breathing between break loose flush')
export const HARD = wordSet('hard on work working strong everything effort out push')

export const ON = wordSet('on up more extra heavier')
export const OFF = wordSet('off down less lighter')

export const ORDINALS: readonly string[] = 'zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(
  ' ',
)

/** "fours" and the like, by their counts. */
export const PLURALS: ReadonlyMap<string, number> = new Map([
  ['twos', 2],
  ['threes', 3],
  ['fours', 4],
  ['sixes', 6],
  ['eights', 8],
  ['sixteens', 16],
])

export const ENDS_UP = wordSet(
  'top end finish break drop chorus summit crest line peak bottom bell saddle seat release rest recovery finale outro',
)
