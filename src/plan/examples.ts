/** An example room that ships with the program: `public/examples/<name>.rackway.json`. Places and people are invented. */
export interface Example {
  name: string;
  title: string;
  /** What it shows, in one line. */
  story: string;
}

/** In the order of the start page. */
export const EXAMPLES: readonly Example[] = [
  { name: 'school-corner', title: 'School kitchen', story: 'A corner line under its hood, and nothing wrong with it.' },
  { name: 'cafe-straight', title: 'Café', story: 'A straight line with five faults, each of another kind.' },
  { name: 'care-home-direct-vent', title: 'Care home', story: 'A direct-vent corner whose run is two elbows too long.' },
  { name: 'hotel-heat-recovery', title: 'Hotel', story: 'A heat-recovery line that needs no hood; its ceiling is still to be measured.' },
];
