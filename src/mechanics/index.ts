import type { Calculation } from "../core/calculation.ts";
import { accelerationTorque } from "./acceleration-torque.ts";
import { axleBending } from "./axle-bending.ts";
import { beamShear } from "./beam-shear.ts";
import { bearingAxialLimit } from "./bearing-axial-limit.ts";
import { bearingHours } from "./bearing-hours.ts";
import { bearingLife } from "./bearing-life.ts";
import { bearingStaticLoad } from "./bearing-static-load.ts";
import { bedOnLayer } from "./bed-on-layer.ts";
import { beltFlangeGap } from "./belt-flange-gap.ts";
import { beltGap } from "./belt-gap.ts";
import { beltMisalignment } from "./belt-misalignment.ts";
import { beltPostGap } from "./belt-post-gap.ts";
import { beltPull } from "./belt-pull.ts";
import { beltRimGap } from "./belt-rim-gap.ts";
import { beltSeat } from "./belt-seat.ts";
import { boltStress } from "./bolt-stress.ts";
import { boltThreadedLength } from "./bolt-threaded-length.ts";
import { boltThroughLength } from "./bolt-through-length.ts";
import { boltTorque } from "./bolt-torque.ts";
import { bracketRootStress } from "./bracket-root-stress.ts";
import { bracketSink } from "./bracket-sink.ts";
import { bracketTemperature } from "./bracket-temperature.ts";
import { cantileverDeflection } from "./cantilever-deflection.ts";
import { cantileverSlope } from "./cantilever-slope.ts";
import { cantileverUniformLoad } from "./cantilever-uniform-load.ts";
import { carriageTipDrop } from "./carriage-tip-drop.ts";
import { chainRatio } from "./chain-ratio.ts";
import { clampForce } from "./clamp-force.ts";
import { clashAllowance } from "./clash-allowance.ts";
import { collarTorque } from "./collar-torque.ts";
import { crashFactor } from "./crash-factor.ts";
import { cupPointHold } from "./cup-point-hold.ts";
import { driveResolution } from "./drive-resolution.ts";
import { driveSpeed } from "./drive-speed.ts";
import { eccentricShift } from "./eccentric-shift.ts";
import { eulerLoad } from "./euler-load.ts";
import { fitPlay } from "./fit-play.ts";
import { frameSquareness } from "./frame-squareness.ts";
import { frictionUse } from "./friction-use.ts";
import { growthVector } from "./growth-vector.ts";
import { heatLoss } from "./heat-loss.ts";
import { heatingEnergy } from "./heating-energy.ts";
import { hollowColumnStress } from "./hollow-column-stress.ts";
import { idlerBase } from "./idler-base.ts";
import { insertBoltWindow } from "./insert-bolt-window.ts";
import { layerSnap } from "./layer-snap.ts";
import { leeway } from "./leeway.ts";
import { leewayAngle } from "./leeway-angle.ts";
import { loadShare } from "./load-share.ts";
import { loopTolerance } from "./loop-tolerance.ts";
import { measuredSpringRate } from "./measured-spring-rate.ts";
import { meshEstimate } from "./mesh-estimate.ts";
import { motorBoltWindow } from "./motor-bolt-window.ts";
import { motorPlane } from "./motor-plane.ts";
import { motorTorque } from "./motor-torque.ts";
import { phaseLag } from "./phase-lag.ts";
import { pinnedBow } from "./pinned-bow.ts";
import { pitchRadius } from "./pitch-radius.ts";
import { planeSpacing } from "./plane-spacing.ts";
import { plateHold } from "./plate-hold.ts";
import { plateJerk } from "./plate-jerk.ts";
import { plateMass } from "./plate-mass.ts";
import { plateStripSag } from "./plate-strip-sag.ts";
import { plateTwist } from "./plate-twist.ts";
import { pluckFrequency } from "./pluck-frequency.ts";
import { pluckTension } from "./pluck-tension.ts";
import { pressFitInterference } from "./press-fit-interference.ts";
import { pressFitPressure } from "./press-fit-pressure.ts";
import { printedHole } from "./printed-hole.ts";
import { pullAtRating } from "./pull-at-rating.ts";
import { pulleyGap } from "./pulley-gap.ts";
import { pulleyOutside } from "./pulley-outside.ts";
import { requiredSlide } from "./required-slide.ts";
import { rootMoment } from "./root-moment.ts";
import { rowForce } from "./row-force.ts";
import { rowTension } from "./row-tension.ts";
import { sawCutAngle } from "./saw-cut-angle.ts";
import { screwColumn } from "./screw-column.ts";
import { screwFloat } from "./screw-float.ts";
import { screwThreadStress } from "./screw-thread-stress.ts";
import { screwTilt } from "./screw-tilt.ts";
import { screwTorque } from "./screw-torque.ts";
import { screwWhirl } from "./screw-whirl.ts";
import { seatOnLayer } from "./seat-on-layer.ts";
import { seatPressure } from "./seat-pressure.ts";
import { setScrewHold } from "./set-screw-hold.ts";
import { shaftPull } from "./shaft-pull.ts";
import { shrinkScale } from "./shrink-scale.ts";
import { simpleBeamDeflection } from "./simple-beam-deflection.ts";
import { simpleBeamLoadSag } from "./simple-beam-load-sag.ts";
import { simpleBeamUniformLoad } from "./simple-beam-uniform-load.ts";
import { slippedToothTilt } from "./slipped-tooth-tilt.ts";
import { slotBoltWindow } from "./slot-bolt-window.ts";
import { slotLength } from "./slot-length.ts";
import { smoothIdlerRadius } from "./smooth-idler-radius.ts";
import { spanDeflection } from "./span-deflection.ts";
import { spanGap } from "./span-gap.ts";
import { springBand } from "./spring-band.ts";
import { springForce } from "./spring-force.ts";
import { springRate } from "./spring-rate.ts";
import { springRateNeeded } from "./spring-rate-needed.ts";
import { springSolidLength } from "./spring-solid-length.ts";
import { springStability } from "./spring-stability.ts";
import { springStress } from "./spring-stress.ts";
import { springWorkingLength } from "./spring-working-length.ts";
import { stallForce } from "./stall-force.ts";
import { stepRate } from "./step-rate.ts";
import { stuckTemperature } from "./stuck-temperature.ts";
import { tappedBoltWindow } from "./tapped-bolt-window.ts";
import { teardropRoof } from "./teardrop-roof.ts";
import { teethInMesh } from "./teeth-in-mesh.ts";
import { thermalGrowth } from "./thermal-growth.ts";
import { threadShearArea } from "./thread-shear-area.ts";
import { threadStarts } from "./thread-starts.ts";
import { threadStressArea } from "./thread-stress-area.ts";
import { threadTravel } from "./thread-travel.ts";
import { threeWheelForces } from "./three-wheel-forces.ts";
import { threeWheelPreload } from "./three-wheel-preload.ts";
import { tiedBars } from "./tied-bars.ts";
import { torqueLimit } from "./torque-limit.ts";
import { trapezoidalThread } from "./trapezoidal-thread.ts";
import { triangleHeight } from "./triangle-height.ts";
import { twoPulleyCentres } from "./two-pulley-centres.ts";
import { twoPulleyLoop } from "./two-pulley-loop.ts";
import { twoScrewShare } from "./two-screw-share.ts";
import { wahlFactor } from "./wahl-factor.ts";
import { warmUp } from "./warm-up.ts";
import { washerPressure } from "./washer-pressure.ts";
import { wattDensity } from "./watt-density.ts";
import { wheelDistance } from "./wheel-distance.ts";
import { wheelDrag } from "./wheel-drag.ts";
import { wheelForces } from "./wheel-forces.ts";
import { wheelPreload } from "./wheel-preload.ts";
import { wireStrength } from "./wire-strength.ts";

