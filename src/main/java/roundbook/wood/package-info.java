/**
 * Volumes, weights, log rules, moisture and shrinkage as plain sums on decimal numbers.
 *
 * <p>Lengths go in as numbers of one unit, any unit, and areas and volumes come out in its square
 * and its cube. The few formulas that are bound to inches, feet or pounds say so.
 *
 * <p><b>Weights</b> take the published green weight of the species; a generic name takes the mean
 * of its species, and the page says that weights are estimates. Their spread is all heartwood to
 * all sapwood at the published moistures.
 */
package roundbook.wood;
