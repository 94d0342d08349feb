import { pathOf, type Run } from '../../../plan';
import {
  type Check,
  createMessages,
  editRun,
  type Measurement,
  type Name,
  type NoParams,
  nameRun,
  type Repair,
  runPlace,
  type Source,
} from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { sayDuctAsk } from '../figures/support/ductAsks';

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

export interface DuctMaterialMessages {
  'duct-material/unknown': { run: Name };
  'duct-material/rigid-metal': { run: Name; material: Material };
  'duct-material/no-rigid-metal': { run: Name; material: Material };
  'duct-material/stainless': { run: Name };
  'duct-material/not-stainless': { run: Name; material: Material };
  'duct-material/repair-take-stainless': NoParams;
  'duct-material/ask-joints': NoParams;
  'duct-material/joints-unknown': { run: Name };
  'duct-material/joints-tight': { run: Name };
  'duct-material/joints-leak': { run: Name };
  'duct-material/repair-seal-joints': NoParams;
}

const say = createMessages<DuctMaterialMessages>();

const isRigidMetal = (material: Material) => material !== 'pvc' && material !== 'flexible';

const commonOf = (placed: PlacedRun) => ({
  subjects: [placed.run.id, placed.run.machine],
  place: runPlace(placed),
  limit: true,
});

/** Rigid metal; where it is, whether it is stainless, which superseded criteria ask for. */
function measureMaterial(scene: Scene, placed: PlacedRun): Measurement[] {
  const { material } = placed.run.duct;
  const [run, common] = [nameRun(scene, placed), commonOf(placed)];
  const metal = { part: 'metal', ...common };
  if (material === null) {
    const ask = { input: sayDuctAsk('duct/ask-material'), path: pathOf(scene.plan, 'runs', placed.run.id, 'duct', 'material') };
    return [{ value: null, ask, message: say('duct-material/unknown', { run }), ...metal }];
  }
  const repairs = { ids: ['take-stainless'], find: () => [takeStainless(placed)] };
  if (!isRigidMetal(material))
    return [{ value: false, message: say('duct-material/no-rigid-metal', { run, material }), repairs, ...metal }];
  const isStainless = material === 'stainless';
  return [
    { value: true, message: say('duct-material/rigid-metal', { run, material }), ...metal },
    {
      part: 'stainless',
      value: isStainless,
      severity: 'watch',
      source: military,
      message: isStainless ? say('duct-material/stainless', { run }) : say('duct-material/not-stainless', { run, material }),
      ...(isStainless ? {} : { repairs }),
      ...common,
    },
  ];
}

const takeStainless = ({ run }: PlacedRun): Repair => ({
  id: 'take-stainless',
  label: say('duct-material/repair-take-stainless'),
  edit: (draft) =>
    editRun(draft, run.id, ({ duct }) => {
      duct.material = 'stainless';
    }),
});

/** What condenses stays inside only where the joints are tight. */
function measureJoints(scene: Scene, placed: PlacedRun): Measurement {
  const { sealed } = placed.run.duct;
  const run = nameRun(scene, placed);
  const joints = { part: 'joints', value: sealed, ...commonOf(placed) };
  if (sealed === null) {
    const ask = { input: say('duct-material/ask-joints'), path: pathOf(scene.plan, 'runs', placed.run.id, 'duct', 'sealed') };
    return { ask, message: say('duct-material/joints-unknown', { run }), ...joints };
  }
  if (sealed) return { message: say('duct-material/joints-tight', { run }), ...joints };
  const repairs = { ids: ['seal-joints'], find: () => [sealJoints(placed)] };
  return { message: say('duct-material/joints-leak', { run }), repairs, ...joints };
}

const sealJoints = ({ run }: PlacedRun): Repair => ({
  id: 'seal-joints',
  label: say('duct-material/repair-seal-joints'),
  edit: (draft) =>
    editRun(draft, run.id, ({ duct }) => {
      duct.sealed = true;
    }),
});
