export const documents = {}
