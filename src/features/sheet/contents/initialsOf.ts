/** First letters of a name, as leaders sign a sheet: "Remy Castellane-Voss" → "RC". */
export const initialsOf = (name: string): string =>
  name
    .split(/\s+/)
    .map((word) => [...word][0] ?? '')
    .join('')
    .toUpperCase()
