import type { ChapterName, JobState } from '@shearline/jobfile'
import { volts } from '../words/amounts.ts'
import { listMark, say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { clock } from '../words/instants.ts'

const apart = ' · '

/** A chapter folded to one line of fact; empty while nothing of it is on record. */
export function chapterLine(name: ChapterName, state: JobState): string {
  return lines[name](state)
    .filter((part) => part !== '')
    .join(apart)
}

/** A table keyed by every chapter, so that a new one without a line fails to compile. */
const lines: Readonly<Record<ChapterName, (state: JobState) => readonly string[]>> = {
  call: ({ opened, tally, absentKeys }) => [
    opened === null ? '' : say(`work.${opened.work}`),
    tally.saidToExist === null ? '' : t('line.said', { count: tally.saidToExist }),
    absentKeys.length === 0 ? '' : t('line.absent', { names: absentKeys.join(listMark()) }),
  ],
  authority: ({ authority }) => [
    ...authority.seen.map((seen) => t('line.seen', { document: seen.document, last: seen.lastCharacters })),
    authority.decision === null ? '' : say(`decision.${authority.decision.decision}`),
  ],
  arrival: ({ vins, vin, keys, supply, scans }) => {
    const rest = supply.readings.findLast((reading) => reading.during === 'rest')
    const here = keys.filter((key) => key.origin === 'existing').length
    return [
      vins.length === 0
        ? ''
        : vin === null
          ? t('line.vin-differs')
          : t('line.vin', { tail: vin.slice(-6), count: vins.length }),
      here === 0 ? '' : t('line.keys', { count: here }),
      rest === undefined ? '' : t('line.rest', { volts: volts(rest.volts) }),
      scans.some((scan) => scan.phase === 'before') ? t('line.scanned') : '',
    ]
  },
  plan: ({ teaching, supply }) => [
    teaching.rule === null ? '' : t(`rule-kind.${teaching.rule.kind}`),
    teaching.rehearsal === null ? '' : t('line.rehearsed'),
    supply.setting === null ? '' : t('line.floor', { volts: volts(supply.setting.floorVolts) }),
  ],
  backup: ({ teaching }) => [
    teaching.backup !== null
      ? teaching.backup.firstRead === teaching.backup.secondRead
        ? t('line.backup', { hash: teaching.backup.firstRead.slice(0, 8) })
        : t('line.backup-differs')
      : teaching.backupWaived !== null
        ? t('line.no-backup', { reason: teaching.backupWaived })
        : '',
  ],
  prepare: ({ blanks, keys }) => [
    blanks.at(-1)?.item ?? '',
    keys.some((key) => key.origin === 'new')
      ? t('line.new-keys', {
          keys: keys
            .filter((key) => key.origin === 'new')
            .map((key) => key.id)
            .join(listMark()),
          count: keys.filter((key) => key.origin === 'new').length,
        })
      : '',
  ],
  teach: ({ teaching, supply }) => [
    teaching.taught.length === 0 ? '' : t('line.taught', { keys: teaching.taught.join(listMark()) }),
    teaching.carCount === null ? '' : t('line.count', { count: teaching.carCount }),
    supply.minimumVolts === null ? '' : t('line.minimum', { volts: volts(supply.minimumVolts) }),
    teaching.breakOff === null ? '' : t('line.broke', { after: teaching.breakOff.after }),
    teaching.sessionClosed ? t('line.closed') : '',
  ],
  prove: ({ grid, keys, tally, countRead }) => {
    const answered = grid.rows.some((row) =>
      row.after.some((cell) => cell.outcome === 'works' || cell.outcome === 'fails'),
    )
    if (keys.length === 0 || !answered)
      return [countRead.after ? t('line.count', { count: tally.storedAfter ?? 0 }) : '']
    return [
      grid.completeAfter ? t('line.proven') : t('line.open', { count: grid.openAfter }),
      grid.failing.length === 0 ? '' : t('line.failing', { count: grid.failing.length }),
      tally.storedAfter === null ? '' : t('line.count', { count: tally.storedAfter }),
    ]
  },
  faults: ({ faults, scans, acknowledged }) => {
    if (!scans.some((scan) => scan.phase !== 'before')) return ['']
    const attention = faults.faults.filter(
      (line) =>
        line.needsAttention &&
        !acknowledged.some((known) => known.unit === line.unit && known.code === line.code),
    ).length
    return [
      t('line.faults', { count: faults.faults.length }),
      attention === 0 ? '' : t('line.attention', { count: attention }),
    ]
  },
  handover: ({ seal, opened, price }) => [
    price === null ? '' : t('line.price'),
    seal === null ? '' : t('line.sealed', { time: clock(seal.at, opened?.zone ?? 'UTC'), by: seal.by }),
  ],
  close: ({ corrections }) => [
    corrections.length === 0 ? '' : t('line.corrections', { count: corrections.length }),
  ],
}
