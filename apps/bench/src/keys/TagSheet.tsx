import { useEffect, useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { Several } from '../form/Several.tsx'
import { useDesk } from '../job/desk.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { shortCode, tagText } from './tag-code.ts'
import { type TagsAnswer, type TagsAsk, tagsOnSheet } from './tag-sheet.ts'

/** Chooses the keys and makes a sheet of their tags, on this device. */
export default function TagSheet({ onClose }: { readonly onClose: () => void }) {
  const { state, job } = useDesk()
  const [chosen, setChosen] = useState<readonly string[]>(state.keys.map((key) => key.id))
  const [used, setUsed] = useState<number | null>(0)
  const [address, setAddress] = useState('')
  const [problem, setProblem] = useState('')
  const [busy, setBusy] = useState(false)
  useEffect(() => () => URL.revokeObjectURL(address), [address])
  const make = async () => {
    setBusy(true)
    setProblem('')
    try {
      const pdf = await makeSheet({
        title: t('tags.sheet.title', { job }),
        skip: used ?? 0,
        tags: state.keys
          .filter((key) => chosen.includes(key.id))
          .map((key) => ({
            letter: key.id,
            colour: key.colour,
            colourWord: say(`colour.${key.colour}`),
            job,
            code: shortCode({ job, key: key.id }),
            text: tagText({ job, key: key.id }),
          })),
      })
      setAddress(URL.createObjectURL(new Blob([pdf], { type: 'application/pdf' })))
    } catch (error) {
      setProblem(problemWords(error))
    } finally {
      setBusy(false)
    }
  }
  return (
    <Dialog title={t('tags.print')} onClose={onClose}>
      <p>{t('tags.print.what')}</p>
      <Several
        label={t('tags.print.keys')}
        value={chosen}
        onChange={setChosen}
        options={state.keys.map((key) => [
          key.id,
          t('keys.named', { key: key.id, colour: say(`colour.${key.colour}`) }),
        ])}
      />
      <Amount
        label={t('tags.print.used')}
        hint={t('tags.print.used.hint', { count: tagsOnSheet })}
        value={used}
        onChange={setUsed}
        most={tagsOnSheet - 1}
      />
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={formCss.foot}>
        <button
          type="button"
          className={address === '' ? formCss.submit : formCss.plain}
          disabled={busy || chosen.length === 0}
          onClick={() => void make()}
        >
          {t('tags.print.make')}
        </button>
        {address !== '' && (
          <a className={formCss.submit} href={address} download={`key-tags-${job}.pdf`}>
            {t('tags.print.save')}
          </a>
        )}
        <button type="button" className={formCss.plain} onClick={onClose}>
          {t('photo.close')}
        </button>
      </div>
      <p role="status" className={formCss.hint}>
        {busy ? t('tags.print.busy') : address === '' ? '' : t('tags.print.ready')}
      </p>
    </Dialog>
  )
}

function makeSheet(ask: TagsAsk): Promise<Uint8Array<ArrayBuffer>> {
  const worker = new Worker(new URL('./tags.worker.ts', import.meta.url), { type: 'module' })
  return new Promise<Uint8Array<ArrayBuffer>>((resolve, reject) => {
    worker.addEventListener('message', (event: MessageEvent<TagsAnswer>) => {
      if (event.data.what === 'made') resolve(event.data.pdf)
      else reject(new Error(event.data.why))
    })
    worker.addEventListener('error', (event) => reject(new Error(event.message)))
    worker.postMessage(ask)
  }).finally(() => worker.terminate())
}
