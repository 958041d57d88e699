package roundbook.intake;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import roundbook.job.BuildRules;
import roundbook.job.BuildRules.Origin;
import roundbook.job.Setting;
import roundbook.job.SettingKind;
import roundbook.problem.CellRef;
import roundbook.problem.Phrase;
import roundbook.problem.Problem;
import roundbook.problem.ProblemCode;
import roundbook.problem.Problems;
import roundbook.problem.Value;
import roundbook.table.Cell.CellKind;
import roundbook.table.Row;
import roundbook.table.Table;
import roundbook.units.Length;
import roundbook.units.LengthReader;
import roundbook.units.LengthUnit;
import roundbook.units.Slope;

/**
 * Reads the rules of a job: options first, then the Job sheet, then the defaults.
 *
 * <p>The Job sheet holds a label in its first column and a value in its second; an optional third
 * column states the value's unit. A blank value takes the default. Where nobody names the job's
 * unit and the walls are given in metres, the job is one in millimetres.
 */
final class SettingsReader {
  private final Problems problems;
  private static final Pattern METRIC = Pattern.compile("\\d\\s*[cm]?m", Pattern.CASE_INSENSITIVE);
  private static final BigDecimal ROUNDS_MOST = BigDecimal.valueOf(200);
  private static final BigDecimal WHOLE = BigDecimal.valueOf(100);
  private static final Length HEIGHT_MOST = Length.ofInches(2400);
  private static final int SLIPS_MOST = 2;
  private static final int LETTERS_A_SLIP = 4;

  private final Map<Setting, BuildRules.Value> values = new EnumMap<>(Setting.class);
  private LengthUnit unit = LengthUnit.INCH;

  SettingsReader(Problems problems) {
    this.problems = problems;
  }

  /** Reads the rules; what cannot be used is said, and its default taken. */
  BuildRules read(Optional<Table> job, Asked asked) {
    unit = unitOf(job, asked);
    asked.settings().entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(each -> option(asked, each.getKey(), each.getValue()));
    job.ifPresent(table -> table.rows().forEach(row -> sheetRow(table, row)));
    defaults();
    return BuildRules.of(values);
  }

  private LengthUnit unitOf(Optional<Table> job, Asked asked) {
    String option = "";
    for (Map.Entry<String, String> each : asked.settings().entrySet()) {
      if (Setting.ofLabel(each.getKey()).filter(Setting.UNITS::equals).isPresent()) {
        option = each.getValue();
      }
    }
    String sheet =
        job.stream()
            .flatMap(table -> table.rows().stream())
            .filter(row -> Setting.ofLabel(row.cell(1).text()).orElse(null) == Setting.UNITS)
            .map(row -> row.cell(2).text())
            .findFirst()
            .orElse("");
    String word = (option.isEmpty() ? sheet : option).strip().toLowerCase(Locale.ROOT);
    return LengthUnit.ofSymbol(word)
        .filter(found -> Setting.UNITS.choices().contains(found.symbol()))
        .orElseGet(() -> word.isEmpty() ? unitOfWalls(asked) : LengthUnit.INCH);
  }

  private LengthUnit unitOfWalls(Asked asked) {
    if (asked.walls().filter(house -> METRIC.matcher(house.words()).find()).isEmpty()) {
      return LengthUnit.INCH;
    }
    String symbol = LengthUnit.MILLIMETRE.symbol();
    values.put(Setting.UNITS, new BuildRules.Value(symbol, Origin.DEFAULT));
    return LengthUnit.MILLIMETRE;
  }

  private void option(Asked asked, String label, String text) {
    if (Mapping.isLabel(label)) {
      return;
    }
    CellRef where = CellRef.ofFile(asked.option(label));
    Optional<Setting> setting = Setting.ofLabel(label);
    if (setting.isEmpty()) {
      unknown(where, label, true);
      return;
    }
    set(setting.get(), text, unit, where, Origin.OPTION);
  }

