import process from 'node:process'

/**
 * What everything drawn by chance in a test starts from. The same for every run, so that a commit passes or fails everywhere
 * alike; `npm run hunt` gives a fresh one each round.
 */
export const SEED = Number(process.env.RIDEWRIGHT_SEED ?? 20_260_301)
