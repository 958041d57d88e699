/**
 * The pure integer engine that chooses logs: plain longs in, a choice and its score out.
 *
 * <p>It knows nothing of the rest of the project. {@link roundbook.balance.BalanceTask} says what
 * is wanted, a {@link roundbook.balance.Balancer} answers with a {@link
 * roundbook.balance.BalanceResult}; {@link roundbook.balance.Shortage} answers what is missing.
 */
package roundbook.balance;
