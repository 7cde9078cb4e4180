import type { SameCodes } from '@shearline/jobfile'
import type { remoteWords as english } from '../en/remote.ts'

/** هل جهاز التحكم الجديد من عائلة الراديو نفسها كالأصلي؟ */
export const remoteWords: SameCodes<typeof english> = {
  'remote.title': 'هل جهاز التحكم الجديد من عائلة الراديو نفسها؟',
  'remote.why':
    'جهاز تحكم براديو آخر يشغّل السيارة ولا تفعل أزراره شيئًا. يكشف ذلك تسجيلان قصيران قبل استهلاكه.',
  'remote.open': 'مقارنة تسجيلي راديو',
  'remote.how':
    'سجّل جهازي التحكم بأي مستقبل عام: المستقبل نفسه، في جلسة واحدة، مع ضغط الزر ثانيتين. تُقاس القيم الفيزيائية فقط. ما يُرسله الجهاز لا يُقرأ ولا يُعرض.',
  'remote.privacy':
    'لا تحتفظ المنصة بأي تسجيل: تزول عيناته حالما تُقاس. تبقى الملفات حيث كتبها مستقبلك؛ احذفها هناك.',
  'remote.close': 'إغلاق',
  'remote.original': 'جهاز التحكم الأصلي',
  'remote.new': 'جهاز التحكم الجديد',
  'remote.pick': 'اختيار تسجيله',
  'remote.pick-again': 'اختيار آخر',
  'remote.pick.hint': '.cu8 أو .cs8 أو .cs16 أو .cf32؛ أو ملفا زوج SigMF كلاهما.',
  'remote.pick.no-samples': 'يصف {name} التسجيل فقط. اختره مع ملف عيّناته (.sigmf-data).',
  'remote.pick.not-recording':
    'ليس {name} تسجيلًا راديويًا. اختر الملف الذي كتبه مستقبِلك، أو ملفي زوج SigMF كليهما.',
  'remote.forget': 'إزالة',
  'remote.measuring': 'يُقاس {name}',
  'remote.measured':
    '{name}، {seconds} عند {rate} عينة في الثانية{centre, select, none {} other {، المركز {centre}}}',
  'remote.failed': 'توقف القياس: {problem}',
  'remote.ask.change': 'قراءته بقيم أخرى',
  'remote.rate': 'العينات في الثانية',
  'remote.rate.unit': 'ألف',
  'remote.centre': 'التردد المركزي',
  'remote.centre.hint': 'بدونه لا يمكن مقارنة الحاملين.',
  'remote.format': 'صيغة العينات',
  'remote.format.cu8': '8 بت، بلا إشارة (cu8)',
  'remote.format.cs8': '8 بت، بإشارة (cs8)',
  'remote.format.cs16': '16 بت (cs16)',
  'remote.format.cs16be': '16 بت، البايت الأكبر أولًا',
  'remote.format.cf32': 'عدد عائم 32 بت (cf32)',
  'remote.format.cf32be': 'عدد عائم 32 بت، البايت الأكبر أولًا',
  'remote.measure': 'قياسه',

  'remote.verdict.same.next': 'يمكن لأزراره أن تعمل بعد تعريفه. الراديو وحده لا يثبت أن السيارة تقبله.',
  'remote.verdict.different.next':
    'لا تستهلكه بعد: على الأرجح لن تفعل أزراره شيئًا في هذه السيارة. قارن أرقام القطع أولًا.',
  'remote.verdict.unsure.next':
    'سجّل الاثنين من جديد: المستقبل نفسه، في جلسة واحدة، عن قرب، مع ضغط الزر ثانيتين.',
  'remote.points.same': 'متوافق',
  'remote.points.unsure': 'لا يحسم',
  'remote.points.different': 'مختلف',
  'remote.reasons': 'الأسباب',
  'remote.drift': 'مدى ضعيف مع أن الخلية جديدة؟',

  'remote.values': 'المقيس',
  'remote.value': 'القيمة',
  'remote.value.carrier': 'الحامل',
  'remote.value.modulation': 'التضمين',
  'remote.value.deviation': 'الإزاحة إلى كل جانب',
  'remote.value.rate': 'الرموز في الثانية',
  'remote.value.pulses': 'النبضات، ميكروثانية',
  'remote.value.gaps': 'الفجوات، ميكروثانية',
  'remote.value.burst': 'الدفعة',
  'remote.value.repeats': 'الدفعات؛ التكرارات',
  'remote.value.width': 'العرض (99 % من القدرة)',
  'remote.value.snr': 'فوق الضجيج',
  'remote.value.clipped': 'تشبّع',
  'remote.modulation.OOK': 'تضمين بالوصل والقطع (OOK)',
  'remote.modulation.2-FSK': 'نغمتان (2-FSK)',
  'remote.modulation.unsure': 'غير واضح',

  'remote.pictures': 'الصور',
  'remote.pictures.content':
    'رُسمت بحيث لا تستطيع أي صورة أن تعيد ما أُرسل: تُثبَّت القمم على مجموعات كاملة من النبضات.',
  'remote.spectrum': 'الطيف أثناء الإرسال',
  'remote.spectrum.key':
    'يمضي التردد إلى اليمين والقوة إلى الأعلى. الخط الرفيع: الهواء والجهاز صامت. المتقطع: الحامل أو النغمتان.',
  'remote.spectrum.apart': 'بينهما بُعد لا يتسع له مقياس واحد: لكل منهما مقياسه.',
  'remote.spectrum.says': '{name}: الحامل {carrier}، العرض {width}، أعلى من الضجيج بـ {snr} dB.',
  'remote.waterfall': 'مخطط الشلال',
  'remote.waterfall.key': 'يمضي الزمن إلى اليمين والتردد إلى الأعلى؛ كلما قويت الإشارة امتلأ اللون.',
  'remote.waterfall.range': '{low} إلى {high}',
  'remote.waterfall.says':
    '{name}: {bursts, plural, zero {بلا دفعات} one {دفعة واحدة} two {دفعتان} few {# دفعات} many {# دفعة} other {# دفعة}} في {seconds} حول {carrier}.',
  'remote.burst': 'دفعة من كل منهما، تبدآن معًا',
  'remote.burst.key': 'يمضي الزمن إلى اليمين والقوة إلى الأعلى. غلاف أطول دفعة؛ أُغلقت الفجوات التي بداخلها.',
  'remote.burst.says': '{name}: طولها {length}.',
  'remote.pulse': 'متوسط نبضة كل منهما، تبدآن معًا',
  'remote.pulse.key': 'يمضي الزمن إلى اليمين والقوة إلى الأعلى. ست عشرة نبضة أو أكثر موضوعة بعضها فوق بعض.',
  'remote.pulse.says': '{name}: متوسط {pulses} نبضة؛ الأطوال المعتادة {lengths} ميكروثانية.',
  'remote.pulse.none': '{name}: لا شيء، لأن النغمتين بلا نبضات أو لأن النبضات قليلة جدًا.',

  'remote.bands': 'المسموح به حيث تسير السيارة',
  'remote.bands.note': 'للعلم فقط؛ القانون المحلي هو الحَكَم، ولا يتوقف عليه أي استنتاج.',
  'remote.region': 'المنطقة',
  'remote.region.europe': 'أوروبا',
  'remote.region.north-america': 'أمريكا الشمالية',
  'remote.region.japan': 'اليابان',
  'remote.region.south-korea': 'كوريا الجنوبية',
  'remote.region.china': 'الصين',
  'remote.region.australia-new-zealand': 'أستراليا ونيوزيلندا',
  'remote.band.usual': 'أجهزة التحكم معتادة هنا',
  'remote.band.limit': 'الحد',
  'remote.band.range': '{low} إلى {high} MHz',
  'remote.band.source': 'المصدر: {source}',
  'remote.band.memory': 'من الذاكرة، لم يُراجَع على مصدر',
  'remote.band.none': 'لا يقع {carrier} في أي نطاق معروف هنا لهذه المنطقة.',
  'remote.band.field': 'عند {carrier} يساوي ذلك {microvolts} µV/m ({decibels} dBµV/m) على بعد 3 m.',

  'remote.keep': 'حفظ النتيجة في المهمة',
  'remote.keep.note': 'الاستنتاج والأسباب والقيم الرئيسة؛ بلا تسجيل وبلا صورة.',
  'remote.key.original': 'الأصلي هو المفتاح',
  'remote.key.new': 'جهاز التحكم الجديد هو المفتاح',
  'remote.record': 'تسجيل النتيجة',
  'remote.recorded': 'سُجِّلت.',

  'fact.remote-compared':
    'راديو {fresh, select, none {جهاز التحكم الجديد} other {المفتاح {fresh}}} مقابل {original, select, none {الأصلي} other {المفتاح {original}}}: {verdict}',
}
