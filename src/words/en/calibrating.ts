export const calibrating = {}
