package roundbook.units;

/**
 * The units that much of something is counted in: feet and pounds, or metres and kilograms.
 *
 * @param metric whether to count in metres and kilograms
 */
public record Bulk(boolean metric) {
  private static final double FOOT = 12;
  private static final double METRE = 1 / 0.0254;

  /** Cubic inches of a US gallon, by definition. */
  private static final double GALLON = 231;

  private static final double LITRE = METRE * METRE * METRE / 1000;

  /** Kilograms of a pound, by definition. */
  private static final double POUND = 0.45359237;

  /** Returns decimal inches in feet or metres. */
  public double length(double inches) {
    return inches / side();
  }

  /** Returns square inches in square feet or square metres. */
  public double area(double squareInches) {
    return squareInches / side() / side();
  }

  /** Returns cubic inches in cubic feet or cubic metres. */
  public double volume(double cubicInches) {
    return cubicInches / side() / side() / side();
  }

  /** Returns cubic inches as they stand on pails, in US gallons or litres. */
  public double pails(double cubicInches) {
    return cubicInches / (metric ? LITRE : GALLON);
  }

  /** Returns pounds in pounds or kilograms. */
  public double weight(double pounds) {
    return metric ? pounds * POUND : pounds;
  }

  /** Returns {@code ft} or {@code m}. */
  public String symbol() {
    return (metric ? LengthUnit.METRE : LengthUnit.FOOT).symbol();
  }

  private double side() {
    return metric ? METRE : FOOT;
  }
}
