import { type Message, type ScannedUnit, scansOf } from '@shearline/bus'
import type { ScanPhase, UnitScan } from '@shearline/keywork'

/**
 * Gathers the fault reports of a recording into one reading per control unit. Before and after the work every
 * code of any report counts, with its last status: what was seen once was there. After clearing and after a
 * cycle only the last report of each kind counts: the question is what is left.
 */
export class ScanGatherer {
  readonly #reports = new Map<string, Map<string, ScannedUnit[]>>()

  message(message: Message): void {
    for (const scan of scansOf([message])) {
      const unit = this.#reports.get(scan.unit) ?? new Map<string, ScannedUnit[]>()
      const reports = unit.get(scan.report) ?? []
      reports.push(scan)
      unit.set(scan.report, reports)
      this.#reports.set(scan.unit, unit)
    }
  }

  /** The reading of every unit that answered, by identifier. */
  units(phase: ScanPhase): readonly UnitScan[] {
    const keepAll = phase === 'before' || phase === 'after'
    return [...this.#reports]
      .map(([unit, reports]) => {
        const kept = [...reports.values()].flatMap((list) => (keepAll ? list : list.slice(-1)))
        return joined(unit, kept)
      })
      .sort((a, b) => (a.unit < b.unit ? -1 : a.unit > b.unit ? 1 : 0))
  }
}

function joined(unit: string, reports: readonly ScannedUnit[]): UnitScan {
  const faults = new Map<string, UnitScan['faults'][number]>()
  let availability: number | null = null
  let time: string | null = null
  for (const report of reports) {
    if (report.availability !== null) availability = (availability ?? 0) | report.availability
    if (time === null || Number(report.time) > Number(time)) time = report.time
    for (const { code, raw, status, list } of report.faults) {
      faults.set(`${list ?? ''} ${raw}`, { code, raw, status, ...(list === undefined ? {} : { list }) })
    }
  }
  return { unit, time, availability, faults: [...faults.values()] }
}