export * from "./acceleration-torque.ts";
export * from "./axle-bending.ts";
export * from "./beam-shear.ts";
export * from "./bearing-axial-limit.ts";
export * from "./bearing-hours.ts";
export * from "./bearing-life.ts";
export * from "./bearing-static-load.ts";
export * from "./bed-on-layer.ts";
export * from "./belt-flange-gap.ts";
export * from "./belt-gap.ts";
export * from "./belt-loop.ts";
export * from "./belt-misalignment.ts";
export * from "./belt-post-gap.ts";
export * from "./belt-pull.ts";
export * from "./belt-rim-gap.ts";
export * from "./belt-seat.ts";
export * from "./bisect.ts";
export * from "./bolt-stress.ts";
export * from "./bolt-threaded-length.ts";
export * from "./bolt-through-length.ts";
export * from "./bolt-torque.ts";
export * from "./bracket-root-stress.ts";
export * from "./bracket-sink.ts";
export * from "./bracket-temperature.ts";
export * from "./cantilever-deflection.ts";
export * from "./cantilever-slope.ts";
export * from "./cantilever-uniform-load.ts";
export * from "./carriage-tip-drop.ts";
export * from "./centre-of-mass.ts";
export * from "./chain-ratio.ts";
export * from "./clamp-force.ts";
export * from "./clash-allowance.ts";
export * from "./collar-torque.ts";
export * from "./crash-factor.ts";
export * from "./cup-point-hold.ts";
export * from "./drive-resolution.ts";
export * from "./drive-speed.ts";
export * from "./eccentric-shift.ts";
export * from "./euler-load.ts";
export * from "./fit-play.ts";
export * from "./four-screw-bounds.ts";
export * from "./frame-squareness.ts";
export * from "./friction-use.ts";
export * from "./growth-vector.ts";
export * from "./heat-loss.ts";
export * from "./heating-energy.ts";
export * from "./hollow-column-stress.ts";
export * from "./idler-base.ts";
export * from "./idler-duties.ts";
export * from "./insert-bolt-window.ts";
export * from "./layer-snap.ts";
export * from "./leeway.ts";
export * from "./leeway-angle.ts";
export * from "./load-share.ts";
export * from "./loop-tolerance.ts";
export * from "./measured-spring-rate.ts";
export * from "./mesh-estimate.ts";
export * from "./motor-bolt-window.ts";
export * from "./motor-plane.ts";
export * from "./motor-torque.ts";
export * from "./next-stock.ts";
export * from "./phase-lag.ts";
export * from "./pinned-bow.ts";
export * from "./pitch-radius.ts";
export * from "./plane-spacing.ts";
export * from "./plate-hold.ts";
export * from "./plate-jerk.ts";
export * from "./plate-mass.ts";
export * from "./plate-strip-sag.ts";
export * from "./plate-twist.ts";
export * from "./pluck-frequency.ts";
export * from "./pluck-tension.ts";
export * from "./point.ts";
export * from "./press-fit-interference.ts";
export * from "./press-fit-pressure.ts";
export * from "./printed-hole.ts";
export * from "./pull-at-rating.ts";
export * from "./pulley-gap.ts";
export * from "./pulley-outside.ts";
export * from "./required-slide.ts";
export * from "./root-moment.ts";
export * from "./row-force.ts";
export * from "./row-tension.ts";
export * from "./saw-cut-angle.ts";
export * from "./screw-column.ts";
export * from "./screw-float.ts";
export * from "./screw-loads.ts";
export * from "./screw-locking.ts";
export * from "./screw-thread-stress.ts";
export * from "./screw-tilt.ts";
export * from "./screw-torque.ts";
export * from "./screw-whirl.ts";
export * from "./screws-in-step.ts";
export * from "./seat-candidates.ts";
export * from "./seat-on-layer.ts";
export * from "./seat-pressure.ts";
export * from "./set-screw-hold.ts";
export * from "./shaft-pull.ts";
export * from "./shim-for-seat.ts";
export * from "./shrink-scale.ts";
export * from "./simple-beam-deflection.ts";
export * from "./simple-beam-load-sag.ts";
export * from "./simple-beam-uniform-load.ts";
export * from "./slide-for-length.ts";
export * from "./slipped-tooth-tilt.ts";
export * from "./slot-bolt.ts";
export * from "./slot-bolt-window.ts";
export * from "./slot-length.ts";
export * from "./smooth-idler-radius.ts";
export * from "./span-deflection.ts";
export * from "./span-gap.ts";
export * from "./spring-band.ts";
export * from "./spring-force.ts";
export * from "./spring-rate.ts";
export * from "./spring-rate-needed.ts";
export * from "./spring-solid-length.ts";
export * from "./spring-stability.ts";
export * from "./spring-stress.ts";
export * from "./spring-working-length.ts";
export * from "./stall-force.ts";
export * from "./step-rate.ts";
export * from "./stock-loops.ts";
export * from "./stuck-temperature.ts";
export * from "./tapped-bolt-window.ts";
export * from "./teardrop-roof.ts";
export * from "./teeth-in-mesh.ts";
export * from "./thermal-growth.ts";
export * from "./thread-shear-area.ts";
export * from "./thread-starts.ts";
export * from "./thread-stress-area.ts";
export * from "./thread-travel.ts";
export * from "./three-wheel-forces.ts";
export * from "./three-wheel-preload.ts";
export * from "./tied-bars.ts";
export * from "./torque-limit.ts";
export * from "./tram-moves.ts";
export * from "./tram-plane.ts";
export * from "./tram-twist.ts";
export * from "./trapezoidal-thread.ts";
export * from "./triangle-height.ts";
export * from "./two-pulley-centres.ts";
export * from "./two-pulley-loop.ts";
export * from "./two-screw-share.ts";
export * from "./wahl-factor.ts";
export * from "./warm-up.ts";
export * from "./washer-pressure.ts";
export * from "./watt-density.ts";
export * from "./wheel-distance.ts";
export * from "./wheel-drag.ts";
export * from "./wheel-forces.ts";
export * from "./wheel-preload.ts";
export * from "./wire-strength.ts";

