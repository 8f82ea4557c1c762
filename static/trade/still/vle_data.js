// @ts-check
/** webapp/trade/data/vle.json, carried here so that the first install does not grow; a test compares the two. */
export const VLE = {
  pressure_mmhg: 760.0,
  molar_g_mol: [46.068, 18.015],
  antoine_log10_mmhg: [[8.1122, 1592.864, 226.184], [8.07131, 1730.63, 233.426]],
  alpha: 0.3,
  tau_12: [-8.95916, 3092.736],
  tau_21: [10.28305, -2917.559],
};
