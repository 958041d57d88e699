package roundbook.report.form;

import java.util.ArrayList;
import java.util.List;
import roundbook.job.Setting;
import roundbook.units.Length;
import roundbook.units.LengthFormat;
import roundbook.units.LengthUnit;

/**
 * What a new job workbook is filled with: nothing, or an invented cabin.
 *
 * <p>The cabin's logs follow a fixed pattern of lengths and diameters; no log of it was measured.
 */
final class JobExample implements JobFilling {
  private static final int LONG_LOGS = 19;
  private static final int SHORT_LOGS = 20;
  private static final int OFFCUTS = 2;

  private final LengthUnit unit;
  private final boolean filled;
  private final LengthFormat format;

  private JobExample(LengthUnit unit, boolean filled) {
    this.unit = unit;
    this.filled = filled;
    Length step = unit.metric() ? Length.ofMillimetres(1) : Length.ofInchFraction(1, 16);
    this.format = LengthFormat.forJob(unit, step);
  }

  static JobExample none(LengthUnit unit) {
    return new JobExample(unit, false);
  }

  static JobExample cabin(LengthUnit unit) {
    return new JobExample(unit, true);
  }

  /** Returns the text of a setting; empty takes the default. */
  @Override
  public String setting(Setting setting) {
    return switch (setting) {
      case UNITS -> unit == LengthUnit.INCH && !filled ? "" : unit.symbol();
      case PAPER -> unit.metric() ? "a4" : "";
      case JOB_NAME -> filled ? "Example cabin" : "";
      case ROUNDS -> filled ? "8" : "";
      case SPECIES -> filled ? "white pine" : "";
      default -> "";
    };
  }

  /** Returns the four walls, without lengths when nothing is filled in. */
  @Override
  public List<List<String>> walls() {
    String across = filled ? tape(240) : "";
    String deep = filled ? tape(192) : "";
    return List.of(
        List.of("N", across, "", "", "", "", "", ""),
        List.of("E", deep, "", "", "", "", "", ""),
        List.of("S", across, "", "", filled ? "door to the yard" : "", "", "", ""),
        List.of("W", deep, "", "", "", "", "", ""));
  }

  /** Returns the rows of the tally. */
  @Override
  public List<List<String>> logs() {
    List<List<String>> rows = new ArrayList<>();
    if (filled) {
      for (int index = 0; index < LONG_LOGS + SHORT_LOGS + OFFCUTS; index++) {
        rows.add(log(index));
      }
    }
    return rows;
  }

  private List<String> log(int index) {
    boolean isLong = index % 2 == 0 && index / 2 < LONG_LOGS;
    boolean offcut = index >= LONG_LOGS + SHORT_LOGS;
    int inches = (offcut ? 96 : isLong ? 252 : 204) + index * 5 % 14;
    int mid = 16 * 14 - index * 48 / (LONG_LOGS + SHORT_LOGS) + index * 7 % 13 - 6;
    int half = inches * (9 + index * 5 % 8) / 192;
    boolean midMissing = index == 11;
    return List.of(
        String.valueOf(index + 1),
        tape(inches),
        sixteenths(mid + half + (index % 3 == 0 ? 10 : 0)),
        midMissing ? "" : sixteenths(mid),
        sixteenths(mid - half),
        "",
        index % 3 == 0 ? "butt log" : "upper log",
        index % 6 == 5 ? "red spruce" : "",
        "off",
        index % 4 == 1 ? sixteenths(8 + index % 3 * 4) : "",
        index < 2 ? "sill" : "",
        "",
        "",
        index == 30 ? "x" : "",
        remark(index));
  }

  private static String remark(int index) {
    return switch (index) {
      case 4 -> "tapers hard";
      case 11 -> "middle under the pile, not measured";
      case 30 -> "rot at the butt";
      default -> "";
    };
  }

  /** Returns a door and a window. */
  @Override
  public List<List<String>> openings() {
    if (!filled) {
      return List.of();
    }
    return List.of(
        List.of("Door", "S", small(96), small(38), "0", small(82), "cut after stacking", "", ""),
        List.of(
            "Window",
            "E",
            small(76),
            small(40),
            small(36),
            small(76),
            "cut after stacking",
            "",
            ""));
  }

  /** Returns one settled place. */
  @Override
  public List<List<String>> pins() {
    return filled ? List.of(List.of("1", "S", "1", "", "the soundest, under the door")) : List.of();
  }

  private String tape(int inches) {
    return unit.metric() ? small(inches) : format.feetInches(Length.ofInches(inches));
  }

  private String small(int inches) {
    Length length = unit.metric() ? Length.ofMillimetres(25L * inches) : Length.ofInches(inches);
    return format.mark(length);
  }

  private String sixteenths(int count) {
    Length length =
        unit.metric()
            ? Length.ofMillimetres(Math.round(count * 25 / 16.0))
            : Length.ofInchFraction(count, 16);
    return format.mark(length);
  }
}
