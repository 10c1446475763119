/**
 * Splits a line into its fields. A field may stand in double quotes, with a doubled quote
 * for one inside (RFC 4180); a quote that is never closed is a letter like any other.
 */
export function splitFields(line: string, delimiter: string): string[] {
  const fields: string[] = []
  let rest = line
  for (;;) {
    const quoted = /^ *"((?:[^"]|"")*)" */.exec(rest)
    const end = quoted ? quoted[0].length : rest.indexOf(delimiter)
    const closes = quoted ? end === rest.length || rest.startsWith(delimiter, end) : true
    const cut = closes ? end : rest.indexOf(delimiter)
    fields.push(quoted && closes ? quoted[1]!.replaceAll('""', '"').trim() : rest.slice(0, cut < 0 ? rest.length : cut).trim())
    if (cut < 0 || cut >= rest.length) return fields
    rest = rest.slice(cut + delimiter.length)
  }
}
