package roundbook.job;

import static roundbook.job.SettingKind.CHOICE;
import static roundbook.job.SettingKind.COUNT;
import static roundbook.job.SettingKind.LENGTH;
import static roundbook.job.SettingKind.NUMBER;
import static roundbook.job.SettingKind.TEXT;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Every value of the Job sheet, with its kind, defaults and meaning.
 *
 * <p>The name in workbooks and on the command line is the constant's name with a capital first and
 * small letters after it, such as {@code Log_thickness}. An empty default means that the value may
 * be left out.
 */
public enum Setting {
  /** The job's name. */
  JOB_NAME(TEXT, "", "Name of the job, printed on every page"),
  /** The date printed on every page. */
  JOB_DATE(TEXT, "", "Date to print; blank: none is printed"),
  /** The unit of the job. */
  UNITS(CHOICE, "in", "Unit of the job: in, mm or cm"),
  /** Thickness of the sawn or hewn logs. */
  LOG_THICKNESS(LENGTH, "6", "150", "Sawn or hewn thickness of the logs"),
  /** The gap wanted at the crown. */
  CHINKING_GAP(LENGTH, "1", "25", "Gap wanted between two logs, at the crown"),
  /** How far a trimmed log reaches past the corner. */
  OVERHANG(LENGTH, "3", "75", "Trimmed end past the outer face of the crossing wall"),
  /** The run of the template's slope. */
  SLOPE_RUN(NUMBER, "3", "Run of the neck template: 3 means one in three"),
  /** The step that a round's size is taken to. */
  SIZE_STEP(LENGTH, "1/2", "10", "Step of the size of a round; 0 takes the exact mean"),
  /** The step that marks are printed to. */
  PRINT_STEP(LENGTH, "1/16", "1", "Step of the marks and lengths printed"),
  /** The height wanted. */
  WALL_HEIGHT(LENGTH, "", "", "Wall height wanted; blank: Rounds, or as the logs allow"),
  /** The number of rounds wanted. */
  ROUNDS(COUNT, "", "Number of rounds; blank: as many as the height or the logs allow"),
  /** The walls that are laid first. */
  LAID_FIRST(TEXT, "N S", "Walls laid first in every round"),
  /** Which way the butts of round 1 run. */
  BUTTS_RUN(CHOICE, "clockwise", "Way round 1's butts run: clockwise or counterclockwise"),
  /** Wood to square off at each end. */
  SQUARING_ALLOWANCE(LENGTH, "2", "50", "Least length cut off each end to square it"),
  /** Where the excess of a long log may come off. */
  CUT_EXCESS(CHOICE, "either", "Excess of a long log comes off either end, or the tip only"),
  /** What becomes of thin tips. */
  TIP_RULE(CHOICE, "warn", "Tips too thin for the marks: warn, or refuse such places"),
  /** The most sweep allowed in a wall. */
  SWEEP_MOST(LENGTH, "", "", "Most sweep of a wall log; blank: any that cleans up"),
  /** Bark taken off diameters measured over bark. */
  BARK_OFF(LENGTH, "0", "0", "Bark, both sides together, taken off diameters over bark"),
  /** The least gap. */
  GAP_LEAST(LENGTH, "1/2", "12", "Least gap; under it the page shows a flag"),
  /** The largest gap. */
  GAP_MOST(LENGTH, "1 3/4", "45", "Largest gap; over it the page shows a flag"),
  /** The most that the mids of a round may differ. */
  SPREAD_MOST(LENGTH, "1", "25", "Most that the middle diameters of a round may differ"),
  /** The most that a round may differ from the one below it. */
  STEP_MOST(LENGTH, "1", "25", "Most that a round's size may differ from the one below"),
  /** What the search weighs first. */
  BALANCE_FOR(CHOICE, "even", "Plan for even gaps on the whole, or worst: the worst gap first"),
  /** How much a corner may be out of level. */
  LEVEL_TOLERANCE(LENGTH, "1/4", "6", "Most that corners may be out of level"),
  /** The least wood above the upper mark. */
  SHOULDER_LEAST(LENGTH, "1 1/2", "40", "Least wood above the upper mark on the inside face"),
  /** The least thickness of the neck. */
  NECK_LEAST(LENGTH, "4", "100", "Least height of the neck where it is thinnest"),
  /** The least length of a piece beside an opening. */
  PIECE_LEAST(LENGTH, "12", "300", "Least length beside an opening past the corner's neck"),
  /** Spares to keep. */
  SPARES_PERCENT(NUMBER, "5", "Spares to keep, percent of each class, one at the least"),
  /** How thick buck boards are. */
  BUCK_THICKNESS(LENGTH, "1 1/2", "40", "Thickness of the buck boards round an opening"),
  /** How far pins stay from a cut. */
  PIN_CLEAR(LENGTH, "4", "100", "Least distance of a pin from the side of an opening"),
  /** The middle diameter wanted in the first round. */
  MID_BOTTOM(LENGTH, "13 1/2", "340", "Order: middle diameter wanted in the first round"),
  /** The middle diameter wanted in the last round. */
  MID_TOP(LENGTH, "11 1/2", "290", "Order: middle diameter wanted in the last round"),
  /** What butt logs are ordered longer. */
  BUTT_SPARE(LENGTH, "24", "600", "Order: more length on butt logs, for the flare to saw off"),
  /** The step of lengths that a yard cuts to. */
  LENGTH_STEP(LENGTH, "24", "300", "Order: step of the lengths a yard cuts; 0 orders the exact"),
  /** What a yard leaves on over the length asked for. */
  LENGTH_OVER(LENGTH, "6", "50", "Order: excess that the yard leaves on a length asked for"),
  /** The share of butt logs. */
  BUTT_SHARE(NUMBER, "50", "Order: share of butt logs expected, percent"),
  /** The widest band of middle diameters on a line of the order. */
  BAND_MOST(LENGTH, "3", "75", "Order: widest band of middle diameters on one line"),
  /** What a trailer carries. */
  LOAD_MOST(NUMBER, "", "Order: most a trailer carries, lb or kg; blank: no loads planned"),
  /** The length that a trailer takes. */
  BED_LENGTH(LENGTH, "", "", "Order: longest log the trailer takes; blank: any"),
  /** How tall trees are where the logs come from. */
  TREE_HEIGHT(LENGTH, "", "", "Order: height of the trees to mark; blank: no sheet Trees"),
  /** The currency of prices. */
  CURRENCY(TEXT, "", "Order: word printed with money; blank: none"),
  /** The species where the tally is silent. */
  SPECIES(TEXT, "", "Species where the tally does not say"),
  /** Moisture content now. */
  MOISTURE_NOW(NUMBER, "", "Moisture content now, percent; blank: green"),
  /** Moisture content in service. */
  MOISTURE_IN_SERVICE(NUMBER, "12", "Moisture content in service, percent"),
  /** Temperature of the air in service. */
  AIR_TEMPERATURE(NUMBER, "", "Air in service, °F or in metric work °C; with Air_humidity"),
  /** Humidity of the air in service. */
  AIR_HUMIDITY(NUMBER, "", "Relative humidity in service, percent; gives the moisture there"),
  /** How deep the chinking is. */
  CHINKING_DEPTH(LENGTH, "1", "25", "Depth of the chinking from each face"),
  /** What is bought over the volume reckoned. */
  WASTE_PERCENT(NUMBER, "10", "Chinking bought over the volume reckoned, percent"),
  /** How much thicker than its joint backer is bought. */
  BACKER_SQUEEZE(NUMBER, "25", "Backer bought thicker than the joint where it lies, percent"),
  /** The longest stretch that a mill scales as one log. */
  SCALE_LENGTH_MOST(LENGTH, "240", "6100", "Longest length scaled as one log by the log rules"),
  /** What is added to the diameters of logs that are not hewn yet. */
  TALLY_CORRECTION(LENGTH, "0", "0", "Added to tallied diameters of logs not yet hewn; may be -"),
  /** What a change must pay before a log that is not cut yet changes its place. */
  CHANGE_PAYS(
      NUMBER, "1", "Least a log moved by replan must pay: fall of the score, square inches"),
  /** How the first round is bedded. */
  FIRST_BED(CHOICE, "flat", "First bed: flat (sawn at the lower mark), starter or level"),
  /** Paper. */
  PAPER(CHOICE, "letter", "Paper: letter or a4"),
  /** The language of the crew workbook. */
  LANGUAGE(CHOICE, "en", "Language of the crew workbook: en or de"),
  /** The seed of the search. */
  SEED(COUNT, "1", "Seed of the search for the best plan; the same seed, the same plan");

