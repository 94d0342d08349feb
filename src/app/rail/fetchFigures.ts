/** Figures bring every formula along; cards do without them at first. */
export const fetchFigures = async () => (await import('./Figures')).Figures;
