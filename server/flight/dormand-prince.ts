/**
 * The numbers of the method of J. R. Dormand and P. J. Prince 1980 (J. Comput. Appl. Math. 6, 19–26), fifth order with an embedded
 * fourth. `A32`: weight of the second slope where the third is taken; `B`: the weights of the result.
 */
export const A21 = 1 / 5;
export const A31 = 3 / 40;
export const A32 = 9 / 40;
export const A41 = 44 / 45;
export const A42 = -56 / 15;
export const A43 = 32 / 9;
export const A51 = 19372 / 6561;
export const A52 = -25360 / 2187;
export const A53 = 64448 / 6561;
export const A54 = -212 / 729;
export const A61 = 9017 / 3168;
export const A62 = -355 / 33;
export const A63 = 46732 / 5247;
export const A64 = 49 / 176;
export const A65 = -5103 / 18656;
export const B1 = 35 / 384;
export const B3 = 500 / 1113;
export const B4 = 125 / 192;
export const B5 = -2187 / 6784;
export const B6 = 11 / 84;

// The result of fifth order less that of fourth.
export const E1 = 71 / 57_600;
export const E3 = -71 / 16_695;
export const E4 = 71 / 1920;
export const E5 = -17_253 / 339_200;
export const E6 = 22 / 525;
export const E7 = -1 / 40;

// What makes the cubic through a step a curve of fourth order: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary
// Differential Equations I, section II.6.
export const D1 = -12_715_105_075 / 11_282_082_432;
export const D3 = 87_487_479_700 / 32_700_410_799;
export const D4 = -10_690_763_975 / 1_880_347_072;
export const D5 = 701_980_252_875 / 199_316_789_632;
export const D6 = -1_453_857_185 / 822_651_844;
export const D7 = 69_997_945 / 29_380_423;
