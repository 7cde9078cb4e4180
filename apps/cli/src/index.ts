/** @module The `shearline` command: one thin file per verb in `commands/`. */
import { Command, CommanderError } from 'commander'
import { CouldNot, exit, say } from './output/answer.ts'

/** The verbs. Each is loaded when it is asked for, so that reading a recording does not wait for the PDF writer. */
const verbs: Readonly<Record<string, (program: Command) => Promise<void>>> = {
  decode: async (program) => (await import('./commands/decode.ts')).addDecode(program),
  scans: async (program) => (await import('./commands/scans.ts')).addScans(program),
  vin: async (program) => (await import('./commands/vin.ts')).addVin(program),
  faults: async (program) => (await import('./commands/faults.ts')).addFaults(program),
  rehearse: async (program) => (await import('./commands/rehearse.ts')).addRehearse(program),
  remote: async (program) => (await import('./commands/remote.ts')).addRemote(program),
  power: async (program) => (await import('./commands/power.ts')).addPower(program),
  job: async (program) => (await import('./commands/job.ts')).addJob(program),
  sheet: async (program) => (await import('./commands/sheet.ts')).addSheet(program),
  verify: async (program) => (await import('./commands/verify.ts')).addVerify(program),
  invoice: async (program) => (await import('./commands/invoice.ts')).addInvoice(program),
  vault: async (program) => (await import('./commands/vault.ts')).addVault(program),
  device: async (program) => (await import('./commands/device.ts')).addDevice(program),
  retention: async (program) => (await import('./commands/retention.ts')).addRetention(program),
  demo: async (program) => (await import('./commands/demo.ts')).addDemo(program),
  practice: async (program) => (await import('./commands/practice.ts')).addPractice(program),
  backup: async (program) => (await import('./commands/backup.ts')).addBackup(program),
  restore: async (program) => (await import('./commands/restore.ts')).addRestore(program),
  doctor: async (program) => (await import('./commands/doctor.ts')).addDoctor(program),
  serve: async (program) => (await import('./commands/serve.ts')).addServe(program),
}

/** Builds the command with the verb that is asked for, or with all of them to show what there is. */
async function buildProgram(verb: string | undefined): Promise<Command> {
  const program = new Command('shearline')
    .description('Runs, computes and proves the whole job of supplying a vehicle key. Never programs keys.')
    .version('0.1.0')
    .showHelpAfterError('(add --help for what can be asked)')
    .exitOverride()
  const asked = verb === undefined || !Object.hasOwn(verbs, verb) ? Object.values(verbs) : [verbs[verb]]
  for (const add of asked) await add?.(program)
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
    await (await buildProgram(argv[2])).parseAsync([...argv])
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
