package roundbook.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import roundbook.problem.Value;
import roundbook.units.Bulk;
import roundbook.units.Length;
import roundbook.wood.LogRule;

/**
 * Collects lines in the units that things are sold in: feet and pounds, or metres and kilograms.
 */
final class QuantityLines {
  private static final double CUBIC_FOOT = 1728;

  private final List<Quantity> lines = new ArrayList<>();
  private final Bulk bulk;

  QuantityLines(boolean metric) {
    this.bulk = new Bulk(metric);
  }

  boolean metric() {
    return bulk.metric();
  }

  List<Quantity> lines() {
    return lines;
  }

  void count(String section, String item, long count, Value... values) {
    add(section, item, count, "count", values);
  }

  void percent(String section, String item, double percent, Value... values) {
    add(section, item, percent, "%", values);
  }

  void length(String section, String item, Length length, Value... values) {
    run(section, item, length.inches(), values);
  }

  /** Adds a length of decimal inches. */
  void run(String section, String item, double inches, Value... values) {
    add(section, item, bulk.length(inches), bulk.symbol(), values);
  }

  /** Adds an area of square inches. */
  void area(String section, String item, double inches, Value... values) {
    add(section, item, bulk.area(inches), bulk.symbol() + "2", values);
  }

  /** Adds a volume of cubic inches. */
  void volume(String section, String item, double inches, Value... values) {
    add(section, item, bulk.volume(inches), bulk.symbol() + "3", values);
  }

  /** Adds a volume of cubic inches as it stands on pails: US gallons, or litres. */
  void pails(String section, String item, double inches, Value... values) {
    add(section, item, bulk.pails(inches), metric() ? "L" : "gal", values);
  }

  /** Adds a weight of pounds. */
  void weight(String section, String item, double pounds, Value... values) {
    add(section, item, bulk.weight(pounds), metric() ? "kg" : "lb", values);
  }

  /** Adds the scale of a tally and of a part of it, in board feet, or as a volume. */
  void scale(String section, String item, LogRule rule, double all, double part) {
    Value title = Value.text(rule.title());
    if (rule.unit() == LogRule.Unit.BOARD_FEET) {
      add(section, item, all, "bd ft", title, Value.count(Math.round(part)));
    } else {
      int decimals = metric() ? 2 : 1;
      double volume = bulk.volume(part * CUBIC_FOOT);
      BigDecimal placed = BigDecimal.valueOf(volume).setScale(decimals, RoundingMode.HALF_UP);
      volume(section, item, all * CUBIC_FOOT, title, Value.number(placed));
    }
  }

  void add(String section, String item, double amount, String unit, Value... values) {
    lines.add(new Quantity(section, item, amount, unit, List.of(values)));
  }
}
