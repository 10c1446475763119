export const rehearsing = {}
