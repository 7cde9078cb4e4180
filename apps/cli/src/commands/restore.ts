import { restore } from '@shearline/store'
import type { Command } from 'commander'
import { orCouldNot } from '../job/data.ts'
import { exit, paint, print, printJson } from '../output/answer.ts'
import { printFindings, sayDoctor } from '../output/doctor.ts'

/** `shearline restore FROM --into DIR|URL`: checks a backup and restores it into an empty place. Exit 1 when it is not sound. */
export function addRestore(program: Command): void {
  program
    .command('restore')
    .description('Restore a backup into a new data folder or an empty PostgreSQL database')
    .argument('<from>', 'a folder that "shearline backup" wrote')
    .requiredOption('--into <place>', 'a new folder, or postgres://user@host/database')
    .option('--same-device', "put this computer's key back: only when the folder it came from is gone")
    .option('--as-it-is', 'restore although something in the backup is not as it was')
    .option('--json', 'one JSON object')
    .action(
      async (
        from: string,
        flags: { into: string; sameDevice?: boolean; asItIs?: boolean; json?: boolean },
      ) => {
        const target = /^postgres(ql)?:\/\//.test(flags.into)
          ? { database: flags.into }
          : { data: flags.into }
        const done = await orCouldNot(() =>
          restore(from, target, { sameDevice: flags.sameDevice === true, asItIs: flags.asItIs === true }),
        )
        process.exitCode = done.examination?.sound === true ? exit.answered : exit.no
        if (flags.json === true) {
          printJson(done)
          return
        }
        if (done.examination === null) {
          print(paint('Not restored: something in the backup is not as it was.', 'red'))
          printFindings(done.findings)
          return
        }
        print(paint('Restored.', 'green'))
        if (flags.sameDevice !== true && 'data' in target)
          print('It counts as a new device: the key of the old folder was left in the backup.')
        sayDoctor(done.examination)
      },
    )
}