  private void sheetRow(Table table, Row row) {
    String label = row.cell(1).text();
    String text = row.cell(2).text();
    CellKind kind = row.cell(2).kind();
    boolean broken = kind == CellKind.ERROR || kind == CellKind.UNCOMPUTED;
    if (label.isEmpty() || text.isEmpty() && !broken || Mapping.isLabel(label)) {
      return;
    }
    Optional<Setting> setting = Setting.ofLabel(label);
    if (setting.isEmpty()) {
      boolean heading = row.number() == table.rows().get(0).number();
      if (!heading && (label.matches("[A-Z][a-z]+(?:_[a-z]+)+") || isSlip(label))) {
        unknown(table.at(row, 1), label, false);
      }
      return;
    }
    if (broken) {
      problems.add(
          Problem.of(ProblemCode.BAD_SETTING, "formula", table.at(row, 2))
              .with("setting", setting.get().label())
              .found(text));
    } else if (!values.containsKey(setting.get())) {
      LengthUnit own = LengthUnit.ofSymbol(row.cell(3).text()).orElse(unit);
      set(setting.get(), text, own, table.at(row, 2), Origin.WORKBOOK);
    }
  }

  /** Returns whether a word that stands alone is a setting's but for a letter in four. */
  private static boolean isSlip(String label) {
    return label.matches("[A-Z][a-z]{4,}")
        && Spelling.nearest(label, label.length() / LETTERS_A_SLIP).isPresent();
  }

  /** A name mistyped would leave its setting at the default, so it stops the plan. */
  private void unknown(CellRef where, String label, boolean option) {
    Optional<String> meant = Spelling.nearest(label, SLIPS_MOST);
    Problem problem =
        (option || meant.isPresent()
                ? Problem.of(ProblemCode.BAD_SETTING, "unknown", where)
                : Problem.of(ProblemCode.UNKNOWN_SETTING, where))
            .with("setting", label)
            .found(label);
    problems.add(
        meant
            .map(name -> problem.remedy(Phrase.of("remedy.was-it").with("guess", name)))
            .orElse(problem));
  }

  private void set(Setting setting, String text, LengthUnit own, CellRef where, Origin origin) {
    Optional<Object> value = value(setting, text.strip(), own);
    if (value.isEmpty()) {
      Problem bad =
          Problem.of(ProblemCode.BAD_SETTING, "value", where)
              .with("setting", setting.label())
              .with("text", text)
              .with("meaning", setting.meaning())
              .with("limit", limit(setting))
              .found(text);
      boolean bare = setting.kind() == SettingKind.LENGTH && number(text).isPresent();
      problems.add(
          bare ? bad.remedy(Phrase.of("remedy.bare-length").with("unit", own.symbol())) : bad);
      return;
    }
    values.put(setting, new BuildRules.Value(value.get(), origin));
  }

  private Value limit(Setting setting) {
    if (!setting.choices().isEmpty() || setting.kind() == SettingKind.TEXT) {
      return Value.NONE;
    }
    return switch (setting.kind()) {
      case LENGTH ->
          least(setting).isZero()
              ? Phrase.of("limit.most").with("most", printed(most(setting)))
              : Phrase.of("limit.between")
                  .with("least", printed(least(setting)))
                  .with("most", printed(most(setting)));
      case COUNT ->
          setting == Setting.ROUNDS
              ? Phrase.of("limit.count").with("most", ROUNDS_MOST.longValueExact())
              : Phrase.of("limit.whole");
      default ->
          Phrase.of(
              isShare(setting)
                  ? "limit.share"
                  : isSigned(setting) ? "limit.number" : "limit.positive");
    };
  }

  private Value printed(Length most) {
    LengthUnit shown = unit.metric() ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
    return Value.decimal(most.decimal(shown, 0), shown);
  }

  /** Returns more than any log wall has; what is larger was typed in another unit. */
  private static Length most(Setting setting) {
    return switch (setting) {
      case WALL_HEIGHT, SCALE_LENGTH_MOST, BED_LENGTH, TREE_HEIGHT, CRANE_OFF, SLING_LEG ->
          HEIGHT_MOST;
      case LOG_THICKNESS,
          OVERHANG,
          PIECE_LEAST,
          PIN_CLEAR,
          BUTT_SPARE,
          LENGTH_STEP,
          BUTT_OFF_LEAST ->
          Length.ofInches(48);
      default -> Length.ofInches(24);
    };
  }

