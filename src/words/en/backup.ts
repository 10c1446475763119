export const backup = {}
