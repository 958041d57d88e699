/**
 * Both faces of a log, with its marks, and what decides that two logs are cut alike.
 *
 * <p>A round that would shrink under 0.88 of its size, as the first and the last with their two
 * drawings do, takes two pages: what is needed to lay out on the first, what is typed afterwards on
 * the second, under the same bar.
 */
package roundbook.picture.face;
