import type { Partly } from './document-types';
import { both, type Findings, mm, si } from './fit-check';
import type { MotorParts } from './motor-schema';
import type { Path } from './problems';

type Closure = Partly<NonNullable<NonNullable<MotorParts['closures']>['head']>>;

/** Checks that the dimensions of a stepped or dished closure fit the case and each other. */
export function checkShape(
  closure: Closure,
  end: Path,
  { need, note }: Findings,
  bore: number | undefined,
): void {
  const { shape } = closure;
  const at: Path = [...end, 'shape'];
  if (shape?.form === 'stepped') {
    const [hub, ring, plate] = [si(shape.hubDiameter), si(shape.ringThickness), si(closure.thickness)];
    need(
      both(hub, bore, (d, b) => d < b),
      [...at, 'hubDiameter'],
      `less than the bore of the case (${mm(bore)})`,
    );
    need(
      both(si(closure.opening), hub, (o, d) => o < d),
      [...at, 'hubDiameter'],
      `more than the opening of the closure (${mm(si(closure.opening))})`,
    );
    need(
      both(ring, plate, (t, h) => t <= h),
      [...at, 'ringThickness'],
      `at most the thickness of the closure (${mm(plate)})`,
      'thickness is that of the hub',
    );
  }
  if (shape?.form === 'dished') {
    const [crown, knuckle] = [si(shape.crownRadius), si(shape.knuckleRadius)];
    const half = bore === undefined ? undefined : bore / 2;
    need(
      both(crown, half, (l, r) => l >= 0.98 * r),
      [...at, 'crownRadius'],
      `at least half of the bore (${mm(half)})`,
    );
    need(
      both(knuckle, crown, (r, l) => r <= l),
      [...at, 'knuckleRadius'],
      `at most the radius of the crown (${mm(crown)})`,
    );
    if (shape.knuckleRadius === undefined && both(crown, half, (l, r) => l > 1.05 * r))
      note([...at, 'knuckleRadius'], {
        code: 'missing-field',
        expected: `inside radius of the knuckle; only a crown of half of the bore (${mm(half)}), a hemisphere, has none`,
      });
  }
  if (shape?.form === 'ellipsoidal')
    need(
      both(si(shape.depth), bore, (h, b) => h <= 0.51 * b && h >= b / 6),
      [...at, 'depth'],
      `from one sixth to half of the bore (${mm(bore)})`,
    );
}
