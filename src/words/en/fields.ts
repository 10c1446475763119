export const fields = {}
