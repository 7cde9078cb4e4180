import type { Body } from '@shearline/jobfile'
import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { useDesk } from '../job/desk.ts'
import { Facts } from '../job/Facts.tsx'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'

type Class = Body<'retention-set'>['classes'][number]['class']

/** Common practice, no source, unless the row says otherwise (practice notes 3.5): check your law. */
const usualDays: readonly (readonly [Class, number])[] = [
  ['invoice', 2190],
  ['authority-record', 1095],
  ['identity-image', 30],
  ['photo', 365],
  ['recording', 365],
  ['vehicle-secret', 30],
]

/** What is deleted when, class by class. The bench proposes; local law decides. */
export function RetentionPart() {
  const { retention } = useDesk().state
  const [fresh, renew] = useFresh()
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
      <RetentionForm key={fresh} onDone={renew} />
    </Part>
  )
}

function RetentionForm({ onDone }: { readonly onDone: () => void }) {
  const [days, setDays] = useState<Readonly<Record<string, number>>>(Object.fromEntries(usualDays))
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => [
        {
          kind: 'retention-set',
          body: {
            pack: t('retention.pack'),
            classes: usualDays.map(([name, usual]) => ({
              class: name,
              days: days[name] ?? usual,
              source: t('retention.source'),
            })),
          },
        },
      ]}
    >
      <p>{t('retention.law')}</p>
      {usualDays.map(([name, usual]) => (
        <Amount
          key={name}
          label={t('retention.class', { name: say(`retention.${name}`) })}
          value={days[name] ?? usual}
          onChange={(value) => setDays({ ...days, [name]: value ?? usual })}
          step={30}
          most={36500}
        />
      ))}
    </RecordForm>
  )
}
