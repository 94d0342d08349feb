import { pathOf, type Run } from '../../../plan';
import { type Check, editRun, type Measurement, type Repair, runName, runPlace, type Source, sentence } from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';

const military: Source = {
  kind: 'published',
  document: 'UFC 4-722-01 (27 Jan 2003), superseded, and VA HVAC design manual (hospitals)',
  section: '4-6.3.1: stainless steel for the entire duct system of dishwashing equipment; 3.12.8: stainless duct',
  confidence: 'read',
};

export const check: Check = {
  id: 'duct-material',
  order: 540,
  title: 'The run is a tight duct of rigid metal',
  group: 'air',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'International Mechanical Code',
    section: '506.4.1 (506.4.2 in 2015 to 2021), Type II ducts: rigid metallic; where they carry moisture, joined and sealed',
    confidence: 'secondary',
  },
  why: 'What condenses must stay inside until it reaches its drain: a joint that leaks drips on ware and ceilings, ribs hold water, and plain steel rusts from within. It is joined to no other duct: exhaust of dishwashing is a system of its own. Stainless steel is what government hospitals and bases call for.',
  measure: (scene) => scene.runs.flatMap((run) => [...measureMaterial(scene, run), measureJoints(scene, run)]),
};

type Material = NonNullable<Run['duct']['material']>;

/** What each is called in a sentence, and whether it is rigid metal. */
const MATERIALS: Readonly<Record<Material, { words: string; isRigidMetal: boolean }>> = {
  galvanized: { words: 'galvanized steel', isRigidMetal: true },
  'galvanized-spiral': { words: 'galvanized spiral duct', isRigidMetal: true },
  stainless: { words: 'stainless steel', isRigidMetal: true },
  aluminum: { words: 'aluminum', isRigidMetal: true },
  pvc: { words: 'PVC', isRigidMetal: false },
  flexible: { words: 'flexible duct', isRigidMetal: false },
};

const commonOf = (placed: PlacedRun) => ({
  subjects: [placed.run.id, placed.run.machine],
  place: runPlace(placed),
  limit: true,
});

/** Rigid metal; where it is, whether it is stainless, which superseded criteria ask for. */
function measureMaterial(scene: Scene, placed: PlacedRun): Measurement[] {
  const { material } = placed.run.duct;
  const [name, common] = [runName(scene, placed), commonOf(placed)];
  const metal = { part: 'metal', ...common };
  if (material === null) {
    const ask = { input: 'material of the duct', path: pathOf(scene.plan, 'runs', placed.run.id, 'duct', 'material') };
    return [{ value: null, ask, say: () => `What is ${name} made of? Rigid metal is asked for.`, ...metal }];
  }
  const { words, isRigidMetal } = MATERIALS[material];
  const repairs = () => (material === 'stainless' ? [] : [takeStainless(placed)]);
  if (!isRigidMetal) {
    const say = () => sentence(`${name} is ${words}; the duct of a dish machine is to be rigid metal. Take stainless steel.`);
    return [{ value: false, say, repairs, ...metal }];
  }
  const isStainless = material === 'stainless';
  return [
    { value: true, say: () => sentence(`${name} is ${words}: rigid metal.`), ...metal },
    {
      part: 'stainless',
      value: isStainless,
      severity: 'watch',
      source: military,
      say: () =>
        sentence(
          isStainless
            ? `${name} is stainless steel from end to end.`
            : `${name} is ${words}; criteria of the government want all of a dish machine’s duct of stainless steel. Take it, or let the local code decide.`,
        ),
      repairs,
      ...common,
    },
  ];
}

const takeStainless = ({ run }: PlacedRun): Repair => ({
  id: 'take-stainless',
  label: () => 'Make the run of stainless steel',
  edit: (draft) =>
    editRun(draft, run.id, ({ duct }) => {
      duct.material = 'stainless';
    }),
});

/** What condenses stays inside only where the joints are tight. */
function measureJoints(scene: Scene, placed: PlacedRun): Measurement {
  const { sealed } = placed.run.duct;
  const name = runName(scene, placed);
  const joints = { part: 'joints', value: sealed, ...commonOf(placed) };
  if (sealed === null) {
    const ask = { input: 'whether the joints of the run are tight', path: pathOf(scene.plan, 'runs', placed.run.id, 'duct', 'sealed') };
    return { ask, say: () => `Are the joints of ${name} tight? What condenses in it must stay inside.`, ...joints };
  }
  const say: Measurement['say'] = () =>
    sentence(
      sealed
        ? `the joints of ${name} are tight: what condenses in it stays inside.`
        : `the joints of ${name} are not tight: what condenses in it drips out of them. Have them sealed.`,
    );
  return { say, repairs: () => (sealed ? [] : [sealJoints(placed)]), ...joints };
}

const sealJoints = ({ run }: PlacedRun): Repair => ({
  id: 'seal-joints',
  label: () => 'Call for tight joints',
  edit: (draft) =>
    editRun(draft, run.id, ({ duct }) => {
      duct.sealed = true;
    }),
});
