export const start = {}
