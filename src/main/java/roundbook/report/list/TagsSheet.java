package roundbook.report.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import roundbook.job.Building;
import roundbook.page.Area;
import roundbook.page.Cell;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Sheet;
import roundbook.page.SheetBuilder;
import roundbook.plan.Junction;
import roundbook.plan.PiecePlan;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveMath;
import roundbook.report.mark.LowerMarks;
import roundbook.report.mark.PieceCells;
import roundbook.report.mark.PieceCells.LiveLength;
import roundbook.report.mark.ShortRows;
import roundbook.stack.FilledPlace;
import roundbook.stack.PlacedLog;
import roundbook.stack.Stack;

/** A tag for each placed log, eight a page, to cut out along the heavy lines. */
final class TagsSheet {
  private static final double[] WIDTHS = {30, 20, 1.5, 30, 20};
  private static final double[] HEIGHTS = {42, 27, 22, 28, 29};
  private static final String HOLE = "\u0001";
  private static final double GAP = 7;
  private static final int ACROSS = 2;
  private static final int DOWN = 4;
  private static final int FIRST_ROW = 3;
  private static final int SHORT_WALL = 2;
  private static final int SHORT_TAG = 6;

  private final CrewContext context;
  private final Cells cells;
  private final ListSheet list;

  private TagsSheet(CrewContext context) {
    this.context = context;
    this.cells = new Cells(context);
    this.list = new ListSheet(context, Tab.TAGS, context.page(PageKind.SITE), WIDTHS);
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new TagsSheet(context).sheet());
  }

  private Sheet sheet() {
    list.title(context.text("title.tags"), context.text("tags.note"));
    list.free(GAP);
    List<Item> items = items();
    for (int first = 0; first < items.size(); first += ACROSS) {
      if (first > 0 && first % (ACROSS * DOWN) == 0) {
        list.breakPage();
      }
      row(items.subList(first, Math.min(items.size(), first + ACROSS)));
    }
    return list.build();
  }

  /**
   * What gets a tag: a placed log, or a short one in its place.
   *
   * @param piece the placed log, whose marks count for both
   * @param beside the short log; empty for the placed log itself
   */
  private record Item(PiecePlan piece, Optional<ShortRows> beside) {}

  private List<Item> items() {
    return context.plan().pieces().stream().flatMap(this::items).toList();
  }

  /** Returns on which rows tags begin, with the rounds of their logs. */
  static SortedMap<Integer, Integer> rounds(CrewContext context) {
    SortedMap<Integer, Integer> rounds = new TreeMap<>();
    List<Item> items = new TagsSheet(context).items();
    for (int index = 0; index < items.size(); index++) {
      rounds.merge(top(index), items.get(index).piece().placed().round(), Math::min);
    }
    return rounds;
  }

  /** Returns what stands on each tag, by its place, round by round in the order of the tags. */
  static SortedMap<Integer, Map<String, List<String>>> texts(CrewContext context) {
    TagsSheet tags = new TagsSheet(context);
    Sheet sheet = tags.sheet();
    List<Item> items = tags.items();
    SortedMap<Integer, Map<String, List<String>>> texts = new TreeMap<>();
    for (int index = 0; index < items.size(); index++) {
      Area tag = Area.cell(top(index), 1 + index % ACROSS * 3).sized(HEIGHTS.length, 2);
      Map<String, List<String>> round =
          texts.computeIfAbsent(
              items.get(index).piece().placed().round(), each -> new LinkedHashMap<>());
      sheet
          .cell(tag.top(), tag.left())
          .ifPresent(place -> round.put(shown(place), shown(sheet, tag)));
    }
    return texts;
  }

  /** Returns the row on which a tag begins. */
  private static int top(int index) {
    return FIRST_ROW + index / ACROSS * (HEIGHTS.length + 1);
  }

  private static List<String> shown(Sheet sheet, Area tag) {
    return sheet.rows().subMap(tag.top(), tag.bottom() + 1).values().stream()
        .flatMap(row -> row.subMap(tag.left(), tag.right() + 1).values().stream())
        .map(TagsSheet::shown)
        .toList();
  }

  private static String shown(Cell cell) {
    Cell.Value value = cell.value() instanceof Cell.Formula live ? live.result() : cell.value();
    return value instanceof Cell.Text text ? text.text() : value.toString();
  }

  private Stream<Item> items(PiecePlan piece) {
    return piece.halves().isEmpty()
        ? Stream.of(new Item(piece, Optional.empty()))
        : ShortRows.of(context, piece).stream().map(row -> new Item(piece, Optional.of(row)));
  }

  private void row(List<Item> items) {
    int top = list.next();
    for (double height : HEIGHTS) {
      list.free(height);
    }
    list.free(GAP);
    for (int index = 0; index < items.size(); index++) {
      tag(items.get(index), Area.cell(top, 1 + index * 3).sized(HEIGHTS.length, 2));
    }
  }

  private void tag(Item item, Area area) {
    SheetBuilder sheet = list.sheet();
    PiecePlan piece = item.piece();
    PlacedLog placed = item.beside().map(row -> row.half().placed()).orElse(piece.placed().first());
    String wall = item.beside().map(ShortRows::place).orElse(placed.wall().name());
    String place = placed.round() + wall;
    boolean brief = wall.length() <= SHORT_WALL;
    String tag = placed.piece().log().tag();
    Area first = Area.cell(area.top(), area.left());
    sheet.merge(first.sized(2, 1), Cell.text(place).role(brief ? Role.TAG_HUGE : Role.TAG_LARGE));
    PieceCells live = new PieceCells(LiveContext.of(context), piece);
    sheet.put(
        area.top(),
        area.right(),
        item.beside()
            .map(ShortRows::cells)
            .orElse(live)
            .tag(Role.TAG_BODY)
            .role(tag.length() <= SHORT_TAG ? Role.TAG_LARGE : Role.TAG_BODY)
            .align(Cell.Align.RIGHT));
    sheet.put(
        area.top() + 1,
        area.right(),
        Cell.text(context.text("tags.cut", cells.formats().feetInches(placed.piece().trimmed())))
            .role(Role.TAG_BODY)
            .align(Cell.Align.RIGHT));
    line(first.moved(2, 0), item.beside().map(ShortRows::ends).orElseGet(() -> ends(live, piece)));
    sheet.merge(first.moved(3, 0).sized(1, 2), upper(live, placed));
    boolean ends =
        item.beside().isEmpty()
            && !live.flatBed()
            && new LowerMarks(LiveContext.of(context), piece).differNow();
    boolean between = piece.notes().contains(PiecePlan.Note.ON_STEP);
    list.sheet()
        .merge(
            first.moved(4, 0).sized(1, 2),
            lower(live, item.beside()).role(ends || between ? Role.BODY_BOLD : Role.TAG_BODY));
    sheet.box(area);
  }

  /** Returns the upper marks, and under them where something differs, with the page that tells. */
  private Cell upper(PieceCells live, PlacedLog placed) {
    boolean top = placed.round() == context.plan().rounds() && !placed.wall().laidFirst();
    Cell marks =
        top
            ? live.text("tags.upper.none")
            : live.text("tags.upper", live.upperInside(), live.upperOutside());
    List<String> differs = new ArrayList<>();
    if (!top && live.levelEnds().size() == 1) {
      differs.add(context.text("tags.upper.level", live.levelEnds().get(0)));
    }
    crossed(placed).forEach(differs::add);
    if (differs.isEmpty()) {
      return marks.role(Role.TAG_BODY);
    }
    String page = Tab.ofRound(context.words(), placed.round());
    String line = context.text("tags.differs", String.join("   ", differs), page);
    return under(marks, line).role(Role.BODY_BOLD);
  }

  private Cell ends(PieceCells live, PiecePlan piece) {
    return live.aroundOffButt("tags.ends", piece.buttAt(), tip(piece));
  }

  /**
   * Returns the lower marks: the chart's, or both ends' where a corner is put right; a tag printed
   * before that sends to the round's page once readings are typed.
   */
  private static Cell lower(PieceCells live, Optional<ShortRows> beside) {
    if (live.flatBed()) {
      return live.text("tags.flat", live.lower());
    }
    LowerMarks marks = new LowerMarks(live.live(), live.piece());
    if (marks.differNow() && beside.isEmpty()) {
      return ends(live.live(), marks);
    }
    Cell.Formula chart = (Cell.Formula) chart(live, beside).value();
    String page = Tab.ofRound(live.live().context().words(), live.piece().placed().round());
    String see = LiveMath.literal(live.live().text("tags.lower.page", page));
    return Cell.formula(
        "IF(" + marks.differ() + "," + see + "," + chart.expression() + ")",
        marks.differNow()
            ? live.live().text("tags.lower.page", page)
            : ((Cell.Text) chart.result()).text());
  }

  private static Cell ends(LiveContext live, LowerMarks marks) {
    String[] around = live.text("tags.lower.ends", HOLE, HOLE, HOLE).split(HOLE, -1);
    String space = LiveMath.literal(" ");
    LiveLength[] spots = {
      marks.shoulder(true), marks.shoulder(false), marks.cornerLine(true), marks.cornerLine(false)
    };
    String formula =
        String.join(
            "&",
            LiveMath.literal(around[0]),
            marks.both(spots[0], spots[1], space),
            LiveMath.literal(around[1]),
            "CHAR(10)",
            LiveMath.literal(around[2]),
            marks.both(spots[2], spots[3], space));
    String now =
        around[0]
            + marks.bothNow(spots[0], spots[1], " ")
            + around[1]
            + "\n"
            + around[2]
            + marks.bothNow(spots[2], spots[3], " ");
    return Cell.formula(formula, now);
  }

  private static Cell chart(PieceCells live, Optional<ShortRows> beside) {
    List<LiveLength> corner =
        beside.map(row -> List.of(live.lowerCorner(row.half()))).orElseGet(live::lowerCorner);
    Cell marks =
        corner.size() == 1
            ? live.text("tags.lower", live.lower(), corner.get(0))
            : live.text("tags.lower.two", live.lower(), corner.get(0), corner.get(1));
    return live.piece().notes().contains(PiecePlan.Note.ON_STEP)
        ? under(marks, live.live().text("tags.lower.between"))
        : marks;
  }

  /** Returns marks with a line under them. */
  private static Cell under(Cell marks, String line) {
    Cell.Formula shown = (Cell.Formula) marks.value();
    return Cell.formula(
        shown.expression() + "&CHAR(10)&" + LiveMath.literal(line),
        ((Cell.Text) shown.result()).text() + "\n" + line);
  }

  /** Returns where partitions cross a log, from its squared butt to the nearer edge of each. */
  private Stream<String> crossed(PlacedLog placed) {
    Stack stack = context.plan().stack();
    return Junction.crossings(stack, stack.courses().get(placed.round() - 1)).stream()
        .filter(junction -> junction.through().equals(placed))
        .map(
            junction ->
                context.text(
                    "tags.crossed",
                    junction.wall().wall().name()
                        + " "
                        + cells.formats().feetInches(junction.from())));
  }

  private void line(Area first, Cell cell) {
    list.sheet().merge(first.sized(1, 2), cell.role(Role.TAG_BODY));
  }

  private String tip(PiecePlan piece) {
    Building building = context.plan().job().building();
    FilledPlace placed = piece.placed();
    return placed.buttAtStart()
        ? building.endCorner(placed.wall())
        : building.startCorner(placed.wall());
  }
}
