import type { Catalogue } from '#words/said.ts'

type Problems = Catalogue['problems']

/** Where a value stands and what was found there, which every problem is told with. */
type At = 'at' | 'found'

/** What is wrong with a value, by name, with what has to be said of it beside where it stands and what was found. */
export type Wrong = {
  [Name in keyof Problems]: { readonly problem: Name } & Readonly<Omit<Parameters<Problems[Name]>[0], At>>
}[keyof Problems]

/** What bounds are counted in. */
export type Unit = NonNullable<Extract<Wrong, { problem: 'between' }>['unit']>

/** The same as a message of the schema, which has to be a string. */
export const messageOf = (wrong: Wrong): string => JSON.stringify(wrong)

export const wrongIn = (message: string): Wrong => JSON.parse(message) as Wrong
