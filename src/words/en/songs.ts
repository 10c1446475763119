export const songs = {}
