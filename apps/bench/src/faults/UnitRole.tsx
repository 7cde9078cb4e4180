import type { Body } from '@shearline/jobfile'
import { useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { RecordForm } from '../job/Part.tsx'
import { t } from '../words/index.ts'

const roles = [
  'engine',
  'transmission',
  'brakes',
  'steering',
  'body',
  'gateway',
  'restraints',
  'instruments',
  'immobiliser',
  'alarm',
  'remote',
] as const

/** Says what a control unit is for, so that codes that name it can be held against what was done to it. */
export function UnitRole({ unit }: { readonly unit: string }) {
  const [role, setRole] = useState<Body<'unit-named'>['role'] | null>(null)
  return (
    <details className={formCss.more}>
      <summary>{t('role.title', { unit })}</summary>
      <RecordForm
        submit={t('record')}
        drafts={() => (role === null ? null : [{ kind: 'unit-named', body: { unit, role } }])}
      >
        <Choice
          label={t('role.choose')}
          hint={t('role.why')}
          value={role}
          onChange={setRole}
          options={roles.map((one) => [one, t(`unit-role.${one}`)])}
        />
      </RecordForm>
    </details>
  )
}