  /**
   * Returns less than any log wall, trailer, tree, crane or sling has: a bare number of feet or
   * metres that is read as inches or millimetres lies under it.
   */
  private static Length least(Setting setting) {
    return switch (setting) {
      case WALL_HEIGHT -> Length.ofInches(14);
      case BED_LENGTH -> Length.ofInches(96);
      case TREE_HEIGHT -> Length.ofInches(240);
      case CRANE_OFF, SLING_LEG -> Length.ofInches(24);
      case FOUNDATION_STEP -> Length.ofInches(3);
      default -> Length.ZERO;
    };
  }

  /** Returns whether it is a part of a whole, in hundredths. */
  private static boolean isShare(Setting setting) {
    return setting == Setting.BUTT_SHARE || setting == Setting.AIR_HUMIDITY;
  }

  private static boolean isSigned(Setting setting) {
    return setting == Setting.AIR_TEMPERATURE;
  }

  private Optional<Object> value(Setting setting, String text, LengthUnit own) {
    return switch (setting.kind()) {
      case TEXT -> Optional.of(text);
      case CHOICE ->
          setting.choices().stream()
              .filter(choice -> choice.equalsIgnoreCase(text))
              .findFirst()
              .map(Object.class::cast);
      case COUNT ->
          number(text)
              .filter(number -> number.stripTrailingZeros().scale() <= 0)
              .filter(number -> number.compareTo(BigDecimal.valueOf(1_000_000_000)) < 0)
              .filter(number -> setting != Setting.ROUNDS || isRounds(number))
              .map(Object.class::cast);
      case NUMBER -> ratio(setting, text).map(Object.class::cast);
      case LENGTH -> length(setting, text, own).map(Object.class::cast);
    };
  }

  private static Optional<BigDecimal> ratio(Setting setting, String text) {
    if (setting == Setting.SLOPE_RUN) {
      return Slope.parse(text).map(Slope::run);
    }
    boolean below = isSigned(setting) && text.matches("[-−].*");
    return number((below ? text.substring(1) : text).replaceAll("\\s*%$", ""))
        .map(number -> below ? number.negate() : number)
        .filter(number -> isSigned(setting) || number.signum() >= 0)
        .filter(number -> !isShare(setting) || number.compareTo(WHOLE) <= 0);
  }

  private static Optional<Length> length(Setting setting, String text, LengthUnit own) {
    boolean zeroFits =
        setting == Setting.SIZE_STEP
            || setting == Setting.BARK_OFF
            || setting == Setting.TALLY_CORRECTION
            || setting == Setting.CHINKING_GAP
            || setting == Setting.OVERHANG
            || setting == Setting.SQUARING_ALLOWANCE
            || setting == Setting.PRINT_STEP
            || setting == Setting.GAP_LEAST
            || setting == Setting.BUTT_SPARE
            || setting == Setting.LENGTH_STEP
            || setting == Setting.KERF
            || setting == Setting.BUTT_OFF_LEAST
            || setting == Setting.LENGTH_OVER
            || setting == Setting.SHOULDER_LEAST;
    return new LengthReader(own, false)
        .read(text)
        .map(LengthReader.Reading::length)
        .filter(length -> zeroFits || !length.isZero())
        .filter(length -> setting == Setting.TALLY_CORRECTION || !length.isNegative())
        .filter(length -> least(setting).isZero() || !length.isLessThan(least(setting)))
        .filter(length -> !length.absolute().isMoreThan(most(setting)));
  }

  /** A number of rounds that a log wall can have; more would only be searched for in vain. */
  private static boolean isRounds(BigDecimal number) {
    return number.signum() > 0 && number.compareTo(ROUNDS_MOST) <= 0;
  }

  private static Optional<BigDecimal> number(String text) {
    return new LengthReader(LengthUnit.MILLIMETRE, false).number(text);
  }

  private void defaults() {
    boolean metric = unit.metric();
    for (Setting setting : Setting.values()) {
      String text = setting.standard(metric);
      if (!text.isEmpty() && !values.containsKey(setting)) {
        LengthUnit own = metric ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        value(setting, text, own)
            .ifPresent(value -> values.put(setting, new BuildRules.Value(value, Origin.DEFAULT)));
      }
    }
  }
}
