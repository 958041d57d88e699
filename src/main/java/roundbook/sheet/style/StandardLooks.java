package roundbook.sheet.style;

import static org.apache.poi.ss.usermodel.HorizontalAlignment.CENTER;
import static org.apache.poi.ss.usermodel.HorizontalAlignment.LEFT;
import static org.apache.poi.ss.usermodel.HorizontalAlignment.RIGHT;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import roundbook.page.Role;
import roundbook.sheet.style.Look.ContentAlignment;
import roundbook.sheet.style.Look.Edges;
import roundbook.sheet.style.Look.Font;
import roundbook.sheet.style.Look.Ground;

/**
 * The built-in looks of all roles, from which the default template is made.
 *
 * <p>They are kept as values so that a run without a template of its own need not open a workbook
 * for them. Everything is black on white, pale yellow or light grey, or white on black: contrast is
 * above 15 : 1 throughout.
 */
public final class StandardLooks {
  private static final String FONT = "Arial";
  private static final Ground PALE_YELLOW = Ground.solid("FFFCEC");
  private static final Ground GREY = Ground.solid("E9E9E9");
  private static final Ground DARK_GREY = Ground.solid("DCDCDC");
  private static final Ground BLACK_GROUND = Ground.solid(Look.BLACK);
  private static final Edges THIN = Edges.all(BorderStyle.THIN);
  private static final Edges HEAVY = Edges.all(BorderStyle.MEDIUM);
  private static final Edges SIDES = Edges.NONE.with(BorderStyle.MEDIUM, 2 | 8);

  private static final Look BARE =
      new Look(
          new Font(FONT, 11, false, false, Look.BLACK),
          Ground.NONE,
          Edges.NONE,
          new ContentAlignment(LEFT, VerticalAlignment.CENTER, false, 0),
          "General",
          false);
  private static final Look RULED = BARE.edges(THIN);
  private static final Look WHITE_ON_BLACK = BARE.ground(BLACK_GROUND).colour(Look.WHITE);

  private StandardLooks() {}

  public static Map<Role, Look> looks() {
    Map<Role, Look> looks = new EnumMap<>(Role.class);
    bars(looks);
    headings(looks);
    tables(looks);
    arm(looks);
    marks(looks);
    typed(looks);
    signals(looks);
    tags(looks);
    return Collections.unmodifiableMap(looks);
  }

  private static void bars(Map<Role, Look> looks) {
    looks.put(Role.TITLE, WHITE_ON_BLACK.size(28).bold().indented(1));
    looks.put(Role.TITLE_SIDE, WHITE_ON_BLACK.size(16).bold());
    looks.put(Role.TITLE_NOTE, WHITE_ON_BLACK.size(11).wrapped());
    looks.put(Role.REVISION, right(WHITE_ON_BLACK.size(16).bold()).indented(1));
    looks.put(Role.HEADER_FOOTER, BARE.size(10));
  }

  private static void headings(Map<Role, Look> looks) {
    Look head = centred(RULED.bold().wrapped());
    looks.put(Role.HEADING, BARE.size(16).bold());
    looks.put(Role.SUBHEADING, BARE.size(12).bold());
    looks.put(Role.COLUMN_HEAD, head.ground(DARK_GREY));
    looks.put(Role.COLUMN_HEAD_SHADED, head.ground(Ground.solid("C8C8C8")));
    looks.put(Role.LABEL, BARE.bold());
    looks.put(Role.LABEL_SMALL, centred(BARE.wrapped()));
    looks.put(Role.PLAIN, BARE.wrapped());
    looks.put(Role.PLAIN_BOLD, BARE.bold().wrapped());
    looks.put(Role.NOTE, BARE.wrapped().up(VerticalAlignment.TOP));
    looks.put(Role.LINK, BARE.font(new Font(FONT, 11, true, false, "0B3D91")));
    looks.put(Role.HELPER, right(BARE.size(9)));
  }

