export const leading = {}
