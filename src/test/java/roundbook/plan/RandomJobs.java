package roundbook.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import roundbook.job.Setting;
import roundbook.table.Cell;
import roundbook.table.Row;
import roundbook.table.Table;

/**
 * Random jobs as a builder would type them, from their seeds: odd settings, yards that are too
 * small, logs that just fit, openings and pins wherever they fall.
 */
public final class RandomJobs {
  private static final List<String> COMPASS = List.of("N", "E", "S", "W");
  private static final List<List<String>> RINGS =
      List.of(
          COMPASS,
          COMPASS,
          List.of("N", "S", "E", "W"),
          List.of("W", "N", "E", "S"),
          List.of("A", "B", "C", "D"),
          List.of("FRONT", "LEFT", "BACK", "RIGHT"));
  private static final List<String> SPECIES =
      List.of("", "", "white pine", "lodgepole pine", "Engelmann spruce", "red spruce", "larch");

  private final SplittableRandom random;
  private final Map<String, List<List<String>>> sheets = new LinkedHashMap<>();
  private final Map<Setting, String> settings = new LinkedHashMap<>();
  private String unit = "in";
  private double across;
  private double deep;
  private double overhang = 3;
  private double squaring = 2;

  private RandomJobs(long seed) {
    this.random = new SplittableRandom(seed);
  }

  /** Returns the rows of the job's sheets, each with its headings first. */
  public static Map<String, List<List<String>>> sheets(long seed) {
    RandomJobs job = new RandomJobs(seed);
    job.settings();
    job.walls();
    job.logs();
    job.openings();
    job.pins();
    return job.sheets;
  }

  /** Returns the tables of a job's sheets, as a workbook of texts is read. */
  static List<Table> tables(Map<String, List<List<String>>> sheets) {
    List<Table> tables = new ArrayList<>();
    sheets.forEach(
        (name, texts) -> {
          List<Row> rows = new ArrayList<>();
          texts.forEach(row -> rows.add(row(rows.size() + 1, row)));
          tables.add(Table.of("job.xlsx", name, Set.of(), rows));
        });
    return tables;
  }

  private static Row row(int number, List<String> texts) {
    List<Cell> cells = new ArrayList<>();
    for (int column = 1; column <= texts.size(); column++) {
      if (!texts.get(column - 1).isEmpty()) {
        cells.add(Cell.text(column, texts.get(column - 1)));
      }
    }
    return new Row(number, cells, false, false);
  }

