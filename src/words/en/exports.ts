export const exports = {}
