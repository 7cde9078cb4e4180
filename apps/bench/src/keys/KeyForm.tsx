import type { JobKey } from '@shearline/jobfile'
import { applicableFunctions, type KeyFunction } from '@shearline/keywork'
import { useState } from 'react'
import { SpokenWords } from '../capture/SpokenWords.tsx'
import { Choice, YesNo } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Several } from '../form/Several.tsx'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { RecordForm } from '../job/Part.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { freeLetter } from './free-letter.ts'
import css from './keys.module.css'

const forms = ['blade', 'transponder', 'remote-head', 'flip', 'proximity', 'card'] as const
const makes = ['unknown', 'genuine', 'aftermarket', 'renewed'] as const
const colours = ['brass', 'slate', 'moss', 'rust', 'sky', 'plum', 'sand', 'ink'] as const

/** Labels a key: a letter and a colour the bench proposes, and how the key is built. */
export function KeyForm({
  origin,
  onDone,
}: {
  readonly origin: JobKey['origin']
  readonly onDone: () => void
}) {
  const { state } = useDesk()
  const used = state.keys.map((key) => key.colour)
  const last = state.keys.at(-1)
  const [key, setKey] = useState(() => freeLetter(state.keys.map((one) => one.id)))
  const [colour, setColour] = useState<JobKey['colour'] | null>(
    colours.find((one) => !used.includes(one)) ?? 'brass',
  )
  const [form, setForm] = useState<JobKey['form'] | null>(last?.form ?? null)
  const [make, setMake] = useState<JobKey['make'] | null>('unknown')
  const [onBench, setOnBench] = useState<boolean | null>(true)
  const [lacks, setLacks] = useState<readonly KeyFunction[]>(last?.lacks ?? [])
  const [cloneOf, setCloneOf] = useState<string | null>('')
  const [note, setNote] = useState('')
  const [shownAs, setShownAs] = useState('')
  const offered = form === null ? [] : applicableFunctions({ form, lacks: [] })
  return (
    <RecordForm
      submit={t('keys.label', { key })}
      onDone={onDone}
      drafts={() =>
        form === null || colour === null || onBench === null
          ? null
          : [
              {
                kind: 'key-labelled',
                body: {
                  key,
                  origin,
                  form,
                  make: make ?? 'unknown',
                  colour,
                  onBench,
                  cloneOf: cloneOf === '' || cloneOf === null ? null : cloneOf,
                  lacks: lacks.filter((one) => offered.includes(one)),
                  ...(note.trim() === '' ? {} : { note }),
                  ...(shownAs.trim() === '' ? {} : { shownAs }),
                },
              },
            ]
      }
    >
      <Choice
        label={t('keys.form')}
        value={form}
        onChange={setForm}
        options={forms.map((one) => [one, say(`form.${one}`)])}
      />
      <div className={formCss.row}>
        <Words
          label={t('keys.letter')}
          hint={t('keys.letter.hint')}
          value={key}
          onChange={(value) => setKey(value.toUpperCase())}
          maxLength={2}
          mono
        />
      </div>
      <Choice
        label={t('keys.colour')}
        value={colour}
        onChange={setColour}
        options={colours.map((one) => [
          one,
          <span key={one} className={css.swatch} data-colour={one}>
            {say(`colour.${one}`)}
          </span>,
        ])}
      />
      {origin === 'existing' && <YesNo label={t('keys.here')} value={onBench} onChange={setOnBench} />}
      <details className={formCss.more}>
        <summary>{t('keys.more')}</summary>
        <Choice
          label={t('keys.make')}
          value={make}
          onChange={setMake}
          options={makes.map((one) => [one, say(`make.${one}`)])}
        />
        {state.keys.length > 0 && (
          <Choice
            label={t('keys.clone')}
            hint={t('keys.clone.hint')}
            value={cloneOf}
            onChange={setCloneOf}
            options={[
              ['', t('no')],
              ...state.keys.map((one) => [one.id, t('keys.clone-of', { key: one.id })] as const),
            ]}
          />
        )}
        {offered.length > 0 && (
          <Several
            label={t('keys.lacks')}
            hint={t('keys.lacks.hint')}
            value={lacks}
            onChange={setLacks}
            options={offered.map((one) => [one, say(`function.${one}`)])}
          />
        )}
        <Words
          label={t('keys.shown-as')}
          hint={t('keys.shown-as.hint')}
          value={shownAs}
          onChange={setShownAs}
          maxLength={60}
          optional
        />
        <SpokenWords
          label={t('keys.note')}
          hint={t('keys.note.hint')}
          value={note}
          onChange={setNote}
          optional
        />
      </details>
    </RecordForm>
  )
}