  private void settings() {
    unit = pick("in", "in", "in", "mm", "mm", "cm");
    across = 6 * (16 + random.nextInt(70));
    deep = chance(15) ? across : 6 * (16 + random.nextInt(70));
    overhang = maybe(30, Setting.OVERHANG, 3, () -> pick(0., 1., 2.5, 4., 6., 12.));
    squaring = maybe(50, Setting.SQUARING_ALLOWANCE, 2, () -> pick(0., 0., 0., 1., 2.25, 6.));
    maybe(30, Setting.LOG_THICKNESS, 6, () -> pick(3., 4.5, 5., 6., 7., 8., 10.));
    maybe(30, Setting.CHINKING_GAP, 1, () -> pick(0., .25, .5, 1., 1.5, 2., 3.));
    maybe(15, Setting.SIZE_STEP, .5, () -> pick(0., .25, 1.));
    maybe(15, Setting.PRINT_STEP, .0625, () -> pick(0., .03125, .125, .25));
    maybe(10, Setting.GAP_LEAST, .5, () -> pick(0., .25, 1.));
    maybe(10, Setting.GAP_MOST, 1.75, () -> pick(.75, 1., 3., 6.));
    maybe(10, Setting.SPREAD_MOST, 1, () -> pick(.25, .5, 2., 6.));
    maybe(10, Setting.STEP_MOST, 1, () -> pick(.25, .5, 2., 6.));
    maybe(10, Setting.SHOULDER_LEAST, 1.5, () -> pick(0., .5, 3.));
    maybe(10, Setting.NECK_LEAST, 4, () -> pick(1., 2., 5., 8.));
    maybe(10, Setting.PIECE_LEAST, 12, () -> pick(3., 24., 40.));
    maybe(10, Setting.BUCK_THICKNESS, 1.5, () -> pick(.75, 2., 4.));
    maybe(10, Setting.CHINKING_DEPTH, 1, () -> pick(.5, 2., 4.));
    maybe(10, Setting.SWEEP_MOST, 9, () -> pick(.5, 1., 2.));
    maybe(10, Setting.BARK_OFF, 0, () -> pick(.25, .5, 1.));
    maybe(10, Setting.TALLY_CORRECTION, 0, () -> pick(.125, .25, .5));
    maybe(10, Setting.SCALE_LENGTH_MOST, 240, () -> pick(96., 192., 480.));
    if (chance(60)) {
      settings.put(Setting.ROUNDS, String.valueOf(1 + random.nextInt(6)));
    }
    maybe(20, Setting.WALL_HEIGHT, 96, () -> 24. + random.nextInt(96));
    word(30, Setting.FIRST_BED, "flat", "starter", "level");
    word(30, Setting.CUT_EXCESS, "either", "tip");
    word(4, Setting.TIP_RULE, "refuse");
    word(20, Setting.BALANCE_FOR, "even", "worst");
    word(20, Setting.BUTTS_RUN, "clockwise", "counterclockwise");
    word(20, Setting.SLOPE_RUN, "1.5", "2", "4", "6", "1:3");
    word(20, Setting.MOISTURE_NOW, "0", "15", "25", "60");
    word(20, Setting.MOISTURE_IN_SERVICE, "0", "8", "20", "35");
    word(10, Setting.AIR_HUMIDITY, "0", "45", "80", "100");
    word(10, Setting.AIR_TEMPERATURE, "-10", "20", "70");
    word(10, Setting.SPARES_PERCENT, "0", "10", "100");
    word(10, Setting.WASTE_PERCENT, "0", "50");
    word(10, Setting.BACKER_SQUEEZE, "0", "100");
    word(10, Setting.SPECIES, "white pine", "no such tree");
    word(10, Setting.SEED, "0", "7", "999999999");
    word(10, Setting.LANGUAGE, "en", "de");
    word(10, Setting.PAPER, "letter", "a4");
    List<List<String>> rows = new ArrayList<>(List.of(List.of("Name", "Value")));
    rows.add(List.of(Setting.UNITS.label(), unit));
    settings.forEach((setting, value) -> rows.add(List.of(setting.label(), value)));
    sheets.put("Job", rows);
  }

