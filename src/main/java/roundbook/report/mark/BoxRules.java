package roundbook.report.mark;

import java.util.List;
import roundbook.page.Area;
import roundbook.page.Rule;
import roundbook.page.TypedBox;
import roundbook.report.live.LiveContext;
import roundbook.report.live.LiveLogs;

/** Lets only what is meant be typed into the boxes of the rounds' and the walls' pages. */
public final class BoxRules {
  private BoxRules() {}

  /** Returns the check of what is typed into an area of boxes, with advice. */
  public static Rule of(LiveContext live, TypedBox box, Area area) {
    TypedBox.Entry entry = box.entry();
    String key = "advice." + entry.key();
    String title = live.text(key + ".title");
    String prompt = live.text(key, live.unit().symbol());
    Rule.Advice refusing = Rule.Advice.refusing(title, prompt).prompt(prompt);
    return switch (entry) {
      case CUT -> new Rule.OneOf(area, List.of("x"), refusing);
      case USED ->
          new Rule.OneOfCells(
              area,
              live.map().logs(LiveLogs.TAG),
              Rule.Advice.asking(title, prompt).prompt(prompt));
      default ->
          new Rule.Between(area, 0, live.number(entry.most(live.rules().metric())), refusing);
    };
  }
}
