// @ts-nocheck
export const late = await new Promise((done) => setTimeout(() => done("late"), 5));
