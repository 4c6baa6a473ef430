import { inputOf } from '../../units/declare/plain-inputs';
import { type Motor, type MotorInput, readMotor } from './parse-motor';

/** The motor of a calculation: a motor, or its document, which is parsed. */
export const motorSubject = /* @__PURE__ */ inputOf<MotorInput, Motor>({
  type: 'motor',
  meaning: 'motor, or its document',
  takes: () => 'a motor or its document',
  read: (given, { procedure }) => readMotor(given, procedure),
});
