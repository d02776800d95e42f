/**
 * One stream of cooling air: the air that passes a radiator, an oil cooler, or the fins of the cylinders, and leaves by its
 * own exit. Streams that share an exit are entered as one, or each with its part of the exit.
 *
 * `coolingFlow.ts` finds the air, `exchangerTemperature.ts` the temperature, `coolingCalibration.ts` the constants,
 * `coolingLimit.ts` what it takes to hold the limit, `coolingDrag.ts` what it costs.
 */
import type { FinLaw } from './fins.ts';

/** Heat as a fraction of the power at the shaft or of the power in the fuel. */
export interface HeatFraction {
  readonly fraction: number;
  readonly of: 'shaftPower' | 'fuelEnergy';
}

/** What the air passes: σΔp = Δp_ref (m/m_ref)^n. */
export interface CoolingCore {
  /** m_ref, above 0 [kg/s] */
  readonly referenceAirflow: number;
  /** Δp_ref: pressure drop times density ratio at m_ref, above 0 [Pa] */
  readonly referencePressureDrop: number;
  /** n, 1 (laminar) to 2; 1.8 for turbulent passages [-] */
  readonly pressureExponent: number;
}

/** Turbulent passages: friction falls as Re^−0.2 (Blasius for tubes is −0.25). Common practice. */
export const defaultCorePressureExponent = 1.8;

/** The way of the air apart from the core. */
export interface CoolingDuct {
  readonly heat: HeatFraction;
  /** η_r, 0 to 1 [-] */
  readonly inletRecovery: number;
  /** κ, 0 to 1 [-] */
  readonly slipstreamShare: number;
  /** C_p,e, at −2 to 1 [-] */
  readonly exitPressureCoefficient: number;
  /** A_e, above 0 [m²] */
  readonly exitArea: number;
  /** C_d, above 0 to 1 [-] */
  readonly exitDischargeCoefficient: number;
  /** θ between the leaving air and the flight path, 0 to π/2 [rad] */
  readonly exitAngle: number;
  /** Drag area of leaks and of spoiled flow outside, this package's increment, at least 0 [m²] */
  readonly leakageDragArea: number;
}

export interface Radiator {
  readonly kind: 'radiator';
  /** UA at the core's reference airflow and full coolant flow, above 0 [W/K] */
  readonly conductance: number;
  /** Part of the resistance 1/UA that is on the air's side there, 0 to 1 [-] */
  readonly airSideShare: number;
  /** Mass flow × specific heat of the coolant or oil at rated engine speed, above 0 [W/K] */
  readonly coolantCapacityRate: number;
  /** Where the temperature with the limit is taken: before the radiator (coolant out of the engine) or behind (oil into it) */
  readonly temperatureAt: 'radiatorInlet' | 'radiatorOutlet';
}

/** Part of a core's thermal resistance on the air's side. Common practice, no source. */
export const defaultAirSideShare = { coolant: 0.8, oil: 0.4 } as const;

export interface Fins {
  readonly kind: 'fins';
  readonly law: FinLaw;
  /** K, from `finCoefficient` [W^−a Pa^b] */
  readonly coefficient: number;
}

export interface CoolingStream extends CoolingDuct {
  readonly core: CoolingCore;
  readonly exchanger: Radiator | Fins;
  /** Highest temperature allowed [K] */
  readonly limit: number;
}

/** What the engine and the air do at one moment of steady flight. */
export interface CoolingCondition {
  /** At the engine's shaft, at least 0 [W] */
  readonly shaftPower: number;
  /** Fuel mass flow × lower heating value; needed when a heat fraction is of it [W] */
  readonly fuelPower?: number;
  /** Engine speed over rated, drives the coolant pump; 1 when not given, above 0 [-] */
  readonly engineSpeedRatio?: number;
  /** At least 0 [m/s] */
  readonly trueAirspeed: number;
  /** [m] */
  readonly pressureAltitude: number;
  /** Above 0 [K] */
  readonly outsideAirTemperature: number;
  /** Of the propeller, at least 0 [N] */
  readonly thrust: number;
  /** Of the propeller, above 0 [m²] */
  readonly discArea: number;
}
