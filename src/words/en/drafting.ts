export const drafting = {}
