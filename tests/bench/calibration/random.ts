/** Numbers that look random and are the same on every machine and in every run. */
import { normalQuantile } from "../../../shared/statistics/distributions.ts";

export interface Random {
  /** Evenly between 0 and 1, neither of them. */
  uniform(): number;
  /** With mean 0 and standard deviation 1. */
  normal(): number;
}

/** SplitMix-like generator of 32 bits: whole-number arithmetic alone. */
export function random(seed: number): Random {
  let state = seed >>> 0;
  const uniform = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return (((mixed ^ (mixed >>> 15)) >>> 0) + 0.5) / 4294967296;
  };
  return { uniform, normal: () => normalQuantile(uniform()) };
}
