/** A rectangle of paper, mm. */
export interface Area {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Frame of a sheet: 20 mm on the binding edge, 10 mm elsewhere (ISO 5457:1999 as restated elsewhere). */
export function frameOf(widthMm: number, heightMm: number): Area {
  return { x: 20, y: 10, width: widthMm - 30, height: heightMm - 20 };
}