  private static void tables(Map<Role, Look> looks) {
    looks.put(Role.BODY, RULED.wrapped());
    looks.put(Role.BODY_BOLD, RULED.bold().wrapped());
    looks.put(Role.BODY_CENTRE, centred(RULED.wrapped()));
    looks.put(Role.NUMBER, right(RULED).indented(1));
    looks.put(Role.NUMBER_BOLD, right(RULED.bold()).indented(1));
    looks.put(Role.TOTAL, right(RULED.bold().edges(THIN.with(BorderStyle.MEDIUM, 1))).indented(1));
    looks.put(Role.SHADED, RULED.ground(GREY).wrapped());
    looks.put(
        Role.WASTE,
        RULED.ground(new Ground(FillPatternType.THIN_BACKWARD_DIAG, Look.BLACK, Look.WHITE)));
  }

  private static void arm(Map<Role, Look> looks) {
    looks.put(Role.LARGE, centred(RULED.size(16).bold()));
    looks.put(Role.LARGE_NUMBER, centred(RULED.size(16)));
    looks.put(Role.LARGE_CUT, centred(RULED.size(16).bold().edges(HEAVY)));
    looks.put(Role.ROUND_HUGE, WHITE_ON_BLACK.size(64).bold().indented(1));
  }

  private static void marks(Map<Role, Look> looks) {
    Look label = centred(BARE.bold()).edges(SIDES.with(BorderStyle.MEDIUM, 1));
    Look huge = centred(BARE.size(48).bold()).edges(SIDES);
    Look note = centred(BARE).edges(SIDES.with(BorderStyle.MEDIUM, 4));
    Look mark = centred(RULED.size(24).bold());
    looks.put(Role.MARK_LABEL, label);
    looks.put(Role.MARK_HUGE, huge);
    looks.put(Role.MARK_NOTE, note);
    looks.put(Role.MARK, mark);
    looks.put(Role.MARK_LABEL_LOWER, label.ground(GREY));
    looks.put(Role.MARK_HUGE_LOWER, huge.ground(GREY));
    looks.put(Role.MARK_NOTE_LOWER, note.ground(GREY));
    looks.put(Role.MARK_LOWER, mark.ground(GREY));
  }

  private static void typed(Map<Role, Look> looks) {
    Look typed = centred(BARE.bold()).edges(HEAVY).ground(PALE_YELLOW).unlock();
    looks.put(Role.TYPED_IN, typed);
    looks.put(Role.TYPED_IN_TEXT, typed.across(LEFT).wrapped().format("@"));
    looks.put(Role.TYPED_IN_LARGE, typed.size(18));
    looks.put(Role.TICK, centred(BARE.size(18).bold()).edges(HEAVY).unlock());
    looks.put(Role.RESULT, centred(RULED).ground(GREY));
    looks.put(Role.RESULT_LARGE, centred(RULED.size(16).bold()).ground(GREY));
    looks.put(Role.CHANGED, centred(BARE.bold()).edges(HEAVY).ground(DARK_GREY));
  }

  private static void signals(Map<Role, Look> looks) {
    looks.put(Role.FLAG, centred(RULED.bold()).ground(BLACK_GROUND).colour(Look.WHITE));
    looks.put(Role.GOOD, centred(RULED));
    looks.put(Role.CAUTION, BARE.bold().edges(HEAVY).wrapped().indented(1));
    looks.put(Role.CAUTION_HEAD, WHITE_ON_BLACK.size(14).bold().edges(HEAVY).indented(1));
  }

  private static void tags(Map<Role, Look> looks) {
    looks.put(Role.TAG_HUGE, BARE.size(72).bold().indented(1));
    looks.put(Role.TAG_LARGE, right(BARE.size(26).bold()).indented(1));
    looks.put(Role.TAG_BODY, BARE.size(16).bold().indented(1));
  }

  private static Look centred(Look look) {
    return look.across(CENTER);
  }

  private static Look right(Look look) {
    return look.across(RIGHT);
  }
}
