export const app = {}
