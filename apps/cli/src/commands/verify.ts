import type { Command } from 'commander'
import { exit, paint, print, printJson } from '../output/answer.ts'
import { prove } from '../verify/answer.ts'

/** `shearline verify FILE`: proves what it is given, offline, or says what in it was changed. Exit 1 when not proven. */
export function addVerify(program: Command): void {
  program
    .command('verify')
    .description('Prove a sealed document, record, bundle or data folder, or say what in it was changed')
    .argument(
      '<file>',
      'a handover PDF, a record (JSON), a bundle (zip), a database file or a data folder; - for standard input',
    )
    .option('--json', 'one JSON object')
    .action(async (file: string, flags: { json?: boolean }) => {
      const { proven, facts, signatures, hashes, findings } = await prove(file)
      process.exitCode = proven ? exit.answered : exit.no
      if (flags.json === true) {
        const places = findings.map(({ where, what }) => ({ where, what }))
        printJson({ proven, facts, signatures, hashes, findings: places })
        return
      }
      print(proven ? paint('Proven.', 'green') : paint('Not proven.', 'red'))
      print(`${facts} facts, ${signatures} signatures right, ${hashes} hashes right`)
      for (const { where, what, doNext, severity } of findings)
        print(
          `- ${severity === 'error' ? '' : `${severity}: `}${where}${where === '' ? '' : ': '}${what} ${doNext}`,
        )
    })
}
