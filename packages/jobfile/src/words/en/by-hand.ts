/** How a stranger checks a document without us. */
export const byHandWords = {
  'doc.by-hand': 'With openssl alone',
  'doc.by-hand-how':
    'Save this file as document.pdf in an empty folder, open a shell there (on Linux, or on macOS with the GNU core utilities) and enter these lines. They need openssl 3 and no network.',
  'doc.by-hand-commands': 'Commands',
  'doc.by-hand-answer':
    'It holds only when "It holds" is printed; then compare the fingerprint below that with the one that you got from the firm. Anything else means that the file was changed or is not whole.',
  'doc.by-hand-limits':
    'This proves the seal and every byte of the file. That the pages state what the record states is shown by "shearline verify" and by the verify page, an HTML file that the firm can give you.',
} as const
