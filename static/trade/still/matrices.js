// @ts-check
/** Little linear algebra. Twin of webapp/trade/matrices.py, step for step. */

const LEAST = 1e-12;

/** @param {number[]} one @param {number[]} other */
export function dot(one, other) {
  let total = 0;
  for (let i = 0; i < one.length; i++) total += one[i] * other[i];
  return total;
}

/** @param {number[][]} matrix symmetric, positive @param {number[]} values @returns {number[]} */
export const solve = (matrix, values) => back(lowerOf(matrix), values);

/** @param {number[][]} matrix symmetric, positive @returns {number[][]} */
export function inverse(matrix) {
  const lower = lowerOf(matrix);
  return matrix.map((_, i) => back(lower, matrix.map((__, j) => (i === j ? 1 : 0))));
}

/** @param {number[][]} matrix */
function lowerOf(matrix) {
  const lower = matrix.map((row) => row.map(() => 0));
  for (let i = 0; i < matrix.length; i++) {
    for (let j = 0; j <= i; j++) {
      let left = matrix[i][j];
      for (let k = 0; k < j; k++) left -= lower[i][k] * lower[j][k];
      lower[i][j] = i === j ? Math.sqrt(Math.max(left, LEAST)) : left / lower[j][j];
    }
  }
  return lower;
}

/** @param {number[][]} lower @param {number[]} values */
function back(lower, values) {
  /** @type {number[]} */
  const found = [];
  for (let i = 0; i < lower.length; i++) {
    let left = values[i];
    for (let k = 0; k < i; k++) left -= lower[i][k] * found[k];
    found.push(left / lower[i][i]);
  }
  for (let i = lower.length - 1; i >= 0; i--) {
    let left = found[i];
    for (let k = i + 1; k < lower.length; k++) left -= lower[k][i] * found[k];
    found[i] = left / lower[i][i];
  }
  return found;
}
