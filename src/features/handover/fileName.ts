import { fileStem } from '#plan/document/fileStem.ts'

/** The name a ride is saved under: "twenty-minute-spark.ride.json". */
export const fileName = (title: string): string => `${fileStem(title)}.ride.json`
