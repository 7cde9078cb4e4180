import { type FormEvent, useState } from 'react'
import { SpokenWords } from '../capture/SpokenWords.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { sealAtRest } from './at-rest.ts'
import { sha256Of } from './sha256.ts'
import type { Shrunk } from './shrink.ts'
import type { PhotoOf, Shows } from './TakePhoto.tsx'

/** What a photo shows; keeping it writes the encrypted bytes and the fact together. */
export function PhotoForm({
  photo,
  of,
  offered,
  onKept,
}: {
  readonly photo: Shrunk
  readonly of: PhotoOf
  readonly offered: readonly Shows[]
  readonly onKept: () => void
}) {
  const { record, state } = useDesk()
  const [shows, setShows] = useState<Shows | null>(
    of.shows ?? (offered.length === 1 ? (offered[0] ?? null) : null),
  )
  const [key, setKey] = useState<string | null>(of.key ?? null)
  const [words, setWords] = useState('')
  const [problem, setProblem] = useState('')
  const [busy, setBusy] = useState(false)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    if (shows === null || busy) return
    setBusy(true)
    try {
      const sha256 = await sha256Of(photo.bytes)
      const kept = await sealAtRest(photo.bytes, {
        sha256,
        name: t('photo.file'),
        type: photo.type,
        sent: false,
      })
      await record(
        [
          {
            kind: 'photo-attached',
            body: {
              blob: sha256,
              mediaType: photo.type,
              bytes: photo.bytes.length,
              shows,
              ...(shows === 'key' && key !== null ? { key } : {}),
              ...(words.trim() === '' ? {} : { words }),
            },
          },
        ],
        [kept],
      )
      onKept()
    } catch (error) {
      setProblem(problemWords(error))
    } finally {
      setBusy(false)
    }
  }
  return (
    <form className={formCss.dialogBody} onSubmit={(event) => void keep(event)}>
      {of.shows === undefined && offered.length > 1 && (
        <Choice
          label={t('photo.what')}
          value={shows}
          onChange={setShows}
          options={offered.map((one) => [one, t(`photo.shows.${one}`)])}
        />
      )}
      {shows === 'key' && of.key === undefined && state.keys.length > 0 && (
        <Choice
          label={t('photo.which-key')}
          value={key}
          onChange={setKey}
          options={state.keys.map((one) => [
            one.id,
            t('keys.named', { key: one.id, colour: say(`colour.${one.colour}`) }),
          ])}
        />
      )}
      {shows === 'identity' && <p className={formCss.problem}>{t('photo.identity')}</p>}
      {/* A part has no kind of its own: its name is what tells it apart. */}
      <SpokenWords
        label={t('photo.words')}
        hint={t('photo.words.hint')}
        value={words}
        onChange={setWords}
        optional={shows !== 'other'}
      />
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={formCss.foot}>
        <button type="submit" className={formCss.submit} disabled={busy}>
          {t('photo.keep')}
        </button>
      </div>
    </form>
  )
}
