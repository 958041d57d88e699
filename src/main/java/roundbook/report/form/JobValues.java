package roundbook.report.form;

import java.math.BigDecimal;
import java.util.List;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Job;
import roundbook.job.Leaf;
import roundbook.job.Opening;
import roundbook.job.OtherLog;
import roundbook.job.Pin;
import roundbook.job.Price;
import roundbook.job.Setting;
import roundbook.job.Wall;
import roundbook.units.Length;
import roundbook.units.LengthFormat;

/**
 * Fills a job workbook with a job that has no log yet: what was set for it, its walls and openings.
 *
 * @param job the job
 */
record JobValues(Job job) implements JobFilling {
  @Override
  public String setting(Setting setting) {
    if (setting == Setting.UNITS) {
      return job.rules().unit().symbol();
    }
    return job.rules()
        .value(setting)
        .filter(value -> value.origin() != Origin.DEFAULT)
        .map(value -> text(value.value()))
        .orElse("");
  }

  private String text(Object value) {
    if (value instanceof Length length) {
      return format().mark(length);
    }
    return value instanceof BigDecimal number
        ? number.stripTrailingZeros().toPlainString()
        : String.valueOf(value);
  }

  @Override
  public List<List<String>> walls() {
    return job.building().walls().stream().map(this::wall).toList();
  }

  private List<String> wall(Wall wall) {
    boolean own = !wall.thickness().equals(job.rules().thickness());
    return List.of(
        wall.name(),
        outside(job.building().told(wall)),
        wall.laidFirst() ? "x" : "",
        own ? format().mark(wall.thickness()) : "",
        wall.remarks(),
        String.join(" ", wall.stand().between()),
        wall.stand().at().map(this::outside).orElse(""),
        wall.stand().pen() > 1 || hasPens() ? String.valueOf(wall.stand().pen()) : "");
  }

  private boolean hasPens() {
    return job.building().pens().size() > 1;
  }

  /** Returns a length with the unit that it is in, which a bare number of a wall would not tell. */
  private String outside(Length length) {
    return job.rules().metric()
        ? format().mark(length) + " " + job.rules().unit().symbol()
        : format().feetInches(length);
  }

  @Override
  public List<List<String>> logs() {
    return List.of();
  }

  @Override
  public List<List<String>> openings() {
    return job.openings().stream().map(this::opening).toList();
  }

  private List<String> opening(Opening opening) {
    return List.of(
        opening.name(),
        opening.wall(),
        format().mark(opening.toldLeft(job.building())),
        format().mark(opening.width()),
        format().mark(opening.sill()),
        format().mark(opening.head()),
        opening.shortLogs() ? "short logs" : "cut after stacking",
        opening.leaf().map(this::leaf).orElse(""),
        opening.remarks());
  }

  private String leaf(Leaf leaf) {
    return format().mark(leaf.width()) + " x " + format().mark(leaf.height());
  }

  @Override
  public List<List<String>> pins() {
    return job.pins().stream().map(JobValues::pin).toList();
  }

  private static List<String> pin(Pin pin) {
    String round = pin.round().isPresent() ? String.valueOf(pin.round().getAsInt()) : "";
    return List.of(round, pin.wall(), pin.log(), pin.buttAt(), pin.why());
  }

  @Override
  public List<List<String>> others() {
    return job.others().stream().map(this::other).toList();
  }

  private List<String> other(OtherLog other) {
    return List.of(
        other.name(),
        String.valueOf(other.count()),
        outside(other.length()),
        other.mid().isZero() ? "" : format().mark(other.mid()),
        other.tip().isZero() ? "" : format().mark(other.tip()),
        other.sweep().map(format()::mark).orElse(""),
        other.remarks());
  }

  @Override
  public List<Price> prices() {
    return job.prices();
  }

  private LengthFormat format() {
    Length step =
        job.rules().metric() ? Length.ofNanometres(100_000) : Length.ofInchFraction(1, 64);
    return LengthFormat.forJob(job.rules().unit(), step);
  }
}
