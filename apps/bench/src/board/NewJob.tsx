import { type Language, languages, neutralPack, packChosen } from '@shearline/jobfile'
import { type FormEvent, useEffect, useRef, useState } from 'react'
import { go } from '../app/route.ts'
import { ownDevice, renameDevice } from '../device/self.ts'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { everyPack } from '../policy/kept-packs.ts'
import { packNamed } from '../policy/usePacks.ts'
import { keepFacts } from '../sync/write.ts'
import { say } from '../words/engine.ts'
import { language, t } from '../words/index.ts'
import { ownZone } from '../words/instants.ts'
import { ownNames } from '../words/languages.ts'
import { problemWords } from '../words/problem.ts'
import css from './board.module.css'
import { useKeptDraft } from './kept-draft.ts'

const works = ['add-a-key', 'replace-keys', 'all-keys-lost'] as const
const customers = ['private', 'trade', 'fleet'] as const

/** Opens a job: the few words that make it findable, kept on this device before anything is sent. */
export default function NewJob() {
  const [draft, change] = useKeptDraft({
    title: '',
    vehicle: '',
    place: '',
    work: '',
    customer: '',
    spoken: language() as string,
  })
  const { title, vehicle, place } = draft
  const work = works.find((one) => one === draft.work) ?? null
  const customer = customers.find((one) => one === draft.customer) ?? null
  const spoken: Language = languages.find((one) => one === draft.spoken) ?? language()
  const [by, setBy] = useState<string | null>(null)
  const [problem, setProblem] = useState('')
  // A second tap before the first one is through would open the job twice.
  const opening = useRef(false)
  const zone = ownZone()

  useEffect(() => {
    ownDevice().then(
      (self) => setBy((typed) => typed ?? self.by),
      (error: unknown) => setProblem(problemWords(error)),
    )
  }, [])

  const open = async (event: FormEvent) => {
    event.preventDefault()
    if (work === null || customer === null || opening.current) return
    opening.current = true
    try {
      await renameDevice({ by: (by ?? '').trim() })
      const job = `job-${crypto.randomUUID().slice(0, 13)}`
      const body = { title, place, zone, vehicle, work, customer, language: spoken }
      const { packs, usual } = await everyPack()
      const pack = packNamed(packs, usual) ?? neutralPack
      await keepFacts(job, [
        { kind: 'job-opened', body },
        { kind: 'policy-answered', body: packChosen(pack, customer) },
      ])
      go({ page: 'job', job })
    } catch (error) {
      opening.current = false
      setProblem(problemWords(error))
    }
  }

  return (
    <form className={css.form} onSubmit={(event) => void open(event)}>
      <h1 className={css.title}>{t('new.title')}</h1>
      <Words
        label={t('new.name')}
        hint={t('new.name.hint')}
        value={title}
        onChange={(title) => change({ title })}
      />
      <Words
        label={t('new.vehicle')}
        hint={t('new.vehicle.hint')}
        value={vehicle}
        onChange={(vehicle) => change({ vehicle })}
      />
      <Words
        label={t('new.place')}
        hint={t('new.place.hint', { zone })}
        value={place}
        onChange={(place) => change({ place })}
      />
      <Choice
        label={t('new.work')}
        value={work}
        onChange={(work) => change({ work })}
        options={works.map((one) => [one, say(`work.${one}`)])}
      />
      <Choice
        label={t('new.customer')}
        value={customer}
        onChange={(customer) => change({ customer })}
        options={customers.map((one) => [one, say(`customer.${one}`)])}
      />
      <Choice
        label={t('new.language')}
        hint={t('new.language.hint')}
        value={spoken}
        onChange={(spoken) => change({ spoken })}
        options={languages.map((one) => [one, ownNames[one]])}
      />
      <Words label={t('device.by')} hint={t('device.by.hint')} value={by ?? ''} onChange={setBy} />
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <button type="submit" className={css.newJob}>
        {t('new.open')}
      </button>
    </form>
  )
}
