import type { SameCodes } from '@shearline/jobfile'
import type { offlineWords as english } from '../en/offline.ts'

/** What is kept without a connection, clocks that differ, and newer versions of the bench. */
export const offlineWords: SameCodes<typeof english> = {
  'clock.ahead':
    'El reloj de este dispositivo va {minutes, plural, one {# minuto} other {# minutos}} adelantado respecto al del servidor. Las horas del registro lo siguen: ponerlo en hora cuando se pueda.',
  'clock.behind':
    'El reloj de este dispositivo va {minutes, plural, one {# minuto} other {# minutos}} atrasado respecto al del servidor. Las horas del registro lo siguen: ponerlo en hora cuando se pueda.',
  'clock.other-ahead':
    'El reloj de «{name}» va {minutes, plural, one {# minuto} other {# minutos}} adelantado. Sus anotaciones figuran en el registro más tarde de lo que se hicieron.',
  'renewal.ready':
    'Hay una versión nueva lista. Se puede recargar en cualquier momento; todo lo registrado se conserva.',
  'renewal.job-open':
    'Hay un trabajo abierto en otra ventana de este navegador. Cerrarlo allí primero y recargar después.',
  'renewal.reload': 'Recargar',
  'board.unsent':
    '{count, plural, one {# anotación guardada aquí, sin enviar} other {# anotaciones guardadas aquí, sin enviar}}',
  'sending.reading': 'Mirando qué hay guardado',
  'sending.full.reading': 'Mirando qué hay guardado en este dispositivo y qué está enviado.',
  'sending.upload': 'Enviando {name}: {sent} de {whole}',
  'device.whole': 'Todo el banco está guardado en este dispositivo: se abre y funciona sin conexión.',
  'device.not-whole':
    'El banco aún no está guardado entero aquí. Mantener la conexión hasta que esta línea lo diga.',
  'device.room': 'El banco ocupa {used} en este dispositivo.',
  'device.droppable':
    'Si falta espacio: las grabaciones ya enviadas se pueden quitar de aquí. Las anotaciones y los documentos se quedan.',
  'device.drop-sent': 'Quitar las grabaciones enviadas ({size})',
}
