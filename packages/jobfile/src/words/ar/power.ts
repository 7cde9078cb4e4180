import type { SameCodes } from '../catalogues.ts'
import type { powerWords as english } from '../en/power.ts'

/** هل تصمد تغذية السيارة: الاستنتاج وسببه والتحذيرات والمراقبة وما يبقى بعد العمل. */
export const powerWords: SameCodes<typeof english> = {
  'power-verdict.go': 'ابدأ: البطارية تصمد للخطة.',
  'power-verdict.connect-supply': 'وصّل أولًا مصدرًا لا يقل عن {amperes} A.',
  'power-verdict.stop': 'توقف: لا تبدأ.',

  'power-reason.holds':
    'احتمال الهبوط دون {floorVolts}: {chancePercent} %. الأدنى المتوقع نحو {lowestVolts}.',
  'power-reason.holds-with-supply':
    'مع المصدر يكون احتمال الهبوط دون {floorVolts} هو {chancePercent} %. الأدنى المتوقع نحو {lowestVolts}.',
  'power-reason.crosses-floor':
    'على ما وُصف يكون احتمال الهبوط دون {floorVolts} هو {chancePercent} %؛ المقبول {acceptedPercent} %.',
  'power-reason.supply-too-small': 'المصدر الموصوف لا يكفي.',
  'power-reason.supply-volts-too-low': 'المصدر مضبوط دون الحد الأدنى.',
  'power-reason.no-supply-enough':
    'لا مصدر حتى 200 A يحافظ على الحد الأدنى. راجع الحد، أو بدّل البطارية أو اشحنها أولًا.',
  'power-reason.known-bad': 'يُعرف أن البطارية سيئة. اعمل من بطارية مساعدة، أو ركّب جديدة.',
  'power-reason.dead-cell':
    '{restVolts} هو ما يبقى حين تموت خلية. اختبر البطارية تحت الحمل، أو اشحنها وحدها، أو استعمل بطارية مساعدة.',
  'power-reason.not-twelve-volts':
    '{restVolts} ليس لبطارية 12 V في السكون. أطفئ المحرك والشواحن ثم اقرأ مرة أخرى.',
  'power-reason.frozen':
    'عند {celsius} °C وهذا الشحن يكون الحمض متجمدًا. لا تشحنها ولا تساعدها ولا تحمّلها: دعها تذوب أولًا.',

  'power-warning.rest-volts-missing':
    'من دون الفولت في السكون قد يكون الشحن أي شيء. اقرأه عند القطبين قبل تشغيل أي شيء.',
  'power-warning.rested-too-short':
    'لم يطل سكونها: قد تكون القراءة أعلى من الواقع. اعتمد الطرف الأدنى من النطاق.',
  'power-warning.hours-at-rest-missing':
    'لا يُعرف كم سكنت: قد تكون القراءة أعلى من الواقع. اسأل متى سارت السيارة آخر مرة.',
  'power-warning.above-full':
    '{restVolts} أكثر مما تُظهره هذه البطارية في السكون. تأكد من أن لا شيء يشحنها، واقرأ ملصقها.',
  'power-warning.deeply-discharged': '{restVolts} دون كل جدول: فارغة وربما متضررة. اختبرها قبل أن تثق بها.',
  'power-warning.kind-missing': 'نوع البطارية غير معروف: كل الأنواع في النطاق. اقرأ ملصقها.',
  'power-warning.capacity-missing': 'السعة غير معروفة وأُخذت واسعة. اقرأ ملصقها.',
  'power-warning.age-missing': 'العمر غير معروف: من الجديدة إلى تسع سنوات في النطاق.',
  'power-warning.temperature-missing': 'درجة الحرارة غير معروفة: من -10 إلى 30 °C في النطاق.',
  'power-warning.second-rate-unusable': 'المعدلان على الملصق متناقضان؛ تُرك أحدهما.',
  'power-warning.step-load-missing': 'حمل «{step}» غير معروف: أُخذ من 5 إلى 40 A. اذكر ما هو مشغَّل.',
  'power-warning.may-be-frozen':
    'عند الطرف الأدنى من النطاق قد يكون الحمض متجمدًا. انظر إلى العلبة؛ لا توصّل شيئًا ببطارية متجمدة.',
  'power-warning.lithium-below-zero':
    'دون 0 °C قد ترفض بطارية الليثيوم الشحن أو تفصل نفسها. دفّئها، أو دع المصدر يحمل كل شيء.',
  'power-warning.charger-not-supply':
    'الشاحن ليس مصدر تغذية: يهبط إلى شحن الصيانة ويدع الجهد ينخفض. تياره لا يُعوَّل عليه.',
  'power-warning.supply-amperes-missing': 'تيار المصدر غير معروف: أُخذ من 5 إلى 30 A. اقرأ ملصقه.',
  'power-warning.support-writes': 'تصمد من دونه؛ والممارسة الشائعة مع ذلك توصيل مصدر قبل أول كتابة.',
  'power-warning.clamp-to-chassis':
    'مع مراقبة البطارية يوضع الملقط السالب على الهيكل أو أرضي المحرك، لا على القطب.',
  'power-warning.setting-overruled': 'تعليمات صانع المركبة تعلو على الإعداد.',
  'power-warning.floor-above-target': 'الهدف دون الحد الأدنى: يُؤخذ الحد الأدنى هدفًا.',
  'power-warning.start-doubtful':
    'بعد العمل تشتغل السيارة في {chancePercent} % فقط من الممكن. اشحن قبل المغادرة، أو احتفظ بجهاز بدء تشغيل قريب.',

  'power-level.steady': 'ثابت',
  'power-level.falling': 'هابط: لن يدوم إلى نهاية الخطة',
  'power-level.amber': 'دون الحد الأدنى',
  'power-level.stop': 'توقف الآن',

  'power-watch.no-readings': 'لا قراءة بعد: هذا هو التوقع.',
  'power-watch.readings-left-out': 'بعض القراءات ليست فولتًا أو أوقاتًا صالحة فتُركت. راجع المقياس.',
  'power-watch.does-not-fit': 'لا بطارية كالموصوفة تفسر هذه القراءات. شيء آخر يسحب تيارًا: انظر قبل المتابعة.',
  'power-watch.plan-overrun': 'تجاوز العمل نهاية الخطة؛ يُفترض استمرار حملها الأخير.',

  'power-start.starts': 'ستشتغل',
  'power-start.doubtful': 'قد لا تشتغل: اشحنها، أو احتفظ بجهاز بدء تشغيل قريب',
  'power-start.does-not-start': 'لن تشتغل وهي على هذه الحال',
  'power-start.unknown': 'غير معروف: اقرأ الفولت بعد فصل المصدر',

  'power-drain.asleep': 'نائمة',
  'power-drain.waiting': 'لم تنم بعد. اقرأ مرة أخرى حتى 60 دقيقة بعد الإقفال',
  'power-drain.awake': 'هناك ما يبقيها مستيقظة. افصل المقبس، وأبعد المفاتيح، وأغلق كل شيء، واقرأ مرة أخرى',
  'power-drain.not-measured': 'لم يُقس',

  'power-cell.good': 'جيدة',
  'power-cell.replace-soon': 'استبدلها قريبًا',
  'power-cell.replace': 'استبدلها',
  'power-cell.test-loaded': 'لم يثبت: اقرأها أثناء إرسال جهاز التحكم',
  'power-cell.read-again': 'لا يمكن: راجع المدى والقطبية وعدد الخلايا',

  'power-meter.empty': 'سطر فارغ',
  'power-meter.no-number': 'سطر بلا رقم',
  'power-meter.several-numbers': 'سطر فيه عدة أرقام',
  'power-meter.overload': 'خارج مداه',
  'power-meter.alternating': 'تيار متناوب: حوّله إلى المستمر',
  'power-meter.other-unit': 'كمية غير الفولت',
}
