/** @module The `shearline` command: one thin file per verb in `commands/`. */
import { Command, CommanderError } from 'commander'
import { addDecode } from './commands/decode.ts'
import { addDemo } from './commands/demo.ts'
import { addFaults } from './commands/faults.ts'
import { addJob } from './commands/job.ts'
import { addPower } from './commands/power.ts'
import { addRehearse } from './commands/rehearse.ts'
import { addScans } from './commands/scans.ts'
import { addServe } from './commands/serve.ts'
import { addVerify } from './commands/verify.ts'
import { addVin } from './commands/vin.ts'
import { CouldNot, exit, say } from './output/answer.ts'

/** Builds the command with all its verbs. */
export function buildProgram(): Command {
  const program = new Command('shearline')
    .description('Runs, computes and proves the whole job of supplying a vehicle key. Never programs keys.')
    .version('0.1.0')
    .showHelpAfterError('(add --help for what can be asked)')
    .exitOverride()
  addDecode(program)
  addScans(program)
  addVin(program)
  addFaults(program)
  addRehearse(program)
  addPower(program)
  addJob(program)
  addVerify(program)
  addDemo(program)
  addServe(program)
  return program
}

/** Runs the command line. Sets the exit code; never throws. */
export async function main(argv: readonly string[]): Promise<void> {
  // A reader that closes early (head, less) is not an error of ours.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(process.exitCode ?? exit.answered)
    throw error
  })
  try {
    await buildProgram().parseAsync([...argv])
  } catch (error) {
    if (error instanceof CommanderError) {
      process.exitCode = error.exitCode === 0 ? exit.answered : exit.couldNot
      return
    }
    if (!(error instanceof CouldNot)) throw error
    say(`shearline: ${error.message}`)
    process.exitCode = exit.couldNot
  }
}
