export const lists = {}
