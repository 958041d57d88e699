package roundbook.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import roundbook.intake.Asked;
import roundbook.job.Setting;
import roundbook.units.LengthUnit;

/** What every command that reads takes: settings, further tallies and how to read them. */
final class SettingOptions {
  @Option(names = "--thickness", paramLabel = "LENGTH", description = "Thickness of the logs.")
  private String thickness;

  @Option(names = "--gap", paramLabel = "LENGTH", description = "Gap wanted at the crown.")
  private String gap;

  @Option(names = "--overhang", paramLabel = "LENGTH", description = "Log end past the corner.")
  private String overhang;

  @Option(names = "--slope", paramLabel = "1:RUN", description = "Slope of the necks, such as 1:3.")
  private String slope;

  @Option(names = "--rounds", paramLabel = "N", description = "Rounds wanted.")
  private String rounds;

  @Option(names = "--height", paramLabel = "LENGTH", description = "Wall height wanted.")
  private String height;

  @Option(names = "--paper", paramLabel = "SIZE", description = "Paper: letter or a4.")
  private String paper;

  @Option(
      names = "--language",
      paramLabel = "LANG",
      description = "Language of the crew workbook: en or de.")
  private String language;

  @Option(names = "--seed", paramLabel = "N", description = "Seed of the search.")
  private String seed;

  @Option(
      names = "--set",
      paramLabel = "Name=value",
      description = "Any setting by its name; may be given again.")
  private Map<String, String> settings = new LinkedHashMap<>();

  @Option(
      names = "--logs",
      paramLabel = "FILE",
      description = "Take the logs of another tally too.")
  private List<Path> logs = new ArrayList<>();

  @Option(names = "--sheet", paramLabel = "NAME", description = "The one sheet to read as a tally.")
  private String sheet;

  @Option(
      names = "--length-unit",
      paramLabel = "UNIT",
      converter = UnitOf.class,
      description = "Unit of bare lengths: ft, in, m, cm or mm.")
  private LengthUnit lengthUnit;

  @Option(
      names = "--diameter-unit",
      paramLabel = "UNIT",
      converter = UnitOf.class,
      description = "Unit of bare diameters: in, cm or mm.")
  private LengthUnit diameterUnit;

  /** Reads the symbol of a unit. */
  static final class UnitOf implements ITypeConverter<LengthUnit> {
    @Override
    public LengthUnit convert(String symbol) {
      return LengthUnit.ofSymbol(symbol)
          .orElseThrow(() -> new TypeConversionException("there is no unit " + symbol));
    }
  }

  List<Path> logs() {
    return logs;
  }

  /** Returns what the reading is asked; short forms stand for their settings. */
  Asked asked(JobOptions job) {
    Map<String, String> all = new LinkedHashMap<>(settings);
    Map<String, String> typed = new LinkedHashMap<>();
    put("--thickness", thickness, Setting.LOG_THICKNESS, all, typed);
    put("--gap", gap, Setting.CHINKING_GAP, all, typed);
    put("--overhang", overhang, Setting.OVERHANG, all, typed);
    put("--slope", slope, Setting.SLOPE_RUN, all, typed);
    put("--rounds", rounds, Setting.ROUNDS, all, typed);
    put("--height", height, Setting.WALL_HEIGHT, all, typed);
    put("--units", job.units().orElse(null), Setting.UNITS, all, typed);
    put("--paper", paper, Setting.PAPER, all, typed);
    put("--language", language, Setting.LANGUAGE, all, typed);
    put("--seed", seed, Setting.SEED, all, typed);
    return new Asked(
        all,
        typed,
        job.walls(),
        Optional.ofNullable(sheet),
        Optional.ofNullable(lengthUnit),
        Optional.ofNullable(diameterUnit),
        List.of());
  }

  private static void put(
      String option,
      String value,
      Setting setting,
      Map<String, String> all,
      Map<String, String> typed) {
    if (value != null) {
      all.put(setting.label(), value);
      typed.put(setting.label(), option);
    }
  }
}
