export const fit = {}
