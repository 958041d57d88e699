/**
 * The trade's notch arithmetic and its limits, and nothing else.
 *
 * <p><b>Marks are rounded once</b>, so that the course stays true: {@code L' = r(L)}, {@code U' =
 * r((D + g) / 2) − L'}. Rounding each mark alone would err by up to 1/8 in on every course of a
 * size. The drop of the slope is rounded once for both mating planes. Heights use the rounded
 * marks.
 */
package roundbook.notch;
