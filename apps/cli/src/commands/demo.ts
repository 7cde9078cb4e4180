import type { Command } from 'commander'
import { runDemo } from '../demo/run.ts'
import { exit, paint, print, printJson } from '../output/answer.ts'

/** `shearline demo [RECORDING]`: the whole job on one recording, from import to a proven handover. */
export function addDemo(program: Command): void {
  program
    .command('demo')
    .description('Run the whole job on a recording: import, complete, seal, verify')
    .argument(
      '[recording]',
      'a recording of your own; else one of ../shared/captures, else one generated here',
    )
    .option('--out <folder>', 'where data and document go (default: a new temporary folder)')
    .option('--json', 'one JSON object')
    .action(async (recording: string | undefined, flags: { out?: string; json?: boolean }) => {
      const told = flags.json === true ? () => {} : print
      const result = await runDemo({ recording, out: flags.out, tell: told })
      process.exitCode = result.proven && result.tamperFound ? exit.answered : exit.no
      if (flags.json === true) printJson(result)
      else print(result.proven ? paint(`Proven: ${result.document}`, 'green') : paint('Not proven.', 'red'))
    })
}
