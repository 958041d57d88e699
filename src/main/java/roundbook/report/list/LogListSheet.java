package roundbook.report.list;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import roundbook.page.Area;
import roundbook.page.LogColumn;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Sheet;
import roundbook.page.TypedBox;
import roundbook.plan.Plan.LogUse;
import roundbook.report.frame.Cells;
import roundbook.report.frame.Columns;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;

/** Every log of the tally: as read, and what becomes of it. */
final class LogListSheet {
  private static final int FIRST_ROW = 4;

  private final CrewContext context;
  private final LogListColumns columns;

  private LogListSheet(CrewContext context) {
    this.context = context;
    this.columns = new LogListColumns(context);
  }

  /** Returns the sheet. */
  static List<Sheet> sheets(CrewContext context) {
    return List.of(new LogListSheet(context).sheet());
  }

  /** Returns the names of the columns that formulas look logs up in; none without logs. */
  static SortedMap<String, String> names(CrewContext context) {
    SortedMap<String, String> names = new TreeMap<>();
    int last = FIRST_ROW + context.plan().uses().size() - 1;
    if (last >= FIRST_ROW) {
      Columns<LogUse> columns = new LogListColumns(context).all();
      columns.putNames(names, FIRST_ROW, last, Tab.LOG_LIST.in(context.words()));
    }
    return names;
  }

  private Sheet sheet() {
    ListSheet list =
        new ListSheet(context, Tab.LOG_LIST, context.page(PageKind.TABLE).lying(), columns.onPage())
            .title(Tab.LOG_LIST)
            .text(Role.NOTE, context.text("log_list.note", new Cells(context).unitWord()))
            .head(columns.all().headings())
            .repeatHead();
    list.sheet().widths(columns.all().widths());
    context.plan().uses().forEach(use -> list.row(columns.all().row(use)));
    if (list.next() > FIRST_ROW) {
      int column = columns.all().at(LogColumn.LOST);
      Area lost = new Area(FIRST_ROW, column, list.next() - 1, column);
      list.sheet()
          .rule(
              new Rule.OneOf(
                  lost,
                  List.of("x"),
                  Rule.Advice.refusing(
                      context.text("log_list.lost"), context.text("log_list.lost.advice"))));
      list.sheet().rule(hewn(list.next() - 1));
    }
    long unread = context.found().stream().filter(LogListSheet::isUnread).count();
    if (unread > 0) {
      list.text(Role.PLAIN_BOLD, context.text("log_list.unread", unread));
    }
    return list.build();
  }

  /** Lets only a diameter be typed into the boxes of what was measured in the yard. */
  private Rule hewn(int last) {
    boolean metric = context.rules().metric();
    double most =
        TypedBox.Entry.DIAMETER.most(metric).decimal(context.rules().unit(), 0).doubleValue();
    String text = context.text("log_list.hewn.advice", new Cells(context).unitWord());
    Rule.Advice refusing = Rule.Advice.refusing(context.text("log_list.hewn"), text).prompt(text);
    int left = columns.all().at(LogColumn.HEWN_MIDS);
    int right = columns.all().at(LogColumn.HEWN_TIPS);
    return new Rule.Between(new Area(FIRST_ROW, left, last, right), 0, most, refusing);
  }

  private static boolean isUnread(roundbook.problem.Problem problem) {
    return problem.severity() == roundbook.problem.Severity.ERROR && problem.where().row() > 0;
  }
}
