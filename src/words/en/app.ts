export const app = {
  // Announcements.
  undone: ({ change }: { change: string }) => `Undone: ${change}`,
  redone: ({ change }: { change: string }) => `Redone: ${change}`,
  /** Undo or redo that changes nothing here, because another window did. */
  overruled: ({ change }: { change: string }) => `Changed in another window since: ${change}`,
}
