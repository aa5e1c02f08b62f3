// The drawings of a lift, in the order of their tabs: which there are, and what they are called.
import type { DrawingKind, LiftView } from '../api/client';
import type { UiText } from '../reader/texts';

export const DRAWING_NAMES: Record<DrawingKind, UiText> = {
  elevation: 'ui-side-view',
  chart: 'ui-load-chart',
  stands: 'ui-stand-field',
  movement: 'ui-boom-movement',
  'way-in': 'ui-way-in',
  'way-out': 'ui-way-out',
};

type Has = Pick<LiftView, 'has_elevation' | 'has_chart' | 'has_stands' | 'has_movement' | 'has_way_in' | 'has_way_out'>;

export function drawingsOf(lift: Has): DrawingKind[] {
  const there: Record<DrawingKind, boolean> = {
    elevation: lift.has_elevation,
    chart: lift.has_chart,
    stands: lift.has_stands,
    movement: lift.has_movement,
    'way-in': lift.has_way_in,
    'way-out': lift.has_way_out,
  };
  return (Object.keys(DRAWING_NAMES) as DrawingKind[]).filter((kind) => there[kind]);
}
