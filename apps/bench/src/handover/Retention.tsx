import { neutralPack, retentionPackOf, retentionSetOf } from '@shearline/jobfile'
import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { useDesk } from '../job/desk.ts'
import { Facts } from '../job/Facts.tsx'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { packLabelWords, packText } from '../policy/pack-text.ts'
import { packNamed, usePacks } from '../policy/usePacks.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'

/** What is deleted when, class by class, as the job's rules have it. The bench proposes; local law decides. */
export function RetentionPart() {
  const { retention, policy } = useDesk().state
  const { packs, usual } = usePacks()
  const [fresh, renew] = useFresh()
  const pack = packNamed(packs, policy?.pack) ?? packNamed(packs, usual) ?? neutralPack
  const body = retentionSetOf(retentionPackOf(pack))
  return (
    <Part
      title={t('retention.title')}
      need="retention-not-set"
      settled={retention !== null}
      more={t('retention.again')}
      about={
        retention !== null && (
          <Facts
            rows={retention.classes.map(
              (one) => [say(`retention.${one.class}`), t('retention.days', { days: one.days })] as const,
            )}
          />
        )
      }
    >
      <RetentionForm key={`${fresh} ${body.pack}`} body={body} onDone={renew} />
    </Part>
  )
}

function RetentionForm({
  body,
  onDone,
}: {
  readonly body: ReturnType<typeof retentionSetOf>
  readonly onDone: () => void
}) {
  const [days, setDays] = useState<Readonly<Record<string, number>>>({})
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => [
        {
          kind: 'retention-set',
          body: {
            pack: body.pack,
            // A period somebody changed here no longer comes from the pack's source.
            classes: body.classes.map((one) => {
              const own = days[one.class] ?? one.days
              return own === one.days ? one : { ...one, days: own, source: t('retention.changed') }
            }),
          },
        },
      ]}
    >
      <p>{t('retention.law')}</p>
      <p>{t('custody.pack', { pack: packLabelWords(body.pack) })}</p>
      {body.classes.map((one) => (
        <Amount
          key={one.class}
          label={t('retention.class', { name: say(`retention.${one.class}`) })}
          hint={packText(one.source)}
          value={days[one.class] ?? one.days}
          onChange={(value) => setDays({ ...days, [one.class]: value ?? one.days })}
          step={30}
          most={36500}
        />
      ))}
    </RecordForm>
  )
}
