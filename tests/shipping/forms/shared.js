// @ts-nocheck
export let counted = 0;
export function count() {
  counted += 1;
}
export const { first, ...rest } = { first: 1, second: 2, third: 3 };
export const [{ deep }, own = "by default"] = [{ deep: "deep" }];
export const box = {};
export class Shape {
  static #made = 0;
  name = `shape ${(Shape.#made += 1)}`;
}
export async function* steps() {
  yield* [1, 2];
}
export default function (letter) {
  return `default ${letter}`;
}