  private void walls() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Wall", "Outside length", "Laid first", "Thickness"));
    List<String> ring = pick(RINGS);
    boolean asListed = !ring.containsAll(COMPASS);
    boolean first = random.nextBoolean();
    boolean thick = chance(15);
    for (int index = 0; index < ring.size(); index++) {
      String name = ring.get(index);
      boolean north = asListed ? index % 2 == 0 : "NS".contains(name);
      rows.add(
          List.of(
              name,
              length(north ? across : deep) + " " + unit,
              north == first ? "x" : "no",
              thick ? length(5 + random.nextInt(4)) : ""));
    }
    sheets.put("Walls", rows);
  }

  private void logs() {
    List<List<String>> rows = new ArrayList<>();
    String in = " (" + unit + ")";
    rows.add(
        List.of(
            "Log",
            "Length" + in,
            "Butt" + in,
            "Mid" + in,
            "Tip" + in,
            "Species",
            "Bark",
            "Sweep" + in,
            "Keep for",
            "Wall",
            "Round",
            "Skip"));
    int count = chance(3) ? random.nextInt(4) : 4 + random.nextInt(22);
    double size = 9 + random.nextInt(9);
    double taper = random.nextDouble() / 60;
    for (int number = 1; number <= count; number++) {
      rows.add(log(number, size, taper));
    }
    sheets.put("Logs", rows);
  }

  private List<String> log(int number, double size, double taper) {
    double inches = logLength();
    double mid = size + random.nextInt(33) / 8.0 - 2;
    double half = inches * taper * (.5 + random.nextDouble()) / 2;
    String wall = sheets.get("Walls").get(1 + random.nextInt(4)).get(0);
    boolean swapped = chance(2);
    return List.of(
        "L" + number,
        length(inches),
        length(eighth(swapped ? mid - half : mid + half)),
        chance(15) ? "" : length(eighth(mid)),
        length(eighth(swapped ? mid + half : mid - half)),
        pick(SPECIES),
        chance(10) ? pick("over", "off") : "",
        chance(10) ? length(random.nextInt(24) / 8.0) : "",
        chance(8) ? pick("sill", "plate", "header", "spare", "any") : "",
        chance(3) ? wall : "",
        chance(2) ? String.valueOf(1 + random.nextInt(6)) : "",
        chance(2) ? "x" : "");
  }

  /** Most logs are long enough for a wall, some by next to nothing, some only for an opening. */
  private double logLength() {
    double wall = (random.nextBoolean() ? across : deep) + 2 * overhang + 2 * squaring;
    return switch (random.nextInt(10)) {
      case 0 -> wall + (random.nextInt(11) - 5) / 100.0;
      case 1 -> wall;
      case 2 -> Math.max(73, wall * (.3 + random.nextDouble() / 2));
      case 3 -> wall + random.nextInt(100);
      default -> wall + random.nextInt(24);
    };
  }

  private void openings() {
    List<List<String>> rows = new ArrayList<>();
    String in = " (" + unit + ")";
    rows.add(
        List.of(
            "Name",
            "Wall",
            "From left corner" + in,
            "Width" + in,
            "Sill height" + in,
            "Head height" + in,
            "Cut after stacking or short logs"));
    int count = chance(50) ? 0 : 1 + random.nextInt(3);
    for (int number = 1; number <= count; number++) {
      double sill = chance(50) ? 0 : random.nextInt(50);
      rows.add(
          List.of(
              "Opening " + number,
              sheets.get("Walls").get(1 + random.nextInt(4)).get(0),
              length(random.nextInt(200)),
              length(chance(3) ? 0 : 12 + random.nextInt(60)),
              length(sill),
              length(sill + 10 + random.nextInt(80)),
              pick("cut after stacking", "short logs", "short logs", "")));
    }
    sheets.put("Openings", rows);
  }

  private void pins() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Round", "Wall", "Log", "Butt at", "Why"));
    int count = chance(60) ? 0 : 1 + random.nextInt(3);
    int logs = sheets.get("Logs").size() - 1;
    for (int number = 1; number <= count && logs > 0; number++) {
      rows.add(
          List.of(
              chance(75) ? String.valueOf(1 + random.nextInt(6)) : "",
              chance(75) ? sheets.get("Walls").get(1 + random.nextInt(4)).get(0) : "",
              chance(90) ? "L" + (1 + random.nextInt(logs)) : "",
              chance(15) ? pick("NW", "NE", "SE", "SW") : "",
              "wanted"));
    }
    sheets.put("Pins", rows);
  }

  private boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  @SafeVarargs
  private <T> T pick(T... choices) {
    return choices[random.nextInt(choices.length)];
  }

  private <T> T pick(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  /** Sets a length now and then, and returns what holds, in inches. */
  private double maybe(int percent, Setting setting, double standard, Supplier<Double> inches) {
    if (!chance(percent)) {
      return standard;
    }
    double chosen = inches.get();
    settings.put(setting, length(chosen));
    return chosen;
  }

  private void word(int percent, Setting setting, String... words) {
    if (chance(percent)) {
      settings.put(setting, pick(words));
    }
  }

  private static double eighth(double inches) {
    return Math.round(inches * 8) / 8.0;
  }

  /** Returns inches in the job's unit, to a hundredth of an inch or a tenth of a millimetre. */
  private String length(double inches) {
    return switch (unit) {
      case "mm" -> decimal(inches * 25.4, 1);
      case "cm" -> decimal(inches * 2.54, 2);
      default -> decimal(inches, 4);
    };
  }

  private static String decimal(double number, int places) {
    String text = String.format(Locale.ROOT, "%." + places + "f", number);
    return text.replaceAll("0+$", "").replaceAll("\\.$", "");
  }
}
