package roundbook.plan;

/**
 * One line of what is bought, built in, or left over.
 *
 * @param section the part of the list, such as {@code chinking} or {@code offcuts}
 * @param item what it is
 * @param amount how much
 * @param unit its unit: ft, ft3, lb, count or m, m3, kg
 * @param note how it was reckoned or what to do with it
 */
public record Quantity(String section, String item, double amount, String unit, String note) {}
