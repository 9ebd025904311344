/** dy/dt at a time, written into `rate`. */
export type Rates = (timeS: number, state: Float64Array, rate: Float64Array) => void;

/**
 * One step at a time of the Dormand–Prince pair 5(4), with its fourth-order interpolation between the ends. All
 * arrays are made once; a step allocates nothing.
 */
export interface Stepper {
  /** state at the start of the step; set it before `begin` */
  readonly state: Float64Array;
  /** state at the end of the step tried last */
  readonly next: Float64Array;
  /** rate of change at the start and at the end of the step tried last */
  readonly startRate: Float64Array;
  readonly endRate: Float64Array;
  /** evaluates the rate at the start; needed first and after anything has jumped */
  readonly begin: (timeS: number) => void;
  /** tries a step; the local error of each component is left in `error` */
  readonly attempt: (timeS: number, stepS: number) => void;
  readonly error: Float64Array;
  /** makes the end of the step tried last the start of the next */
  readonly accept: () => void;
  /** prepares `between` for one component of the step tried last */
  readonly prepare: (component: number, stepS: number) => void;
  /** the prepared component at a share of the step (0–1) */
  readonly between: (share: number) => number;
  /** the same for all components: prepare once, then write the state at a share of the step into `into` */
  readonly prepareAll: (stepS: number) => void;
  readonly blend: (share: number, into: Float64Array) => void;
}

const d1 = -12715105075 / 11282082432;
const d3 = 87487479700 / 32700410799;
const d4 = -10690763975 / 1880347072;
const d5 = 701980252875 / 199316789632;
const d6 = -1453857185 / 822651844;
const d7 = 69997945 / 29380423;

/** Coefficients: J. R. Dormand and P. J. Prince, A family of embedded Runge–Kutta formulae (1980), from memory. */
export const dormandPrince = (size: number, rates: Rates): Stepper => {
  const fresh = (): Float64Array => new Float64Array(size);
  const state = fresh();
  const next = fresh();
  const stage = fresh();
  const error = fresh();
  const k1 = fresh();
  const k2 = fresh();
  const k3 = fresh();
  const k4 = fresh();
  const k5 = fresh();
  const k6 = fresh();
  const k7 = fresh();
  const c3 = fresh();
  const c4 = fresh();
  const c5 = fresh();
  const at = (from: Float64Array, i: number): number => from[i] as number;
  let r1 = 0;
  let r2 = 0;
  let r3 = 0;
  let r4 = 0;
  let r5 = 0;
  return {
    state,
    next,
    startRate: k1,
    endRate: k7,
    error,
    begin: (timeS) => rates(timeS, state, k1),
    attempt: (t, h) => {
      for (let i = 0; i < size; i++) stage[i] = at(state, i) + h * 0.2 * at(k1, i);
      rates(t + 0.2 * h, stage, k2);
      for (let i = 0; i < size; i++)
        stage[i] = at(state, i) + h * ((3 / 40) * at(k1, i) + (9 / 40) * at(k2, i));
      rates(t + 0.3 * h, stage, k3);
      for (let i = 0; i < size; i++)
        stage[i] = at(state, i) + h * ((44 / 45) * at(k1, i) - (56 / 15) * at(k2, i) + (32 / 9) * at(k3, i));
      rates(t + 0.8 * h, stage, k4);
      for (let i = 0; i < size; i++)
        stage[i] =
          at(state, i) +
          h *
            ((19372 / 6561) * at(k1, i) -
              (25360 / 2187) * at(k2, i) +
              (64448 / 6561) * at(k3, i) -
              (212 / 729) * at(k4, i));
      rates(t + (8 / 9) * h, stage, k5);
      for (let i = 0; i < size; i++)
        stage[i] =
          at(state, i) +
          h *
            ((9017 / 3168) * at(k1, i) -
              (355 / 33) * at(k2, i) +
              (46732 / 5247) * at(k3, i) +
              (49 / 176) * at(k4, i) -
              (5103 / 18656) * at(k5, i));
      rates(t + h, stage, k6);
      for (let i = 0; i < size; i++)
        next[i] =
          at(state, i) +
          h *
            ((35 / 384) * at(k1, i) +
              (500 / 1113) * at(k3, i) +
              (125 / 192) * at(k4, i) -
              (2187 / 6784) * at(k5, i) +
              (11 / 84) * at(k6, i));
      rates(t + h, next, k7);
      for (let i = 0; i < size; i++)
        error[i] =
          h *
          ((71 / 57600) * at(k1, i) -
            (71 / 16695) * at(k3, i) +
            (71 / 1920) * at(k4, i) -
            (17253 / 339200) * at(k5, i) +
            (22 / 525) * at(k6, i) -
            (1 / 40) * at(k7, i));
    },
    accept: () => {
      state.set(next);
      k1.set(k7);
    },
    prepare: (i, h) => {
      r1 = at(state, i);
      const rise = at(next, i) - r1;
      r2 = rise;
      r3 = h * at(k1, i) - rise;
      r4 = rise - h * at(k7, i) - r3;
      r5 =
        h *
        (d1 * at(k1, i) + d3 * at(k3, i) + d4 * at(k4, i) + d5 * at(k5, i) + d6 * at(k6, i) + d7 * at(k7, i));
    },
    between: (share) => {
      const rest = 1 - share;
      return r1 + share * (r2 + rest * (r3 + share * (r4 + rest * r5)));
    },
    prepareAll: (h) => {
      for (let i = 0; i < size; i++) {
        const rise = at(next, i) - at(state, i);
        const bend = h * at(k1, i) - rise;
        c3[i] = bend;
        c4[i] = rise - h * at(k7, i) - bend;
        c5[i] =
          h *
          (d1 * at(k1, i) +
            d3 * at(k3, i) +
            d4 * at(k4, i) +
            d5 * at(k5, i) +
            d6 * at(k6, i) +
            d7 * at(k7, i));
      }
    },
    blend: (share, into) => {
      const rest = 1 - share;
      for (let i = 0; i < size; i++) {
        const start = at(state, i);
        const late = at(c3, i) + share * (at(c4, i) + rest * at(c5, i));
        into[i] = start + share * (at(next, i) - start + rest * late);
      }
    },
  };
};

/** Factor for the next step after one with this error (1 = just allowed). */
export const stepFactor = (errorRatio: number): number =>
  Math.min(5, Math.max(0.2, 0.9 * (errorRatio + 1e-30) ** -0.2));
