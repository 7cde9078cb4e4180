import { webcrypto } from 'node:crypto'
import { describeWhere } from '@shearline/bus'
import { Verifier, verifyAnswer, verifyFile } from '@shearline/jobfile'
import type { Command } from 'commander'
import { exit, paint, print, printJson } from '../output/answer.ts'
import { bytesOf } from '../output/input.ts'

/** `shearline verify FILE`: proves a sealed document or a record, or says which fact or page is wrong. Exit 1 when not proven. */
export function addVerify(program: Command): void {
  program
    .command('verify')
    .description('Prove a sealed document or record, or say what in it was changed')
    .argument('<file>', 'a handover PDF or a record in JSON; - for standard input')
    .option('--json', 'one JSON object')
    .action(async (file: string, flags: { json?: boolean }) => {
      const check = await verifyFile(await bytesOf(file), new Verifier(webcrypto.subtle))
      process.exitCode = check.proven ? exit.answered : exit.no
      if (flags.json === true) {
        printJson(verifyAnswer(check))
        return
      }
      print(check.proven ? paint('Proven.', 'green') : paint('Not proven.', 'red'))
      print(`${check.facts} facts, ${check.signatures} signatures right, ${check.hashes} hashes right`)
      for (const { where, what, doNext, severity } of check.findings) {
        const place = describeWhere(where)
        print(
          `- ${severity === 'error' ? '' : `${severity}: `}${place}${place === '' ? '' : ': '}${what} ${doNext}`,
        )
      }
    })
}
