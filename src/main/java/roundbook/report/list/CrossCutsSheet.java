package roundbook.report.list;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import roundbook.page.Area;
import roundbook.page.PageSetup.PageKind;
import roundbook.page.Role;
import roundbook.page.Rule;
import roundbook.page.Sheet;
import roundbook.picture.canvas.Picture;
import roundbook.picture.stem.StemDrawing.Drawn;
import roundbook.plan.CrossCuts;
import roundbook.plan.CrossCuts.CutStem;
import roundbook.plan.CrossCuts.Part;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.frame.Tab;
import roundbook.units.Length;

/**
 * Where each stem is cut, from the butt, a line a part; the stems drawn; and what a later revision
 * needs to know of them. There is no such sheet without stems.
 */
final class CrossCutsSheet {
  private static final int STEMS_A_PAGE = 9;

  /** The rows above the first cut: title, caution, note, order, headings. */
  private static final int FIRST_ROW = 6;

  private final CrewContext context;
  private final CrossCuts cuts;
  private final CrossCutColumns columns;

  private CrossCutsSheet(CrewContext context) {
    this.context = context;
    this.cuts = CrossCuts.of(context.plan());
    this.columns = new CrossCutColumns(context);
  }

  /** Returns the sheet; none where the job has no stem. */
  static List<Sheet> sheets(CrewContext context) {
    return context.plan().job().stems().isEmpty()
        ? List.of()
        : List.of(new CrossCutsSheet(context).sheet());
  }

  /** Returns the names of the columns that a later revision reads; none without stems. */
  static SortedMap<String, String> names(CrewContext context) {
    SortedMap<String, String> names = new TreeMap<>();
    if (!context.plan().job().stems().isEmpty()) {
      CrossCutsSheet sheet = new CrossCutsSheet(context);
      String tab = Tab.CROSS_CUTS.in(context.words());
      int last = FIRST_ROW + sheet.rows().size() - 1;
      sheet.columns.parts().putNames(names, FIRST_ROW, last, tab);
      int first = last + 4;
      sheet.columns.stems().putNames(names, first, first + sheet.cuts.stems().size() - 1, tab);
    }
    return names;
  }

  private List<CrossCutColumns.Row> rows() {
    List<CrossCutColumns.Row> rows = new ArrayList<>();
    for (CutStem stem : cuts.stems()) {
      for (Part part : stem.parts()) {
        rows.add(new CrossCutColumns.Row(stem.stem(), part));
      }
    }
    return rows;
  }

  private Sheet sheet() {
    ListSheet list =
        new ListSheet(
                context, Tab.CROSS_CUTS, context.page(PageKind.TABLE).lying(), columns.onPage())
            .title(Tab.CROSS_CUTS)
            .text(Role.CAUTION, context.text("cross_cuts.caution"))
            .text(Role.PLAIN_BOLD, context.text("cross_cuts.note"))
            .text(Role.NOTE, context.text("cross_cuts.order"))
            .head(columns.parts().headings())
            .repeatHead();
    if (list.next() != FIRST_ROW) {
      throw new IllegalStateException("the first cut lies in row " + list.next());
    }
    List<CrossCutColumns.Row> rows = rows();
    cuts.stems().forEach(stem -> list.together(cells(stem)));
    Area done = new Area(FIRST_ROW, columns.done(), FIRST_ROW + rows.size() - 1, columns.done());
    list.sheet()
        .rule(
            new Rule.OneOf(
                done,
                List.of("x"),
                Rule.Advice.refusing(
                    context.text("cross_cuts.done"), context.text("cross_cuts.done.advice"))));
    list.heading(context.text("cross_cuts.stems"))
        .text(Role.NOTE, context.text("cross_cuts.stems.note"))
        .head(columns.stems().headings());
    list.sheet().widths(columns.widths());
    cuts.stems().forEach(stem -> list.row(columns.stems().row(stem.stem())));
    drawings(list);
    return list.build();
  }

  private List<List<roundbook.page.Cell>> cells(CutStem stem) {
    return stem.parts().stream()
        .map(part -> columns.parts().row(new CrossCutColumns.Row(stem.stem(), part)))
        .toList();
  }

  private void drawings(ListSheet list) {
    Length longest =
        cuts.stems().stream()
            .map(each -> each.stem().length())
            .reduce(Length::most)
            .orElse(Length.ZERO);
    List<Drawn> drawn = cuts.stems().stream().map(columns::drawn).toList();
    List<List<Drawn>> pages = new ArrayList<>();
    for (int from = 0; from < drawn.size(); from += STEMS_A_PAGE) {
      pages.add(drawn.subList(from, Math.min(drawn.size(), from + STEMS_A_PAGE)));
    }
    FullSizePages.put(
        context,
        list,
        drawings -> {
          List<Picture> pictures = new ArrayList<>();
          pages.forEach(page -> pictures.add(drawings.stems(page, longest)));
          return pictures;
        });
  }
}
