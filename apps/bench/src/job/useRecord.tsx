import type { Fact } from '@shearline/jobfile'
import { type ReactNode, useCallback, useState } from 'react'
import { TakeBack } from '../capture/TakeBack.tsx'
import { renameDevice } from '../device/self.ts'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { keepFacts } from '../sync/write.ts'
import { t } from '../words/index.ts'
import type { Desk } from './desk.ts'
import { keepPlace } from './keep-place.ts'

interface Waiting {
  readonly proceed: (by: string) => void
  readonly giveUp: () => void
}

/** Recording for one job; a device that does not know who works with it asks first, once. */
export function useRecord(
  job: string,
  by: string,
  onNamed: (by: string) => void,
): Pick<Desk, 'record' | 'signedBy'> & { readonly asking: ReactNode } {
  const [waiting, setWaiting] = useState<Waiting | null>(null)
  const [last, setLast] = useState<readonly Fact[]>([])
  const forget = useCallback(() => setLast([]), [])
  const signedBy = useCallback(async (): Promise<string> => {
    if (by !== '') return by
    return new Promise((proceed, reject) => {
      setWaiting({ proceed, giveUp: () => reject(new Error(t('by.needed'))) })
    })
  }, [by])
  const record: Desk['record'] = useCallback(
    async (drafts, blobs) => {
      keepPlace()
      await signedBy()
      setLast(await keepFacts(job, drafts, blobs))
    },
    [job, signedBy],
  )
  const takeBack = async (facts: readonly Fact[]) => {
    await record(
      // The latest first: what names another fact goes before it.
      facts.toReversed().map(({ id }) => ({
        kind: 'corrected',
        body: { fact: id, action: 'withdrawn', reason: t('undo.reason') },
      })),
    )
    forget()
  }
  const asking = (
    <>
      <TakeBack facts={last} onTakeBack={takeBack} onClose={forget} />
      {waiting !== null && (
        <WhoWorks
          onNamed={(name) => {
            onNamed(name)
            setWaiting(null)
            waiting.proceed(name)
          }}
          onLeave={() => {
            setWaiting(null)
            waiting.giveUp()
          }}
        />
      )}
    </>
  )
  return { record, signedBy, asking }
}

function WhoWorks({
  onNamed,
  onLeave,
}: {
  readonly onNamed: (by: string) => void
  readonly onLeave: () => void
}) {
  const [name, setName] = useState('')
  return (
    <Dialog title={t('by.title')} onClose={onLeave}>
      <form
        className={formCss.dialogBody}
        onSubmit={(event) => {
          event.preventDefault()
          const by = name.trim()
          if (by !== '') void renameDevice({ by }).then(() => onNamed(by))
        }}
      >
        <Words label={t('device.by')} hint={t('device.by.hint')} value={name} onChange={setName} />
        <div className={formCss.foot}>
          <button type="submit" className={formCss.submit}>
            {t('by.go-on')}
          </button>
          <button type="button" className={formCss.plain} onClick={onLeave}>
            {t('cancel')}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
