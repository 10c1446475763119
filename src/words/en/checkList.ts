export const checkList = {}
