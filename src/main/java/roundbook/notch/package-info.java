/**
 * The trade's notch arithmetic and its limits, and nothing else.
 *
 * <p><b>Marks are rounded once</b>, so that the course stays true: {@code L' = r(L)}, {@code U' =
 * r((D + g) / 2) − L'}. Rounding each mark alone would err by up to 1/8 in on every course of a
 * size. The drop of the slope is rounded once for both mating planes. Heights use the rounded
 * marks.
 *
 * <p><b>Ends are graded by what they lose, not by whether wane touches them.</b> Of 64 ends of a
 * cabin of 20 ft walls 31 were once warned of, none of which lost more than 3 % of its bearing; a
 * warning on everything is a warning on nothing. The bearing ends at the corner line and the face
 * over UPPER begins at the shoulder, so the diameters there are taken, not that of the trimmed end,
 * whose tail carries nothing. The share left is the area of the sloped underside within the round
 * log over the whole, in closed form, with the least diameter along it: a taper of an eighth of an
 * inch a foot changes it by less than a hundredth. Where <i>look</i> and <i>stop</i> begin is
 * judgement, common practice without a published source, and can be set. What is told is rounded
 * down.
 */
package roundbook.notch;
