import { type KeyedDatabase, openKeyedDatabase } from './keyedDatabase.ts'

export type RideDatabase = KeyedDatabase

/** The first copy of the saved rides. */
export const openRideDatabase = (): Promise<RideDatabase | null> => openKeyedDatabase('ridewright', 'rides')
