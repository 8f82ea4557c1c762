// @ts-nocheck
globalThis.effects = (globalThis.effects ?? 0) + 1;
