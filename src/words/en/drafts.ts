export const drafts = {}
