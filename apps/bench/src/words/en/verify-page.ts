/** The page a customer can prove a document with. */
export const verifyPageWords = {
  'verify-page.save': 'Save the page that proves documents',
  'verify-page.about':
    'A file for the customer or an insurer: it proves the document in any browser, without a connection and without Shearline.',
} as const
