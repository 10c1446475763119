export const storage = {}
