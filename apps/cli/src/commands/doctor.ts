import { examine } from '@shearline/store'
import type { Command } from 'commander'
import { type KeptFlags, keptIn, orCouldNot } from '../job/data.ts'
import { exit, printJson } from '../output/answer.ts'
import { sayDoctor } from '../output/doctor.ts'

/** `shearline doctor`: looks at everything kept and changes nothing. Exit 1 when something is not as it was. */
export function addDoctor(program: Command): void {
  program
    .command('doctor')
    .description('Check every hash, signature, chain, seal, blob and index, and say what to do')
    .option('--data <folder>', 'data folder (default: SHEARLINE_DATA, else .shearline here)')
    .option('--database <address>', 'PostgreSQL of a firm (default: SHEARLINE_DATABASE)')
    .option('--json', 'one JSON object')
    .action(async (flags: KeptFlags & { json?: boolean }) => {
      const examination = await orCouldNot(() => examine(keptIn(flags)))
      process.exitCode = examination.sound ? exit.answered : exit.no
      if (flags.json === true) printJson(examination)
      else sayDoctor(examination)
    })
}
