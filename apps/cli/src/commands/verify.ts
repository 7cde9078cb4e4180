import type { Command } from 'commander'
import { CouldNot, countOf, exit, paint, print, printJson } from '../output/answer.ts'
import { type Proof, prove } from '../verify/answer.ts'
import { writeVerifyPage } from '../verify/page.ts'

/** `shearline verify FILE`: proves what it is given, offline, or says what in it was changed. Exit 1 when not proven. */
export function addVerify(program: Command): void {
  program
    .command('verify')
    .description('Prove a sealed document, record, bundle or data folder, or say what in it was changed')
    .argument(
      '[file]',
      'a handover PDF, a record (JSON), a bundle (zip), a database file or a data folder; - for standard input',
    )
    .option(
      '--page <file>',
      'write the page that verifies in any browser, without a connection and without us',
    )
    .option('--json', 'one JSON object')
    .action(async (file: string | undefined, flags: { json?: boolean; page?: string }) => {
      if (flags.page !== undefined) {
        await writeVerifyPage(flags.page)
        if (file === undefined) {
          if (flags.json === true) printJson({ page: flags.page })
          else print(`${flags.page}: open it in a browser and drop the document on it.`)
          return
        }
      }
      if (file === undefined)
        throw new CouldNot('There is no file to prove.', 'Name one, or ask for --page FILE.')
      const { proven, facts, signatures, hashes, findings, document } = await prove(file)
      process.exitCode = proven ? exit.answered : exit.no
      if (flags.json === true) {
        const places = findings.map(({ where, what }) => ({ where, what }))
        printJson({ proven, facts, signatures, hashes, findings: places, ...documentAnswer(document) })
        return
      }
      print(proven ? paint('Proven.', 'green') : paint('Not proven.', 'red'))
      print(
        `${countOf(facts, 'fact')}, ${countOf(signatures, 'signature')} right, ${countOf(hashes, 'hash', 'hashes')} right`,
      )
      if (document !== undefined) printDocument(document)
      for (const { where, what, doNext, severity } of findings)
        print(
          `- ${severity === 'error' ? '' : `${severity}: `}${where}${where === '' ? '' : ': '}${what} ${doNext}`,
        )
    })
}

type Document = NonNullable<Proof['document']>

const pagesWords = {
  'state-the-record': 'The printed pages state what the record states.',
  differ: 'The printed pages do NOT state what the record states.',
  'not-compared': 'Whether the printed pages state what the record states is not known.',
} as const

/** Which bytes the seal covers, and whether the pages follow from the record. */
function printDocument({ coverage, pages }: Document): void {
  const changed = coverage?.parts.filter(({ whole }) => !whole).length ?? 0
  if (coverage?.everyByte === true)
    print(`Every byte outside the place of the seal (${coverage.sealAt} bytes) is the sealed one.`)
  else if (coverage !== null)
    print(`Of ${coverage.parts.length} parts of the file ${changed} are not the sealed ones.`)
  print(pagesWords[pages])
}

/** The same for programs; nothing of it for what is no sealed document. */
function documentAnswer(document: Document | undefined) {
  if (document === undefined) return {}
  const { coverage, pages } = document
  return { everyByte: coverage?.everyByte ?? false, sealedBytes: coverage?.sealAt ?? 0, pages }
}
