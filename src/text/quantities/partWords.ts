/** What one of several readings of a figure is called beside its title: the rule or the case it is worked out by. */
export const partWords = (part: string): string => WORDS[part] ?? part.replaceAll('-', ' ');

const WORDS: Readonly<Record<string, string>> = {
  ipc: 'International code',
  upc: 'Uniform code',
  'upc-intermittent': 'Uniform code, intermittent',
  chicago: 'Chicago',
  'municipal-old': 'old city code',
  length: 'length of hood',
  face: 'face of hood',
  'area-least': 'area, least',
  'area-most': 'area, most',
  'older-area': 'area, code of 2000',
  'older-perimeter': 'edge, code of 2000',
  capture: 'capture (design)',
};
