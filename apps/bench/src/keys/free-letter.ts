/** The next free letter: A, B, C ... then A2, B2 ... */
export function freeLetter(used: readonly string[]): string {
  for (const round of ['', '2', '3', '4']) {
    for (let code = 65; code <= 90; code++) {
      const label = `${String.fromCharCode(code)}${round}`
      if (!used.includes(label)) return label
    }
  }
  return 'Z9'
}
