export const patterns = {}
