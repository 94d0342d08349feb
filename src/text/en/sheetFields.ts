import type { PlanField } from '../../plan';
import { choice, entry, type FieldWording, titled } from '../fieldWords';

/** The words of a machine's data sheet: its fields in a plan. */
export const SHEET_FIELDS: FieldWording<Extract<PlanField, `sheets.${string}`>> = {
  'sheets.name': entry('Name of the machine'),
  'sheets.summary': titled('Summary', 'what makes it different in the room'),
  'sheets.width': entry('Footprint, left to right'),
  'sheets.depth': entry('Footprint, back to front'),
  'sheets.height': titled('Height', 'top of the machine with its doors shut'),

  'sheets.doors.left': choice('Door at the left'),
  'sheets.doors.right': choice('Door at the right'),
  'sheets.doors.front': choice('Door at the front'),
  'sheets.doors.back': choice('Door at the back'),

  'sheets.rackLine.left': titled('Rack line at the left', 'from the back edge'),
  'sheets.rackLine.right': titled('Rack line at the right', 'from the back edge'),
  'sheets.rackLine.front': titled('Rack line at the front', 'from the left edge'),

  'sheets.deckHeight': entry('Rack track above the floor'),
  'sheets.clearOpening': titled('Door opening', 'its clear height'),
  'sheets.doorLiftHeight': titled('Top of the open doors', 'above the floor'),

  'sheets.joint.maxGap': titled('Widest gap', 'between table and machine, as silicone seals it'),
  'sheets.joint.maxOffset': titled('Largest offset', 'of the rack centre lines, sideways'),
  'sheets.joint.maxAngleDeg': titled('Largest angle', 'off square'),
  'sheets.joint.maxDeckStep': titled('Largest step', 'between the table deck and the track'),

  'sheets.controls.name': titled('Name', 'what people call this position'),
  'sheets.controls.side': entry('Side'),
  'sheets.controls.from': titled('Begins along its side', 'from the left edge on front and back, from the back edge on left and right'),
  'sheets.controls.to': titled('Ends along its side', 'from the same edge'),
  'sheets.controls.zFrom': titled('Lower edge', 'of the controls above the floor'),
  'sheets.controls.zTo': titled('Upper edge', 'of the controls above the floor'),

  'sheets.controlsChange': titled('Position changed', 'on site, or only in the order'),

  'sheets.connections.kind': entry('What it is'),
  'sheets.connections.x': entry('From the left edge'),
  'sheets.connections.y': entry('From the back edge'),
  'sheets.connections.z': entry('Above the floor'),
  'sheets.connections.size': titled('Nominal size', 'diameter; 0 for wires'),
  'sheets.connections.note': titled('Note', 'what the installer must know'),

  'sheets.clearances.left': entry('Free at the left'),
  'sheets.clearances.right': entry('Free at the right'),
  'sheets.clearances.front': entry('Free at the front'),
  'sheets.clearances.back': entry('Free at the back'),
  'sheets.clearances.above': entry('Free above the open doors'),

  'sheets.sanitizing': entry('Sanitised by'),
  'sheets.waterFeed': entry('Water that it takes'),

  'sheets.cycle.washS': entry('Wash'),
  'sheets.cycle.rinseS': entry('Rinse'),
  'sheets.cycle.dwellS': titled('Dwell', 'and any hold at the end'),
  'sheets.cycle.loadS': entry('Changing racks'),

  'sheets.temperatures.washC': entry('Wash, least'),
  'sheets.temperatures.rinseC': titled('Final rinse, least', 'at the manifold'),
  'sheets.temperatures.supplyC': entry('Supply water, least'),

  'sheets.rinseKind': titled('Kind of rinse', 'as hot as the wash, or hotter'),
  'sheets.rinsePressure': choice('Rinse pressure known'),
  'sheets.rinsePressure.least': titled('Rinse pressure, least', 'while it flows'),
  'sheets.rinsePressure.most': titled('Rinse pressure, most', 'while it flows'),

  'sheets.tank': choice('Wash tank'),
  'sheets.tank.volume': entry('Tank holds'),
  'sheets.tank.heater': entry('Tank heater'),

  'sheets.booster': titled('Booster', 'heater of the final rinse'),
  'sheets.drainFlow': titled('Drain flow', 'while the machine empties'),
  'sheets.idle': titled('Idle', 'power while it is ready and washes nothing'),
  'sheets.thermometers': titled('Thermometers', 'in each tank, and at the final rinse'),
  'sheets.rinseWaterL': entry('Water for one rack'),

  'sheets.electrical.voltage': entry('Nominal voltage'),
  'sheets.electrical.phase': entry('Phase'),
  'sheets.electrical.powerKw': entry('Rated power'),
  'sheets.electrical.currentA': entry('Rated current'),

  'sheets.vent.kind': entry('Vapour leaves by'),
  'sheets.vent.maxEquivalentLength': titled('Longest run', 'its equivalent length'),
  'sheets.vent.elbowAllowance': entry('What one 90° elbow counts as'),
  'sheets.vent.cordLength': titled('Fan cord', 'length of the one that comes with the machine'),
  'sheets.vent.ductDiameter': entry('Duct that fits the collar'),
  'sheets.vent.airflow': entry('Airflow that the vent needs'),
  'sheets.vent.fanCurve.airflow': entry('Airflow'),
  'sheets.vent.fanCurve.pressure': titled('Static pressure', 'what the fan gives at this airflow'),
  'sheets.vent.box.x': entry('Left edge of the box'),
  'sheets.vent.box.y': entry('Back edge of the box'),
  'sheets.vent.box.width': entry('Width of the box'),
  'sheets.vent.box.depth': entry('Depth of the box'),
  'sheets.vent.box.zFrom': entry('Underside of the box'),
  'sheets.vent.box.zTo': entry('Top of the box'),
  'sheets.vent.recovered': titled('Heat recovered', 'share of what the rinse needs'),
  'sheets.vent.listedCondensing': titled('Listed as condensing', 'electric, to UL 921'),
  'sheets.vent.sensible': entry('Dry heat to the room'),
  'sheets.vent.latent': entry('Moist heat to the room'),

  'sheets.conversion.toCorner': entry('Step'),
  'sheets.conversion.toStraight': entry('Step'),
};
