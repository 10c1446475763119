export const merging = {}
