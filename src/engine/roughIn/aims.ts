import type { Style } from './styles.ts'

/** What a class is mostly to be made of. */
export const AIMS = ['mixed', 'climbs', 'intervals', 'endurance', 'rhythm'] as const
export type Aim = (typeof AIMS)[number]

/** How much more an aim likes a style than the others (common practice). */
export const LIKED: Record<Aim, Partial<Record<Style, number>>> = {
  mixed: {},
  climbs: { climb: 2, jumps: 0.5 },
  intervals: { push: 2, surge: 1.5 },
  endurance: { tempo: 2, climb: 1 },
  rhythm: { run: 1.5, jumps: 1.5 },
}

const WORDS: readonly (readonly [aim: Aim, words: RegExp])[] = [
  ['climbs', /\b(?:climb|climbs|climbing|hill|hills|hilly|mountain|mountains|strength|summit|berg|berge|bergauf|klettern|kraft|gipfel)\b/i],
  [
    'intervals',
    /\b(?:interval|intervals|push|pushes|sprint|sprints|speed|power|surge|surges|hard|intervall|intervalle|antritt|antritte|hart)\b/i,
  ],
  ['endurance', /\b(?:endurance|tempo|steady|base|long|aerobic|ausdauer|grundlage|aerob|lang)\b/i],
  ['rhythm', /\b(?:rhythm|beat|dance|party|jump|jumps|choreography|fun|rhythmus|takt|tanzen|choreografie|choreographie)\b/i],
]

/** The aim a ride's own words name first; mixed where they name none, or there are none. */
export function readAim(words: string | undefined): Aim {
  const found = WORDS.flatMap(([aim, pattern]) => {
    const at = words?.search(pattern) ?? -1
    return at < 0 ? [] : [{ aim, at }]
  })
  return found.sort((a, b) => a.at - b.at)[0]?.aim ?? 'mixed'
}