/** Every calculation, for `explain` and the contract kit. Names of inputs differ, so here they are plain strings. */
export const CALCULATIONS = [
  accelerationTorque,
  axleBending,
  beamShear,
  bearingAxialLimit,
  bearingHours,
  bearingLife,
  bearingStaticLoad,
  bedOnLayer,
  beltFlangeGap,
  beltGap,
  beltMisalignment,
  beltPostGap,
  beltPull,
  beltRimGap,
  beltSeat,
  boltStress,
  boltThreadedLength,
  boltThroughLength,
  boltTorque,
  bracketRootStress,
  bracketSink,
  bracketTemperature,
  cantileverDeflection,
  cantileverSlope,
  cantileverUniformLoad,
  carriageTipDrop,
  chainRatio,
  clampForce,
  clashAllowance,
  collarTorque,
  crashFactor,
  cupPointHold,
  driveResolution,
  driveSpeed,
  eccentricShift,
  eulerLoad,
  fitPlay,
  frameSquareness,
  frictionUse,
  growthVector,
  heatLoss,
  heatingEnergy,
  hollowColumnStress,
  idlerBase,
  insertBoltWindow,
  layerSnap,
  leeway,
  leewayAngle,
  loadShare,
  loopTolerance,
  measuredSpringRate,
  meshEstimate,
  motorBoltWindow,
  motorPlane,
  motorTorque,
  phaseLag,
  pinnedBow,
  pitchRadius,
  planeSpacing,
  plateHold,
  plateJerk,
  plateMass,
  plateStripSag,
  plateTwist,
  pluckFrequency,
  pluckTension,
  pressFitInterference,
  pressFitPressure,
  printedHole,
  pullAtRating,
  pulleyGap,
  pulleyOutside,
  requiredSlide,
  rootMoment,
  rowForce,
  rowTension,
  sawCutAngle,
  screwColumn,
  screwFloat,
  screwThreadStress,
  screwTilt,
  screwTorque,
  screwWhirl,
  seatOnLayer,
  seatPressure,
  setScrewHold,
  shaftPull,
  shrinkScale,
  simpleBeamDeflection,
  simpleBeamLoadSag,
  simpleBeamUniformLoad,
  slippedToothTilt,
  slotBoltWindow,
  slotLength,
  smoothIdlerRadius,
  spanDeflection,
  spanGap,
  springBand,
  springForce,
  springRate,
  springRateNeeded,
  springSolidLength,
  springStability,
  springStress,
  springWorkingLength,
  stallForce,
  stepRate,
  stuckTemperature,
  tappedBoltWindow,
  teardropRoof,
  teethInMesh,
  thermalGrowth,
  threadShearArea,
  threadStarts,
  threadStressArea,
  threadTravel,
  threeWheelForces,
  threeWheelPreload,
  tiedBars,
  torqueLimit,
  trapezoidalThread,
  triangleHeight,
  twoPulleyCentres,
  twoPulleyLoop,
  twoScrewShare,
  wahlFactor,
  warmUp,
  washerPressure,
  wattDensity,
  wheelDistance,
  wheelDrag,
  wheelForces,
  wheelPreload,
  wireStrength,
] as readonly unknown[] as readonly Calculation[];
