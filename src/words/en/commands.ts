export const commands = {}
