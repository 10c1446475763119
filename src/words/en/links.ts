export const links = {}
