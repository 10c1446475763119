export const setup = {}
