/**
 * Volumes, weights, log rules, moisture and shrinkage as plain sums on decimal numbers.
 *
 * <p>Lengths go in as numbers of one unit, any unit, and areas and volumes come out in its square
 * and its cube. The few formulas that are bound to inches, feet or pounds say so.
 */
package roundbook.wood;
