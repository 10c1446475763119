export const plan = {}
