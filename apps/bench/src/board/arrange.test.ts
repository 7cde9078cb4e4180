import type { JobSummary } from '@shearline/jobfile'
import { describe, expect, it } from 'vitest'
import { arrange, matching } from './arrange.ts'

const job = (title: string, lastAt: string, more: Partial<JobSummary> = {}): JobSummary => ({
  job: title,
  title,
  place: 'Harbour',
  zone: 'Europe/Lisbon',
  demo: false,
  vehicle: 'Van',
  vinTail: '042788',
  openedAt: lastAt,
  lastAt,
  tumblers: [],
  inLine: false,
  next: { code: 'vin-missing', params: {}, chapter: 'arrival', tumbler: 'identity' },
  ...more,
})

describe('the board', () => {
  it('shows the day’s jobs first, open ones before those in line, the latest first', () => {
    const jobs = [
      job('early', '2026-11-28T08:00:00.000Z'),
      job('ready', '2026-11-28T11:00:00.000Z', { inLine: true }),
      job('yesterday', '2026-11-27T23:59:00.000Z'),
      job('late', '2026-11-28T10:00:00.000Z'),
    ]
    const { day, earlier } = arrange(jobs, '2026-11-28')
    expect(day.map(({ title }) => title)).toEqual(['late', 'early', 'ready'])
    expect(earlier.map(({ title }) => title)).toEqual(['yesterday'])
  })

  it('counts a day by the zone of the job', () => {
    const away = job('away', '2026-11-27T13:00:00.000Z', { zone: 'Pacific/Auckland' })
    expect(arrange([away], '2026-11-28').day).toHaveLength(1)
  })

  it('finds a job by any words in any order and by the end of its VIN', () => {
    const jobs = [job('Spare key', '2026-11-28T08:00:00.000Z'), job('Lost', '2026-11-28T08:00:00.000Z')]
    expect(matching(jobs, 'KEY harbour').map(({ title }) => title)).toEqual(['Spare key'])
    expect(matching(jobs, '42788')).toHaveLength(2)
    expect(matching(jobs, 'nothing')).toEqual([])
  })
})
