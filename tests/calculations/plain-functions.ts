// Exported functions that are not calculations, each with what it is instead.

const tableLookUp = 'gives an entry of a table by its name, or the names';

/** Functions that stay plain, by name. */
export const plainFunctions: Readonly<Record<string, string>> = {
  speciesNames: tableLookUp,
  boltClassNames: tableLookUp,
  factorSetNames: tableLookUp,
  factorSet: tableLookUp,
  modeName: tableLookUp,
  partName: tableLookUp,
  graphiteRanges: tableLookUp,
  datum: 'makes a value with its origin, as q makes a quantity',
  material: tableLookUp,
  boltClass: tableLookUp,
  oRing: tableLookUp,
  nutFactor: tableLookUp,
  pipeThread: tableLookUp,
  threadGeometry: tableLookUp,
  materialNames: tableLookUp,
  threadNames: tableLookUp,
  publishedPropellant: tableLookUp,
  publishedPropellants: tableLookUp,
};

/** Functions that have not been made calculations yet, by module: this list only shrinks. */
export const notYet: Readonly<Record<string, string>> = {
  structures:
    'burstPressure designJoint governing jointStressesSi margin marginTable radialGrowth reviewJoint reviewRetainingRing reviewShell reviewThreadedClosure ropeClips ropeRestraint terminationEfficiency thickWallStress thickWallStressSi wireRope yieldPressuresAtTemperature',
  nozzle:
    'exitConditions frictionThrustLoss idealNozzle insertFit insertSolid nozzleContour nozzleEfficiency nozzleFlowSi nozzleRegime optimumExpansionAtAltitude optimumExpansionOverTrace separationMachSi separationPressure sizeNozzle throatHistory throatLawSi throatRecessionRateSi thrustCoefficientPartsSi thrustCoefficientSi twoPhaseLagBounds vacuumThrustCoefficientAt',
  firing:
    'bridgeCalibration burnEdges calibrate currentLoopCalibration detectClipping firingFromLog fitCalibration invertCalibration ratiometricCalibration readLog recoverPressure recoverThrust reduceFiring tareCalibration thermocoupleCalibration traceLag',
  ballistics:
    'chippedEdge columnRegression composedGrain coneCore crack cylinderCore debond drawGrain endBurner extrudedCore finCore finocyl freeRod grainColumn internalTube neutralStarAngle offsetBore regress regressColumn rodAndTube slottedTube sphereCore sphericalGrain star taperedCore tubularSegment voidBubble wagonWheel withFlaws',
  motor:
    'compare demoMotor display drawPlot flawEnvelope meop migrateMotorDocument reductionInputs motorJsonSchema motorOf motorProblems parseMotor patchMotor plotFiring plotFlawEnvelope plotMargins plotRegression predict report reportDrawings reportPage review reviewProblems strengthProblems',
};
