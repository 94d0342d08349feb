/** An angle as the document stores it: degrees clockwise, within a full turn either way. */
export function storedDeg(deg: number): number {
  return (Math.abs(deg) > 360 ? deg % 360 : deg) + 0;
}
