/** Spellings of units. Data only. `lbs` and `#` are pressure or weight by their neighbours (refined in number.ts). */
import type { Unit } from '../../server/core/units.ts';

export const unitWords: readonly (readonly [string, Unit])[] = [
  ['psi|p.s.i.|p.s.i|lbs psi|lbs. psi|lb/sq in|lbs/sq in|lb per sq in|psig|pounds per square inch|p s i|pis|psis', 'psi'],
  ['kpa|kilopascal|kilopascals|kpas|kilo pascal|k pa', 'kPa'],
  ['bar|bars|barg', 'bar'],
  ['kg/cm2|kg/cm|kgf/cm2|kilo per cm|kg per cm2|kg/cm²', 'kg/cm2'],
  ['inhg|in hg|inches of mercury', 'inHg'],
  ['mbar|millibar|millibars|hpa', 'mbar'],
  ['in|inch|inches|"|”|″|ins|in.|inchs|inche|\'\'', 'in'],
  ['ft|feet|foot|\'', 'ft'],
  ['mm|millimetre|millimetres|millimeter|millimeters|mil|mils|mills', 'mm'],
  ['cm|centimetre|centimetres|centimeter|centimeters|cms|centi', 'cm'],
  ['metre|metres|meter|meters|m', 'm'],
  ['mi|mile|miles', 'mi'],
  ['km|kms|kilometre|kilometres|kilometers|kilometer', 'km'],
  ['deg|degree|degrees|°|degs', 'deg'],
  ['arcmin|minutes of arc|arc minutes|arc min|mins of arc|\u2032', 'arcmin'],
  ['v|volt|volts|vdc|v dc', 'V'],
  ['mv|millivolt|millivolts', 'mV'],
  ['a|amp|amps|ampere|amperes', 'A'],
  ['ohm|ohms|Ω', 'ohm'],
  ['milliohm|milliohms|mohm', 'mohm'],
  ['f|°f|deg f|degrees f|fahrenheit|degrees fahrenheit|degf', 'F'],
  ['c|°c|deg c|degrees c|celsius|degrees celsius|centigrade|degc', 'C'],
  ['gal|gallon|gallons|gals', 'gal'],
  ['qt|quart|quarts', 'qt'],
  ['pint|pints|pt', 'pint'],
  ['cup|cups|cupful', 'cup'],
  ['oz|ounce|ounces|fl oz', 'fl oz'],
  ['litre|litres|liter|liters|l', 'L'],
  ['ml|millilitre|millilitres|mls|cc', 'ml'],
  ['lb|lbs|pound|pounds|#|lb.|lbs.', 'lb'],
  ['kg|kgs|kilo|kilos|kilograms|kilogram', 'kg'],
  ['ton|tons|tonne|tonnes', 't'],
  ['ft lb|ft lbs|ft-lb|ft-lbs|ftlb|ftlbs|foot pounds|foot pound|lb ft|lb-ft|lbft|lbf ft|pound feet|lbs ft', 'lbf ft'],
  ['in lb|in lbs|in-lb|in-lbs|inch pounds', 'lbf in'],
  ['nm|n m|newton metres|newton meters|newton metre', 'N m'],
  ['s|sec|secs|second|seconds|sec.', 's'],
  ['min|mins|minute|minutes|minuts|min.|minits|minite|minites', 'min'],
  ['h|hr|hrs|hour|hours|hr.|hrs.|houre|hours\'', 'h'],
  ['day|days', 'd'],
  ['week|weeks|wk|wks', 'week'],
  ['month|months|mo|mths', 'month'],
  ['year|years|yr|yrs', 'year'],
  ['cfm|cubic feet per minute', 'cfm'],
  ['l/min|lpm|litres a minute|litres per minute|litre per minute|liters per minute', 'L/min'],
  ['%|percent|per cent|pct', '%'],
  ['turn|turns|revs|rev', 'turn'],
  ['flat|flats', 'count'],
  ['hz', 'Hz'],
  ['psi/min|psi a minute|psi per minute|psi per min|psi a min|lbs a minute', 'psi/min'],
  ['kpa/min|kpa a minute|kpa per minute', 'kPa/min'],
];
/** Units that a number may not take from a bare letter when a word could be meant: only when glued to the number. */
export const gluedOnly: ReadonlySet<string> = new Set(['a', 'c', 'f', 's', 'h', 'l', 'm', 'v', 'in', 'mo', 'mi', 'ft', 'pt', 't', 'flat', 'flats', 'rev', 'mil', 'mills', 'p', 'pis']);
/** Of those, the ones that may also stand apart when they directly follow a number and no place follows them. */
export const looseAfterNumber: ReadonlySet<string> = new Set(['a', 'v', 'in', 'mi', 'ft', 'f', 'c', 'h', 'flat', 'flats', 'rev', 'pt', 'm', 'mil', 's']);

export const numberWords: Readonly<Record<string, number>> = {
  zero: 0, nought: 0, oh: 0, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11, twelve: 12, thirteen: 13, fourteen: 14, fifteen: 15, sixteen: 16, seventeen: 17, eighteen: 18, nineteen: 19, fourty: 40,
  twenty: 20, thirty: 30, forty: 40, fifty: 50, sixty: 60, seventy: 70, eighty: 80, ninety: 90, hundred: 100, thousand: 1000,
};
export const fractionWords: Readonly<Record<string, number>> = {
  half: 1 / 2, quarter: 1 / 4, quarters: 1 / 4, third: 1 / 3, thirds: 1 / 3, eighth: 1 / 8, eighths: 1 / 8, sixteenth: 1 / 16, sixteenths: 1 / 16, 'thirty second': 1 / 32, 'thirty seconds': 1 / 32, 'thirty-second': 1 / 32, 'thirty-seconds': 1 / 32, 'sixty-fourth': 1 / 64,
};
