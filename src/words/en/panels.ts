export const panels = {}
