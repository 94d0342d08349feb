import { loadEnglish } from '../../text';

/** Their formulas are a part of the page that it can do without before they are looked at; what they say needs its words. */
export const fetchFigures = async () => {
  const [{ Figures }] = await Promise.all([import('./Figures'), loadEnglish()]);
  return Figures;
};
