export const sheet = {}
