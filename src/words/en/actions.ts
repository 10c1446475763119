export const actions = {}
