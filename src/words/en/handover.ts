export const handover = {}
