import { useState } from 'react'
import { Choice } from '../../form/Choice.tsx'
import { Words } from '../../form/Words.tsx'
import { HashedFile } from '../../recording/HashedFile.tsx'
import { SealReads } from '../../vault/SealReads.tsx'
import { Secrets } from '../../vault/Secrets.tsx'
import { t } from '../../words/index.ts'
import { useDesk } from '../desk.ts'
import { Facts } from '../Facts.tsx'
import { Part, RecordForm, useFresh } from '../Part.tsx'

/** Two reads of what the technician's equipment saved, compared by hash; or why there is none. */
export function BackupChapter() {
  const { state } = useDesk()
  const { backup, backupWaived } = state.teaching
  const same = backup !== null && backup.firstRead === backup.secondRead
  const keyed = backup?.digest === 'hmac-sha256'
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={t('backup.title')}
      need="backup-not-proven backup-reads-differ"
      settled={same || (backup === null && backupWaived !== null)}
      more={t('backup.again')}
      about={
        <>
          {backup !== null && (
            <>
              <Facts
                rows={[
                  [t('backup.what'), backup.what],
                  [
                    keyed ? t('vault.digest.first') : t('backup.first'),
                    <code key="first">{backup.firstRead.slice(0, 24)}…</code>,
                  ],
                  [
                    keyed ? t('vault.digest.second') : t('backup.second'),
                    <code key="second">{backup.secondRead.slice(0, 24)}…</code>,
                  ],
                ]}
              />
              <p>{same ? t('backup.same') : t('backup.differ')}</p>
            </>
          )}
          <Secrets />
          {backup === null && backupWaived !== null && <p>{t('line.no-backup', { reason: backupWaived })}</p>}
        </>
      }
    >
      <BackupForm key={fresh} onDone={renew} />
    </Part>
  )
}

function BackupForm({ onDone }: { readonly onDone: () => void }) {
  const [way, setWay] = useState<'seal' | 'reads' | 'none' | null>(null)
  const [what, setWhat] = useState('')
  const [firstRead, setFirst] = useState('')
  const [secondRead, setSecond] = useState('')
  const [because, setBecause] = useState('')
  const choice = (
    <Choice
      label={t('backup.way')}
      value={way}
      onChange={setWay}
      options={[
        ['seal', t('backup.way.seal')],
        ['reads', t('backup.way.reads')],
        ['none', t('backup.way.none')],
      ]}
    />
  )
  if (way === 'seal')
    return (
      <>
        {choice}
        <SealReads onDone={onDone} />
      </>
    )
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => {
        if (way === 'none') return [{ kind: 'backup-waived', body: { because } }]
        return way === 'reads' ? [{ kind: 'backup-proven', body: { what, firstRead, secondRead } }] : null
      }}
    >
      {choice}
      {way === 'reads' && (
        <>
          <p>{t('backup.stays')}</p>
          <Words label={t('backup.what')} hint={t('backup.what.hint')} value={what} onChange={setWhat} />
          <HashedFile label={t('backup.first')} value={firstRead} onChange={setFirst} />
          <HashedFile label={t('backup.second')} value={secondRead} onChange={setSecond} />
          {firstRead !== '' && secondRead !== '' && (
            <p role="status">{firstRead === secondRead ? t('backup.same') : t('backup.differ')}</p>
          )}
        </>
      )}
      {way === 'none' && <Words label={t('backup.because')} value={because} onChange={setBecause} />}
    </RecordForm>
  )
}
