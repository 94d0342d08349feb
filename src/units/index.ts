export { formatAngle, parseAngle } from './angle';
export { formatNumber, UNIT_SPACE } from './formatNumber';
export { type Formatter, formatArea, formatterFor, type Units } from './formatter';
export { formatLength, MM_PER_FOOT, MM_PER_INCH, parseLength } from './length';
export { formatQuantity, parseQuantity, shownUnit } from './quantity';
export { roundToSum } from './roundToSum';
export { formatSlope, parseSlope } from './slope';
export { formatTemperature, parseTemperature } from './temperature';
export { convert, fromSI, type QuantityKind, toSI, UNITS, type Unit } from './unitTable';
