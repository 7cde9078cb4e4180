import {
  type IntakeFact,
  type IntakeResult,
  RecordingIntake,
  sayFaultFinding,
  workEventsOf,
} from '@shearline/jobfile'
import {
  compareScans,
  type FaultComparison,
  leastCauses,
  type Scan,
  type ScanPhase,
  unitsOfReport,
} from '@shearline/keywork'
import type { Command } from 'commander'
import { paint, print, printJson } from '../output/answer.ts'
import { eventText, faultsJson, reasonText } from '../output/faults-json.ts'
import { readRecording } from '../output/recording.ts'
import { scanReportOf } from '../output/scan-report.ts'

type Flags = { readonly [P in ScanPhase]?: string } & { readonly recording?: string; readonly json?: boolean }

const phases: readonly ScanPhase[] = ['before', 'after', 'cleared', 'cycled']

/** `shearline faults --before A --after B ...`: whose the faults are, from the scans in recordings. */
export function addFaults(program: Command): void {
  program
    .command('faults')
    .description('Compare fault scans: what was there before, what the work raised, what is new')
    .requiredOption(
      '--before <file>',
      'the scan before the work: a recording, or a report as text, CSV, JSON or PDF',
    )
    .requiredOption('--after <file>', 'the scan after the work')
    .option('--cleared <file>', 'the scan after clearing')
    .option('--cycled <file>', 'the scan after an ignition cycle')
    .option('--recording <file>', 'recording of the work itself: resets, silence, low supply')
    .option('--json', 'one JSON object')
    .action(async (flags: Flags) => {
      const scans: Scan[] = []
      const events: ReturnType<typeof workEventsOf>[number][] = []
      for (const phase of phases) {
        const file = flags[phase]
        if (file === undefined) continue
        const report = await scanReportOf(file)
        if (report !== null) {
          scans.push({ phase, units: unitsOfReport(report) })
          continue
        }
        const intake = await takeIn(file)
        scans.push(...intake.facts(phase).flatMap(scanOf))
        if (phase !== 'before') events.push(...workEventsOf(intake.recording))
      }
      if (flags.recording !== undefined)
        events.push(...workEventsOf((await takeIn(flags.recording)).recording))
      const comparison = compareScans(scans, { events })
      if (flags.json === true) printJson(faultsJson(comparison, events))
      else {
        printFaults(comparison)
        for (const { event, explains } of leastCauses(comparison, { events }).causes)
          print(`${eventText(event)} explains ${explains.length} of them`)
      }
    })
}

function scanOf(fact: IntakeFact): Scan[] {
  return fact.kind === 'scan-attached' ? [{ phase: fact.body.phase, units: fact.body.units }] : []
}

async function takeIn(file: string): Promise<IntakeResult> {
  const intake = new RecordingIntake()
  const { result, ...read } = await readRecording(file, intake)
  return intake.finish(result, { ...read, keptSha256: read.sha256 })
}

function printFaults(comparison: FaultComparison): void {
  for (const line of comparison.faults) {
    const mark = line.needsAttention ? paint('look', 'yellow') : '    '
    print(
      `${mark} ${line.unit.padEnd(9)} ${line.code.padEnd(10)} ${line.class}${line.explanation === null ? '' : `: ${reasonText(line)}`}`,
    )
  }
  if (comparison.faults.length === 0) print('No fault in any of these scans.')
  for (const finding of comparison.findings) {
    const { what, doNext } = sayFaultFinding('en', finding)
    print(`- ${what} ${doNext}`)
  }
}
