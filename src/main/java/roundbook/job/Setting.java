package roundbook.job;

import static roundbook.job.SettingKind.CHOICE;
import static roundbook.job.SettingKind.COUNT;
import static roundbook.job.SettingKind.LENGTH;
import static roundbook.job.SettingKind.NUMBER;
import static roundbook.job.SettingKind.TEXT;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import roundbook.problem.Phrase;

/**
 * Every value of the Job sheet, with its kind and defaults.
 *
 * <p>The name in workbooks and on the command line is the constant's name with a capital first and
 * small letters after it, such as {@code Log_thickness}. An empty default means that the value may
 * be left out.
 */
public enum Setting {
  /** The job's name. */
  JOB_NAME(TEXT, ""),
  /** The date printed on every page. */
  JOB_DATE(TEXT, ""),
  /** The unit of the job. */
  UNITS(CHOICE, "in"),
  /** Thickness of the sawn or hewn logs. */
  LOG_THICKNESS(LENGTH, "6", "150"),
  /**
   * The gap wanted at the crown. In millimetres it is even, as sizes by tens are: a course of
   * {@code D + g} is then two whole necks, and nothing is rounded up in every round.
   */
  CHINKING_GAP(LENGTH, "1", "24"),
  /** How far a trimmed log reaches past the corner. */
  OVERHANG(LENGTH, "3", "75"),
  /** The run of the template's slope. */
  SLOPE_RUN(NUMBER, "3"),
  /** The step that a round's size is taken to. */
  SIZE_STEP(LENGTH, "1/2", "10"),
  /** The step that marks are printed to. */
  PRINT_STEP(LENGTH, "1/16", "1"),
  /** The height wanted. */
  WALL_HEIGHT(LENGTH, "", ""),
  /** The number of rounds wanted. */
  ROUNDS(COUNT, ""),
  /** The walls that are laid first. */
  LAID_FIRST(TEXT, "N S"),
  /** Which way the butts of round 1 run. */
  BUTTS_RUN(CHOICE, "clockwise"),
  /** Wood to square off at each end. */
  SQUARING_ALLOWANCE(LENGTH, "2", "50"),
  /** Where the excess of a long log may come off. */
  CUT_EXCESS(CHOICE, "either"),
  /** What becomes of ends that are graded stop. */
  TIP_RULE(CHOICE, "warn"),
  /** The most sweep allowed in a wall. */
  SWEEP_MOST(LENGTH, "", ""),
  /** Bark taken off diameters measured over bark. */
  BARK_OFF(LENGTH, "0", "0"),
  /** The least gap. */
  GAP_LEAST(LENGTH, "1/2", "12"),
  /** The largest gap. */
  GAP_MOST(LENGTH, "1 3/4", "45"),
  /** The most that the mids of a round may differ. */
  SPREAD_MOST(LENGTH, "1", "25"),
  /** The most that a round may differ from the one below it. */
  STEP_MOST(LENGTH, "1", "25"),
  /** What the search weighs first. */
  BALANCE_FOR(CHOICE, "even"),
  /** How much a corner may be out of level. */
  LEVEL_TOLERANCE(LENGTH, "1/4", "6"),
  /** Whether walls that stand low or high as a whole are brought back to the height planned. */
  HOLD_HEIGHT(CHOICE, "no"),
  /** The least face above the upper mark before an end is looked at. */
  SHOULDER_LEAST(LENGTH, "1/2", "12"),
  /** How much of a bearing may be gone before its end is looked at, in percent. */
  BEARING_LOOK(NUMBER, "5"),
  /** How much may be gone before its log may not lie there, in percent. */
  BEARING_STOP(NUMBER, "20"),
  /** The least thickness of the neck. */
  NECK_LEAST(LENGTH, "4", "100"),
  /** The least length of a piece beside an opening. */
  PIECE_LEAST(LENGTH, "12", "300"),
  /** Spares to keep. */
  SPARES_PERCENT(NUMBER, "5"),
  /** How thick buck boards are. */
  BUCK_THICKNESS(LENGTH, "1 1/2", "40"),
  /** How high the finished floor lies above the first bed. */
  FLOOR_HEIGHT(LENGTH, "", ""),
  /** How far pins stay from a cut. */
  PIN_CLEAR(LENGTH, "4", "100"),
  /** The middle diameter wanted in the first round. */
  MID_BOTTOM(LENGTH, "13 1/2", "340"),
  /** The middle diameter wanted in the last round. */
  MID_TOP(LENGTH, "11 1/2", "290"),
  /** What butt logs are ordered longer. */
  BUTT_SPARE(LENGTH, "24", "600"),
  /** The step of lengths that a yard cuts to. */
  LENGTH_STEP(LENGTH, "24", "300"),
  /** What a yard leaves on over the length asked for. */
  LENGTH_OVER(LENGTH, "6", "50"),
  /** The share of butt logs. */
  BUTT_SHARE(NUMBER, "50"),
  /** The widest band of middle diameters on a line of the order. */
  BAND_MOST(LENGTH, "3", "75"),
  /** The least diameter of a piece that is cut from a stem; blank: what the least round bears. */
  TIP_LEAST(LENGTH, "", ""),
  /** What a saw cut takes. */
  KERF(LENGTH, "1/4", "6"),
  /** What is cut off the butt of a stem at the least. */
  BUTT_OFF_LEAST(LENGTH, "0", "0"),
  /** What an inch of a stem that is skipped weighs, in square inches of the gaps. */
  WASTE_PRICE(NUMBER, "0.002"),
  /** How many pieces a stem gives at the most; blank: any number. */
  STEM_MOST(COUNT, ""),
  /** Whether a log long enough for two pieces may be cut in two where rounds are missing. */
  CUT_IN_TWO(CHOICE, "yes"),
  /** What a trailer carries. */
  LOAD_MOST(NUMBER, ""),
  /** The length that a trailer takes. */
  BED_LENGTH(LENGTH, "", ""),
  /** How tall trees are where the logs come from. */
  TREE_HEIGHT(LENGTH, "", ""),
  /** The wall outside whose middle a crane stands. */
  CRANE_WALL(TEXT, ""),
  /** How far outside that wall it stands. */
  CRANE_OFF(LENGTH, "", ""),
  /** The length of each of two sling legs. */
  SLING_LEG(LENGTH, "", ""),
  /** The currency of prices. */
  CURRENCY(TEXT, ""),
  /** The species where the tally is silent. */
  SPECIES(TEXT, ""),
  /** Moisture content now. */
  MOISTURE_NOW(NUMBER, ""),
  /** Moisture content in service. */
  MOISTURE_IN_SERVICE(NUMBER, "12"),
  /** Temperature of the air in service. */
  AIR_TEMPERATURE(NUMBER, ""),
  /** Humidity of the air in service. */
  AIR_HUMIDITY(NUMBER, ""),
  /** How deep the chinking is. */
  CHINKING_DEPTH(LENGTH, "1", "25"),
  /** What is bought over the volume reckoned. */
  WASTE_PERCENT(NUMBER, "10"),
  /** How much thicker than its joint backer is bought. */
  BACKER_SQUEEZE(NUMBER, "25"),
  /** The longest stretch that a mill scales as one log. */
  SCALE_LENGTH_MOST(LENGTH, "240", "6100"),
  /** What is added to the diameters of logs that are not hewn yet. */
  TALLY_CORRECTION(LENGTH, "0", "0"),
  /** What a change must pay before a log that is not cut yet changes its place. */
  CHANGE_PAYS(NUMBER, "1"),
  /** How the first round is bedded. */
  FIRST_BED(CHOICE, "flat"),
  /** The step of a foundation that stands, which keeps the size of round 1; blank: as planned. */
  FOUNDATION_STEP(LENGTH, "", ""),
  /** Whether the ends of a wing's sides hook into the wall that they die in, or drain. */
  REENTRANT(CHOICE, ""),
  /** Paper. */
  PAPER(CHOICE, "letter", "a4"),
  /** The language of the crew workbook. */
  LANGUAGE(CHOICE, "en"),
  /** The seed of the search. */
  SEED(COUNT, "1"),
  /** Whether it is reckoned how much better a choice could be. */
  PROVE(CHOICE, "no");

  private final SettingKind kind;
  private final String inchDefault;
  private final String metricDefault;

  Setting(SettingKind kind, String standard) {
    this(kind, standard, standard);
  }

  Setting(SettingKind kind, String inchDefault, String metricDefault) {
    this.kind = kind;
    this.inchDefault = inchDefault;
    this.metricDefault = metricDefault;
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
      case CUT_IN_TWO -> List.of("yes", "no");
      case BALANCE_FOR -> List.of("even", "worst");
      case HOLD_HEIGHT -> List.of("no", "yes");
      case FIRST_BED -> List.of("flat", "starter", "level");
      case REENTRANT -> List.of("hook", "drain");
      case PAPER -> List.of("letter", "a4");
      case LANGUAGE -> List.of("en", "de");
      case PROVE -> List.of("no", "yes");
      default -> List.of();
    };
  }

  /** Returns what it means, in one line. */
  public Phrase meaning() {
    return Phrase.of("setting." + name().toLowerCase(Locale.ROOT));
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
