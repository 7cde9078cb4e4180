import { backUp } from '@shearline/store'
import type { Command } from 'commander'
import { type KeptFlags, keptIn, orCouldNot } from '../job/data.ts'
import { countOf, exit, print, printJson } from '../output/answer.ts'
import { sayDoctor } from '../output/doctor.ts'

/** `shearline backup TO`: everything kept into one folder, while servers go on. Exit 1 when the backup is not sound. */
export function addBackup(program: Command): void {
  program
    .command('backup')
    .description('Copy everything kept into a new folder, while the server runs: record, blobs, keys')
    .argument('<to>', 'a folder that does not exist yet, or an empty one')
    .option('--data <folder>', 'data folder (default: SHEARLINE_DATA, else .shearline here)')
    .option('--database <address>', 'PostgreSQL of a firm (default: SHEARLINE_DATABASE)')
    .option('--json', 'one JSON object')
    .action(async (to: string, flags: KeptFlags & { json?: boolean }) => {
      const made = await orCouldNot(() => backUp(keptIn(flags), to))
      process.exitCode = made.examination.sound ? exit.answered : exit.no
      if (flags.json === true) {
        printJson({ ...made, sound: made.examination.sound })
        return
      }
      print(`${countOf(made.files, 'file')}, ${(made.bytes / 1e6).toFixed(1)} MB in ${made.folder}`)
      print('It holds the key of this computer: keep it where nobody else can read it.')
      sayDoctor(made.examination)
    })
}
