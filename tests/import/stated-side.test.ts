/** What column names say of sides. A side is taken only where sides and signs pair up in one way. */
import { expect, test } from "vitest";
import { parseHeader } from "../../server/import/propose/header.ts";

test.each([
  // One side and one sign
  ["Offline (+ right)", "+right"],
  ["Offline (right +) yd", "+right"],
  ["Offline R+", "+r"],
  ["Offline (right positive) [yd]", "+right"],
  ["Offline (yd, left +ve)", "+left"],
  ["Offline (right pos., yd)", "+right"],
  ["Offline (plus is to the right)", "+right"],
  ["Club path (in +) [deg]", "+in"],
  ["Path +ve = out-to-in", "+out-to-in"],
  ["Low point (in) + ahead", "+ahead"],
  ["Low point (after +) in", "+ahead"],
  ["In-out path + right", "+right"],
  // Said of the other side
  ["Offline, yd, left is negative", "-left"],
  ["Offline (yd; negative left)", "-left"],
  ["Offline [yd] minus = left", "-left"],
  ["Spin Axis (deg) - = left", "-left"],
  ["AoA (down = -) deg", "-down"],
  ["Spin axis (draw -)", "-draw"],
  ["Low Pt (before ball -)", "-behind"],
  // Both sides, in any order
  ["Offline yds (+R -L)", "+r -l"],
  ["Offline (L = -, R = +) yd", "+r -l"],
  ["Side [R:+ L:-]", "+r -l"],
  ["Offline (R + L -)", "+r -l"],
  ["Offline (+ R - L)", "+r -l"],
  ["Offline (right positive left negative)", "+right -left"],
  ["Offline (negative left positive right)", "+right -left"],
  ["Left(-) Right(+) yd", "+right -left"],
  ["Toe(+)/Heel(-) mm", "+toe -heel"],
  ["Face Angle (+O/-C)", "+o -c"],
  ["F2P O+/C-", "+o -c"],
  ["Impact height (+H/-L)", "+h -l"],
  ["Low Point (-B/+A)", "+a -b"],
  // Nothing clear
  ["Offline (+X -L)", ""],
  ["Offline (+hook, left)", ""],
  ["Offline (+ hook / - R)", ""],
  ["Offline", ""],
  ["Side - left", ""],
  ["Right/Left (+/-) yd", ""],
  ["Right/Left + (yd)", ""],
  ["Offline (+/- = R/L)", ""],
  ["Offline (L +, R +)", ""],
  ["Offline (left + left -)", ""],
  ["Toe-Heel", ""],
  ["In-to-out path (deg)", ""],
  ["Carry + roll (yd)", ""],
  ["Attack (up to +5)", ""],
])("%j says %j", (header, sides) => {
  const { positive, negative } = parseHeader(header);
  expect([positive && `+${positive}`, negative && `-${negative}`].filter(Boolean).join(" ")).toBe(sides);
});

test.each([
  ["High+ / Low- (mm)", "high low", "mm"],
  ["F2P O+/C-", "f2p", undefined],
  ["Offline L-/R+", "offline", undefined],
  ["Club Path in-to-out + [deg]", "club path", "°"],
  ["Offline, yd, left is negative", "offline", "yd"],
])("of %j the name is %j", (header, words, unit) => {
  expect(parseHeader(header)).toMatchObject({ words: words.split(" "), unit });
});

test.each([
  ["Ball speed in km/h", "ball speed", "km/h"],
  ["Carry in m", "carry", "m"],
  ["Carry in yd.", "carry", "yd"],
  ["Low point in", "low point", "in"],
  ["Hang time in s", "hang time", "s"],
  ["Low point in inches", "low point", "in"],
  ["ball_speed_m_s", "ball speed", "m/s"],
  ["ball-speed-km-h", "ball speed", "km/h"],
  ["ball_speed_m_per_s", "ball speed", "m/s"],
  ["Ball Speed m s-1", "ball speed", "m/s"],
  ["Ball Speed (m s⁻¹)", "ball speed", "m/s"],
  ["Ball speed, metres per second", "ball speed", "m/s"],
  ["Club speed (miles per hour)", "club speed", "mph"],
  ["Spin (revs per minute)", "spin", "rpm"],
  ["Face (º)", "face", "°"],
  ["Flight time [Sek]", "flight time", "s"],
  ["Speed m/s club", "speed m s club", undefined],
])("the unit of %j is that of %j", (header, words, unit) => {
  expect(parseHeader(header)).toMatchObject({ words: words.split(" "), unit });
});
