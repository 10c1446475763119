export const log = {}