  private final SettingKind kind;
  private final String inchDefault;
  private final String metricDefault;
  private final String meaning;

  Setting(SettingKind kind, String standard, String meaning) {
    this(kind, standard, standard, meaning);
  }

  Setting(SettingKind kind, String inchDefault, String metricDefault, String meaning) {
    this.kind = kind;
    this.inchDefault = inchDefault;
    this.metricDefault = metricDefault;
    this.meaning = meaning;
  }

  /** Returns the name used in workbooks and on the command line. */
  public String label() {
    return name().charAt(0) + name().substring(1).toLowerCase(Locale.ROOT);
  }

  /** Returns what kind of value it holds. */
  public SettingKind kind() {
    return kind;
  }

  /** Returns the default as text, in inches or millimetres; empty when there is none. */
  public String standard(boolean metric) {
    return metric ? metricDefault : inchDefault;
  }

  /** Returns the words that a choice may be; none for other kinds. */
  public List<String> choices() {
    return switch (this) {
      case UNITS -> List.of("in", "mm", "cm");
      case BUTTS_RUN -> List.of("clockwise", "counterclockwise");
      case CUT_EXCESS -> List.of("either", "tip");
      case TIP_RULE -> List.of("warn", "refuse");
      case BALANCE_FOR -> List.of("even", "worst");
      case FIRST_BED -> List.of("flat", "starter", "level");
      case PAPER -> List.of("letter", "a4");
      case LANGUAGE -> List.of("en", "de");
      default -> List.of();
    };
  }

  /** Returns what it means, in one line. */
  public String meaning() {
    return meaning;
  }

  /** Finds the setting of a name, whatever its case, with blanks or hyphens for underlines. */
  public static Optional<Setting> ofLabel(String text) {
    String wanted = text.strip().toUpperCase(Locale.ROOT).replaceAll("[\\s_-]+", "_");
    for (Setting setting : values()) {
      if (setting.name().equals(wanted)) {
        return Optional.of(setting);
      }
    }
    return Optional.empty();
  }
}
