/**
 * Share of the current rating that is left at a height, where thinner air cools less.
 *
 * @param given.altitude   fromM: height up to which nothing is lost [m]; lossPer100mRatio: loss per 100 m above (0–1);
 *                         maxM: greatest height allowed [m]
 * @param given.altitudeM  height of the site [m]; below sea level counts as sea level
 * @returns share of the current rating (0–1)
 * @throws  {RangeError} higher than maxM
 * Source:  drive-manual (above 1000 m −1 % per 100 m)
 * Example: altitudeRatio({ altitude: { fromM: 1000, lossPer100mRatio: 0.01, maxM: 4000 }, altitudeM: 1500 }) → 0.95
 */
export const altitudeRatio = (given: {
  altitude: { readonly fromM: number; readonly lossPer100mRatio: number; readonly maxM: number };
  altitudeM: number;
}): number => {
  const { altitude, altitudeM } = given;
  if (!(altitudeM <= altitude.maxM)) {
    throw new RangeError(`altitudeM: expected at most ${altitude.maxM} m, found ${altitudeM} m`);
  }
  return 1 - (Math.max(0, altitudeM - altitude.fromM) / 100) * altitude.lossPer100mRatio;
};
