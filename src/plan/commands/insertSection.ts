import type { Command } from '#plan/commands/command.ts'
import type { Ride, Section } from '#plan/model.ts'
import { insertSections } from './insertSections.ts'

/** Puts one new section at `index` of the ride; see `insertSections`. */
export const insertSection = (ride: Ride, { index, section }: { index: number; section: Section }): Command =>
  insertSections(ride, { index, sections: [section] })
